import type { CalendarDate, Figure, Id } from "#domain";
import { type OutlookInput, type SuggestedTargets, suggestedTargets } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface SuggestedTargetsDetails {
  readonly comboId: Id;
  readonly kind: OutlookInput["kind"];
  /** Number of laps of a mean. */
  readonly laps?: number | undefined;
  readonly by: CalendarDate;
  readonly today: CalendarDate;
}

/** Targets of a combo worth setting by a date. */
export const runSuggestedTargets: JobRun<SuggestedTargetsDetails, Figure<SuggestedTargets>> = async (
  book,
  details,
) => suggestedTargets({ ...details, ...(await presentDigests(book, details)) });
