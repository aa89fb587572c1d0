import { onPage, pageSpans } from "#combo";
import { type CalendarDate, daysBetween, type Page, unknown } from "#domain";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type BreakCost, breakCosts } from "../weeks/breakCosts.ts";
import { BREAK_DAYS, type Pause } from "../weeks/longestPause.ts";
import { pageHistory } from "./pageHistory.ts";

/** A break of ten days or more, and what it cost where that can be asked. */
export interface Break extends BreakCost {
  /** Whether a usual lap of the same page is known on both sides: times of two pages do not compare. */
  readonly isCompared: boolean;
}

/**
 * The breaks of a combo, in time order: ten days or more without a lap on any of its pages, for practice is practice. What
 * one cost is asked within a page only (see `breakCosts`).
 * @param digests of the combo, in any order
 * @param pages its new pages, in any order
 */
export function breaksOf(digests: readonly SessionDigest[], pages: readonly Page[]): Break[] {
  const costs = pageSpans(pages).flatMap((page) => breakCosts(pageHistory(onPage(page, digests))));
  return pausesOf(digests).map((pause) => {
    const found = costs.find(({ from, to }) => from === pause.from && to === pause.to);
    if (found !== undefined) return { ...found, isCompared: true };
    const cost = unknown({ because: "no usual lap on both sides" });
    return { ...pause, cost, lapsUntilBack: undefined, isCompared: false };
  });
}

function pausesOf(digests: readonly SessionDigest[]): Pause[] {
  const days = [...new Set(digests.filter(isDrivenSession).map(({ date }) => date))].sort();
  return days
    .slice(1)
    .map((to, index) => {
      const from = days[index] as CalendarDate;
      return { from, to, days: daysBetween(from, to) };
    })
    .filter((pause) => pause.days >= BREAK_DAYS);
}
