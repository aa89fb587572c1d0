import { isOnPage, pageOf } from "#combo";
import { pagesOfCombo, preferences } from "#db";
import type { CalendarDate, Id, Surface } from "#domain";
import { type RunBasis, runBasis } from "#stats";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";

export interface RunBasisDetails {
  readonly comboId: Id;
  /** When the session of the run began, epoch ms, and its day. */
  readonly startedAt: number;
  readonly date: CalendarDate;
  readonly surface: Surface;
  readonly today: CalendarDate;
}

/** What the runs of a session are judged by: the sessions of its page before it. */
export const runRunBasis: JobRun<RunBasisDetails, RunBasis> = async (
  book,
  { comboId, startedAt, date, surface, today },
) => {
  const [pages, chosen] = await Promise.all([pagesOfCombo(book, comboId), preferences(book)]);
  const driven = await freshDigests(book, comboId, chosen, today);
  const span = pageOf(pages, startedAt);
  return runBasis({
    page: driven.filter((digest) => isOnPage(span, digest.startedAt)),
    driven,
    session: { startedAt, date },
    surface,
  });
};
