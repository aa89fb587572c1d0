import type { Table } from "dexie";
import type { Id } from "#domain";

/**
 * Stores a row in place of the one with its id, or anew; gives the one that was there. Not Dexie's `put`: that does
 * not know the old row, so it would wake every live query of the table instead of those whose range it touches.
 */
export async function replaceRow<R>(table: Table<R, Id>, id: Id, row: R): Promise<R | undefined> {
  let before: R | undefined;
  const replaced = await table
    .where(":id")
    .equals(id)
    .modify((old, place) => {
      before = old;
      place.value = row;
    });
  if (replaced === 0) await table.add(row);
  return before;
}
