import { believedUpTo, merged, packOf, takeBackMerge } from "#db";
import type { Errand } from "./errand.ts";
import { readAgain, readSource, rowsBeside } from "./readSource.ts";

export interface TakeBack {
  /** The file that was merged. */
  readonly source: Blob;
  readonly mergedAt: number;
  /** Whether the merge put stamps right that lay ahead of this device's clock. */
  readonly isDateConfirmed: boolean;
  readonly copyId: string;
}

export interface TakenBackWords {
  readonly rows: number;
  readonly skipped: readonly string[];
}

/** Takes a merge back, by the state kept from before it and the file itself. */
export const takeBack: Errand<TakeBack, TakenBackWords> = async (
  { source, mergedAt, isDateConfirmed, copyId },
  { book, shelf, tell, signal },
) => {
  tell({ step: "Reading the logbook as it was" });
  // The logbook's own rows are what they are, whatever clock they were written by.
  const before = (await readAgain(await packOf(shelf, copyId), (own) => readSource(own))).alone.rows;
  const file = rowsBeside(await readAgain(source, (sent) => readSource(sent, mergedAt)), before).rows;
  const upTo = isDateConfirmed ? believedUpTo(mergedAt) : undefined;
  tell({ step: "Taking the merge back", share: 0 });
  return takeBackMerge(
    book,
    { before, after: merged(before, file, upTo) },
    {
      signal,
      onProgress: (done, all) => tell({ step: "Taking the merge back", share: done / Math.max(1, all) }),
    },
  );
};
