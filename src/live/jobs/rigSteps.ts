import type { CalendarDate, Id } from "#domain";
import { type RigRecordDay, type RigStep, rigSteps } from "#stats";
import type { JobRun } from "./job.ts";
import { wholeBook } from "./wholeBook.ts";

export interface RigStepsDetails {
  /** The record that began. */
  readonly rigId: Id;
  /** All records in their order. */
  readonly records: readonly RigRecordDay[];
  readonly today: CalendarDate;
}

/** The combos before and after a change of the rig. */
export const runRigSteps: JobRun<RigStepsDetails, RigStep[]> = async (book, details) =>
  rigSteps({ ...details, combos: (await wholeBook(book, details.today)).combos });
