import { tableNames } from "#domain";
import type { ReadOnlyLogbook } from "../logbook.ts";

/** The newest stamp of a row, laps inside runs not asked; 0 in an empty logbook. Reads one key a table. */
export async function newestStampIn(book: ReadOnlyLogbook): Promise<number> {
  const keys = await Promise.all(
    tableNames.map((table) => book.tables[table].orderBy("updatedAt").reverse().limit(1).keys()),
  );
  return Math.max(0, ...keys.flat().map(Number));
}
