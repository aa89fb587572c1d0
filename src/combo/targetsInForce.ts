import type { CalendarDate, Target } from "#domain";
import { isOnPage, type PageSpan } from "./pages.ts";

/** Days that a target is asked about, both counted, and the instant at which they begin, epoch ms. */
export interface AskedDays {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly at: number;
}

/**
 * Whether a target ruled on some of the days: set on or before the last of them, on the same page, its date not gone by
 * before the first, and not archived before they began. One set today rules no earlier day, one of an old page nothing
 * on the new.
 */
export function isInForce(target: Target, page: PageSpan, { from, to, at }: AskedDays): boolean {
  const { setAt, setOn, by = from, archivedAt = Number.POSITIVE_INFINITY } = target;
  return isOnPage(page, setAt) && setOn <= to && by >= from && archivedAt > at;
}

/** The targets in force on some of the days, the nearest date first, without a date last. */
export function targetsInForce(targets: readonly Target[], page: PageSpan, days: AskedDays): Target[] {
  return targets.filter((target) => isInForce(target, page, days)).toSorted(nearestFirst);
}

const day = ({ by = "9999-12-31" }: Target) => by;

/** The nearest date first, without a date last; of one date the one that was set first. */
export function nearestFirst(a: Target, b: Target): number {
  return day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : a.setAt - b.setAt;
}

/**
 * The order a driver looks for: what is still to be reached, the nearest date first; then dates gone by, the newest
 * first; last what was set on an older page.
 * @param page the combo's present page
 */
export function inOrder(targets: readonly Target[], page: PageSpan, today: CalendarDate): Target[] {
  const rank = ({ setAt, by = today }: Target) => (!isOnPage(page, setAt) ? 2 : by < today ? 1 : 0);
  return targets.toSorted((a, b) => {
    const days = day(a) < day(b) ? -1 : day(a) > day(b) ? 1 : 0;
    return rank(a) - rank(b) || (rank(a) === 1 ? -days : days) || a.setAt - b.setAt;
  });
}
