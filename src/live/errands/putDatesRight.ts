import { believedUpTo, putBookRight } from "#db";
import type { Errand } from "./errand.ts";

/** Nothing to say: the driver has just confirmed what this device's clock shows. */
export type PutDatesRight = null;

/**
 * Puts the stamps of the open logbook right that lie ahead of this device's clock, which the driver has confirmed.
 * @returns how many rows were stamped anew
 */
export const putDatesRight: Errand<PutDatesRight, number> = async (_, { book, tell, signal }) => {
  tell({ step: "Putting dates right" });
  const { edits } = await putBookRight(book, believedUpTo(book.clock()), { signal });
  return edits.length;
};
