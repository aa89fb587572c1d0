import { type AllRows, everyTable } from "#domain";
import { faultOf } from "./fault.ts";
import type { ReadOnlyLogbook } from "./logbook.ts";

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

/** Number of rows in each table, and of laps, in a set of rows. */
export function rowCounts(rows: AllRows): Readonly<Record<string, number>> {
  return {
    ...everyTable((table) => rows[table].length),
    laps: rows.runs.reduce((sum, run) => sum + run.laps.length, 0),
  };
}
