import type { AskedFigure, CalendarDate, Id } from "#domain";
import { figureForTarget, levelOfPage, type TargetFigure } from "#stats";
import type { JobRun } from "./job.ts";
import { presentDigests } from "./presentDigests.ts";

export interface TargetNowDetails extends AskedFigure {
  readonly comboId: Id;
  readonly today: CalendarDate;
  /** Sessions that began later are not looked at, epoch ms; absent: all. */
  readonly before?: number | undefined;
}

/** The figure that stands against a target of a kind, now or at an instant; null where nothing gives it. */
export const runTargetNow: JobRun<TargetNowDetails, TargetFigure | null> = async (book, details) => {
  const { before = Number.POSITIVE_INFINITY } = details;
  const digests = await presentDigests(book, details);
  const [page, driven] = [digests.page, digests.driven].map((all) =>
    all.filter(({ startedAt }) => startedAt < before),
  );
  return figureForTarget(details, page ?? [], () => levelOfPage(page ?? [], driven)) ?? null;
};
