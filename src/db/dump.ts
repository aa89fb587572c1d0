import { type AllRows, everyTable, type Id, type TableName, tableNames } from "#domain";
import { faultOf } from "./fault.ts";
import type { ReadOnlyLogbook, ReadTable } from "./logbook.ts";

/** Every row of a logbook, deleted ones too, table by table, sorted by id; digests are not among them. */
export async function dump(book: ReadOnlyLogbook): Promise<AllRows> {
  const rows: Partial<Record<string, readonly unknown[]>> = {};
  try {
    await Promise.all(
      Object.entries(book.tables).map(async ([name, table]) => {
        rows[name] = await table.orderBy("id").toArray();
      }),
    );
  } catch (error) {
    throw faultOf(error, "Logbook not read");
  }
  return everyTable((table) => rows[table] ?? []) as unknown as AllRows;
}

/** A row the browser holds and cannot read. */
export interface UnreadableRow {
  readonly table: TableName;
  readonly id: Id;
}

/** Every row that can be read, one by one where a table cannot be read whole; for a backup of a damaged store. */
export async function salvage(
  book: ReadOnlyLogbook,
): Promise<{ readonly rows: AllRows; readonly unreadable: readonly UnreadableRow[] }> {
  const unreadable: UnreadableRow[] = [];
  const found = new Map<TableName, readonly unknown[]>();
  for (const table of tableNames) {
    const rows = await readOneByOne(book, table);
    unreadable.push(...rows.filter(({ row }) => row === undefined).map(({ id }) => ({ table, id })));
    found.set(
      table,
      rows.flatMap(({ row }) => (row === undefined ? [] : [row])),
    );
  }
  return { rows: everyTable((table) => found.get(table) ?? []) as unknown as AllRows, unreadable };
}

async function readOneByOne(
  { tables }: ReadOnlyLogbook,
  table: TableName,
): Promise<{ readonly id: Id; readonly row: unknown }[]> {
  const rows: ReadTable<{ readonly id: Id }> = tables[table];
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
