import { believedUpTo, noteReceived, putBookRight } from "#db";
import type { Errand } from "./errand.ts";

/** Nothing to say: the driver has just confirmed what this device's clock shows. */
export type PutDatesRight = null;

/**
 * Puts the stamps of the open logbook right that lie ahead of this device's clock, which the driver has confirmed. The
 * rows count as not yet sent, so that other devices hear of it.
 * @returns how many rows were stamped anew
 */
export const putDatesRight: Errand<PutDatesRight, number> = async (_, { book, shelf, tell, signal }) => {
  tell({ step: "Putting dates right" });
  const { edits, oldest } = await putBookRight(book, believedUpTo(book.clock()), { signal });
  if (oldest !== undefined) await noteReceived(shelf, book.name, oldest);
  return edits.length;
};
