import { presentPage } from "#combo";
import { pagesOfCombo, targetsOfCombo } from "#db";
import type { CalendarDate, Id } from "#domain";
import { type TargetWay, targetWays } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface TargetWaysDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
}

/** The ways that the targets of a combo have come since they were set. */
export const runTargetWays: JobRun<TargetWaysDetails, TargetWay[]> = async (book, details) => {
  const { comboId, today } = details;
  const [digests, pages, targets] = await Promise.all([
    presentDigests(book, details),
    pagesOfCombo(book, comboId),
    targetsOfCombo(book, comboId),
  ]);
  return targetWays({ ...digests, targets, span: presentPage(pages, today) });
};
