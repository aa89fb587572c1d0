import type { CalendarDate, Figure, Id } from "#domain";
import { type OutlookInput, type SuggestedTargets, suggestedTargets } from "#stats";
import type { Job } from "./job.ts";
import { markOfPresentPage, presentPage } from "./presentPage.ts";

export interface SuggestedTargetsDetails {
  readonly comboId: Id;
  readonly kind: OutlookInput["kind"];
  readonly by: CalendarDate;
  readonly today: CalendarDate;
}

/** Targets of a combo worth setting by a date. */
export const suggestedTargetsJob: Job<SuggestedTargetsDetails, Figure<SuggestedTargets>> = {
  mark: markOfPresentPage,
  run: async (book, details) =>
    suggestedTargets({ ...details, page: await presentPage(book, details.comboId) }),
};
