import { believedUpTo, putBookRight, setTargetsAhead } from "#db";
import type { CalendarDate } from "#domain";
import type { Errand } from "./errand.ts";

export interface PutDatesRight {
  /** The day this device's clock shows, which the driver has just confirmed. */
  readonly today: CalendarDate;
}

/**
 * Puts the stamps of the open logbook right that lie ahead of this device's clock; targets set under such a stamp count from
 * today on.
 * @returns how many rows were stamped anew
 */
export const putDatesRight: Errand<PutDatesRight, number> = async ({ today }, { book, tell, signal }) => {
  tell({ step: "Putting dates right" });
  const upTo = believedUpTo(book.clock());
  const { edits } = await putBookRight(book, upTo, { signal });
  await setTargetsAhead(book, { upTo, on: today });
  return edits.length;
};
