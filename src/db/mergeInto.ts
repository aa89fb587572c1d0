import { type AllRows, noRows, tableNames } from "#domain";
import { bringAside, takeAsideBack } from "./bringAside.ts";
import { dump } from "./dump.ts";
import type { Logbook } from "./logbook.ts";
import { merged } from "./merge.ts";
import { editsBetween, type Following, putDifference } from "./putDifference.ts";
import { unmergeRows } from "./unmerge.ts";
import type { Change } from "./writes/change.ts";
import { write } from "./writes/write.ts";

/** A merge that has been stored, with what is needed to take it back. */
export interface Merged extends Change {
  /** The logbook as it was. */
  readonly before: AllRows;
  /** The logbook as the merge made it. */
  readonly after: AllRows;
}

/**
 * Merges rows into an open logbook, in one transaction: all of them or nothing. The rows are merged with the book as it is then,
 * whatever a preview said earlier.
 * @param rows rows that have been through `checkRows`
 * @param from where they come from, for the words of the change: "backup of 3 March"
 * @param upTo where the driver has confirmed the date: stamps later than this are put right on both sides first
 */
export function mergeInto(
  book: Logbook,
  rows: AllRows,
  from: string,
  { upTo, ...following }: Following & { readonly upTo?: number } = {},
): Promise<Merged> {
  return write(book, "Not merged", async (writer) => {
    const before = await dump(book);
    const after = merged(before, rows, upTo);
    const edits = editsBetween(before, after);
    await putDifference(writer, edits, following);
    await bringAside(writer, before.aside, rows.aside);
    return { what: `Merged: ${from}`, edits, before, after };
  });
}

/**
 * Puts every stamp of a logbook right that lies ahead of a clock the driver has confirmed. No deed of the driver: what it
 * changes is which version stays when copies meet.
 * @param upTo instants later than this are not believed
 * @returns as a merge that brought nothing
 */
export function putBookRight(book: Logbook, upTo: number, following: Following = {}): Promise<Merged> {
  return mergeInto(book, noRows, "nothing", { upTo, ...following });
}

/** A merge taken back, with what had to be left, in words. */
export interface TakenBack {
  readonly rows: number;
  readonly skipped: readonly string[];
}

/**
 * Takes a merge back: rows stand again as they stood before it, with their old stamps, and rows that only the merge
 * brought are gone without a trace, so that the same file can be merged again and no other device hears of a
 * deletion. What was changed since the merge, and what that needs, is left as it is.
 */
export function takeBackMerge(
  book: Logbook,
  { before, after }: Pick<Merged, "before" | "after">,
  following: Following = {},
): Promise<TakenBack> {
  return write(book, "Merge not taken back", async (writer) => {
    const now = await dump(book);
    const { rows, skipped } = unmergeRows(now, before, after);
    const edits = editsBetween(now, rows);
    await putDifference(writer, edits, following);
    await takeAsideBack(writer, before.aside, after.aside);
    return { rows: edits.length, skipped };
  });
}

/** Rows in a set of rows, laps not counted. */
export function rowsIn(rows: AllRows): number {
  return tableNames.reduce((sum, table) => sum + rows[table].length, 0);
}
