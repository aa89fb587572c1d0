import type { CalendarDate } from "#domain";
import { acrossCombos, type ComboLine } from "#stats";
import type { JobMark, JobRun } from "./job.ts";
import { markOfWholeBook, wholeBook } from "./wholeBook.ts";

export interface AcrossCombosDetails {
  readonly today: CalendarDate;
}

/** All combos side by side, each by its present page. */
export const runAcrossCombos: JobRun<AcrossCombosDetails, ComboLine[]> = async (book, { today }) => {
  const { combos } = await wholeBook(book, today);
  return acrossCombos(combos, today);
};

export const markOfAcrossCombos: JobMark<AcrossCombosDetails> = markOfWholeBook;
