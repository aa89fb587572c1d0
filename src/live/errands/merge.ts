import { believedUpTo, dump, keepCopy, mergeInto } from "#db";
import { newestStamp } from "#files";
import type { Errand } from "./errand.ts";
import { liveCounts, packRows } from "./packRows.ts";
import { readAgain, rowsBeside } from "./readSource.ts";

export interface Merge {
  readonly source: Blob;
  /** Where it comes from, in words: "backup of Wed 14 Oct 2026". */
  readonly from: string;
  /** Title of the open logbook. */
  readonly title: string;
  /** The driver has confirmed the date, so stamps ahead of this device's clock are put right. */
  readonly isDateConfirmed: boolean;
}

export interface MergeDone {
  readonly what: string;
  /** Rows added or changed. */
  readonly rows: number;
  /** Instant the rows were merged at. */
  readonly mergedAt: number;
  readonly isDateConfirmed: boolean;
  /** The kept state of the logbook before. */
  readonly copyId: string;
}

/** Merges a file into the open logbook, all or nothing, after keeping the logbook as it is on the shelf. */
export const merge: Errand<Merge, MergeDone> = async (
  { source, from, title, isDateConfirmed },
  { book, shelf, readFile, tell, signal },
) => {
  tell({ step: "Reading the file" });
  const read = await readAgain(source, readFile);
  tell({ step: "Keeping the logbook as it is" });
  const here = await dump(book);
  const { rows } = rowsBeside(read, here);
  const copy = { logbook: book.name, title, why: "merge" } as const;
  let kept = await keepCopy(shelf, { ...copy, ...liveCounts(here), packed: await packRows(here, title) });
  tell({ step: "Merging", share: 0 });
  const mergedAt = book.clock();
  const { what, edits, before } = await mergeInto(book, rows, from, {
    ...(isDateConfirmed && { upTo: believedUpTo(mergedAt) }),
    signal,
    onProgress: (done, all) => tell({ step: "Merging", share: done / Math.max(1, all) }),
  });
  // A lap typed in between is part of the state before.
  if (newestStamp(before) !== newestStamp(here))
    kept = await keepCopy(shelf, { ...copy, ...liveCounts(before), packed: await packRows(before, title) });
  return { what, rows: edits.length, mergedAt, isDateConfirmed, copyId: kept.id };
};
