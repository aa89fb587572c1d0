import { mergeRows, packOf, putRowsRight, takeBackMerge } from "#db";
import type { Errand } from "./errand.ts";
import { readAgain, rowsBeside } from "./readSource.ts";

export interface TakeBack {
  /** The file that was merged. */
  readonly source: Blob;
  /** Stamps later than this were put right by the merge. */
  readonly upTo?: number;
  readonly copyId: string;
}

export interface TakenBackWords {
  readonly rows: number;
  readonly skipped: readonly string[];
}

/** Takes a merge back, by the state kept from before it and the file itself. */
export const takeBack: Errand<TakeBack, TakenBackWords> = async (
  { source, upTo, copyId },
  { book, shelf, tell, signal },
) => {
  tell({ step: "Reading the logbook as it was" });
  const before = (await readAgain(await packOf(shelf, copyId))).alone.rows;
  const file = rowsBeside(await readAgain(source), before).rows;
  tell({ step: "Taking the merge back", share: 0 });
  return takeBackMerge(
    book,
    { before, after: mergeRows(putRowsRight(before, upTo), putRowsRight(file, upTo)) },
    {
      signal,
      onProgress: (done, all) => tell({ step: "Taking the merge back", share: done / Math.max(1, all) }),
    },
  );
};
