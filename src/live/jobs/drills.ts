import { onPage, presentPage } from "#combo";
import { pagesOfCombo, preferences } from "#db";
import type { CalendarDate, Id } from "#domain";
import { type CountedDrills, countedDrills, isDrivenSession, pageHistory, seasonBegins } from "#stats";
import { withRuns } from "./corners.ts";
import { freshDigests } from "./freshDigests.ts";
import type { JobRun } from "./job.ts";

export interface DrillsDetails {
  readonly comboId: Id;
  readonly today: CalendarDate;
  /** Only drills of this corner, and what followed there; absent: the drills of all. */
  readonly corner?: number;
}

/** Sessions before the twelve weeks that are looked at. */
const SESSIONS_BEFORE = 10;

/** The drills counted with a combo in the last twelve weeks of its present page. */
export const runDrills: JobRun<DrillsDetails, CountedDrills> = async (book, { comboId, today, corner }) => {
  const [pages, chosen] = await Promise.all([pagesOfCombo(book, comboId), preferences(book)]);
  const digests = (await freshDigests(book, comboId, chosen, today)).filter(isDrivenSession);
  const page = onPage(presentPage(pages, today), digests);
  const inOrder = page.toSorted((a, b) => a.startedAt - b.startedAt);
  const since = seasonBegins(today);
  const inSeason = page.filter(({ date }) => date >= since).length;
  return countedDrills({
    // In time order those of the season come last; some before them tell what there was before a drill.
    sessions: await withRuns(book, inOrder.slice(-(inSeason + SESSIONS_BEFORE))),
    since,
    history: pageHistory(page, digests),
    preferences: chosen,
    corner,
  });
};
