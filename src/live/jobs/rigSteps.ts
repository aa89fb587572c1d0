import type { CalendarDate } from "#domain";
import { type RigStep, rigSteps } from "#stats";
import type { JobRun } from "./job.ts";
import { wholeBook } from "./wholeBook.ts";

export interface RigStepsDetails {
  /** First day of the record. */
  readonly on: CalendarDate;
  /** First days of all records. */
  readonly records: readonly CalendarDate[];
  readonly today: CalendarDate;
}

/** The combos before and after a change of the rig. */
export const runRigSteps: JobRun<RigStepsDetails, RigStep[]> = async (book, details) =>
  rigSteps({ ...details, combos: (await wholeBook(book, details.today)).combos });
