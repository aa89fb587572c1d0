import type { CalendarDate, Figure, Id } from "#domain";
import { type OutlookInput, type SuggestedTargets, suggestedTargets } from "#stats";
import type { JobMark, JobRun } from "./job.ts";
import { markOfPresentDigests, presentDigests } from "./presentDigests.ts";

export interface SuggestedTargetsDetails {
  readonly comboId: Id;
  readonly kind: OutlookInput["kind"];
  readonly by: CalendarDate;
  readonly today: CalendarDate;
}

/** Targets of a combo worth setting by a date. */
export const runSuggestedTargets: JobRun<SuggestedTargetsDetails, Figure<SuggestedTargets>> = async (
  book,
  details,
) => suggestedTargets({ ...details, page: await presentDigests(book, details) });

export const markOfSuggestedTargets: JobMark<SuggestedTargetsDetails> = markOfPresentDigests;
