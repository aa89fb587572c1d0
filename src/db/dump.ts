import { type AllRows, everyTable, type Id } from "#domain";
import { faultOf } from "./fault.ts";
import type { ReadOnlyLogbook, ReadTable } from "./logbook.ts";

/**
 * Every row of a logbook, deleted ones too, table by table, sorted by id; digests are not among them. Tables only a
 * newer version knows come along.
 */
export async function dump(book: ReadOnlyLogbook): Promise<AllRows> {
  const rows: Partial<Record<string, readonly unknown[]>> = {};
  try {
    await Promise.all(
      Object.entries({ ...book.tables, ...book.unknownTables }).map(async ([name, table]) => {
        rows[name] = await table.orderBy("id").toArray();
      }),
    );
  } catch (error) {
    throw faultOf(error, "Logbook not read");
  }
  return { ...everyTable((table) => rows[table] ?? []), ...rows } as unknown as AllRows;
}

/** A row the browser holds and cannot read. */
export interface UnreadableRow {
  readonly table: string;
  readonly id: Id;
}

/** Every row that can be read, one by one where a table cannot be read whole; for a backup of a damaged store. */
export async function salvage(
  book: ReadOnlyLogbook,
): Promise<{ readonly rows: AllRows; readonly unreadable: readonly UnreadableRow[] }> {
  const unreadable: UnreadableRow[] = [];
  const found = new Map<string, readonly unknown[]>();
  for (const [table, readable] of Object.entries({ ...book.tables, ...book.unknownTables })) {
    const rows = await readOneByOne(readable);
    unreadable.push(...rows.filter(({ row }) => row === undefined).map(({ id }) => ({ table, id })));
    found.set(
      table,
      rows.flatMap(({ row }) => (row === undefined ? [] : [row])),
    );
  }
  return { rows: Object.fromEntries(found) as unknown as AllRows, unreadable };
}

async function readOneByOne(
  rows: ReadTable<{ readonly id: Id }>,
): Promise<{ readonly id: Id; readonly row: unknown }[]> {
  try {
    return (await rows.orderBy("id").toArray()).map((row) => ({ id: row.id, row }));
  } catch {
    // One row is enough to fail them all; each is asked for by itself, and those that fail are named.
    const ids = await rows.orderBy("id").primaryKeys();
    return Promise.all(ids.map(async (id) => ({ id, row: await rows.get(id).catch(() => undefined) })));
  }
}

/** Number of rows in each table, and of laps, in a set of rows. */
export function rowCounts(rows: AllRows): Readonly<Record<string, number>> {
  return {
    ...everyTable((table) => rows[table].length),
    laps: rows.runs.reduce((sum, run) => sum + run.laps.length, 0),
  };
}
