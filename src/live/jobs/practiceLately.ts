import type { CalendarDate, Id } from "#domain";
import { type PracticeRate, practiceRate } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface PracticeLatelyDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** How much was driven with a combo in the last six weeks; null where nothing was. */
export const runPracticeLately: JobRun<PracticeLatelyDetails, PracticeRate | null> = async (book, details) =>
  practiceRate((await presentDigests(book, details)).page, details.today) ?? null;
