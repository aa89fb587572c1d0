import { type AllRows, type AsideRow, everyTable, type Stamped } from "#domain";
import { faultOf, LedgerFault } from "./fault.ts";
import type { ReadOnlyLogbook } from "./logbook.ts";
import type { UnreadableRow } from "./unreadable.ts";

/**
 * Every row of a logbook, deleted ones too, table by table, sorted by id; digests are not among them. Rows set aside, and
 * tables only a newer version knows, come along. Throws LedgerFault, `unreadable` when a row of it cannot be read.
 */
export async function dump(book: ReadOnlyLogbook): Promise<AllRows> {
  const { rows, unreadable } = await salvage(book);
  if (unreadable.length === 0) return rows;
  const count = unreadable.length === 1 ? "one row of it" : `${unreadable.length} rows of it`;
  throw new LedgerFault(
    "unreadable",
    `Logbook not read: this browser cannot read ${count}. Save a backup, which is made of all others, and restore it as a new logbook.`,
  );
}

/**
 * Every row that can be read, as `dump` gives them, and those that cannot; for a backup of a damaged store. What could not
 * stand in its table, or was found not to while reading, comes as `aside`.
 */
export async function salvage(
  book: ReadOnlyLogbook,
): Promise<{ readonly rows: AllRows; readonly unreadable: readonly UnreadableRow[] }> {
  const found: Partial<Record<string, readonly Stamped[]>> = {};
  const set: AsideRow[] = [];
  try {
    await Promise.all(
      Object.entries({ ...book.tables, ...book.unknownTables }).map(async ([name, table]) => {
        found[name] = await table.orderBy("id").toArray();
      }),
    );
    set.push(...((await book.aside?.toArray()) ?? []));
  } catch (error) {
    throw faultOf(error, "Logbook not read");
  }
  const known = new Set(set.map(({ id }) => id));
  for (const { table, aside } of book.unreadable.get())
    if (aside !== undefined && table !== "digests" && !known.has(aside.id)) set.push(aside);
  const aside = set.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  return {
    rows: {
      ...everyTable((table) => found[table] ?? []),
      ...found,
      ...(aside.length > 0 && { aside }),
    } as unknown as AllRows,
    // What was noted earlier may have been read this time.
    unreadable: book.unreadable
      .get()
      .filter(
        ({ table, id, aside }) => aside === undefined && found[table]?.every((row) => row.id !== id) === true,
      ),
  };
}

/** Number of rows in each table, and of laps, in a set of rows. */
export function rowCounts(rows: AllRows): Readonly<Record<string, number>> {
  return {
    ...everyTable((table) => rows[table].length),
    laps: rows.runs.reduce((sum, run) => sum + run.laps.length, 0),
  };
}
