import { type CalendarDate, daysBetween, type Target } from "#domain";
import { isOnPage, type PageSpan } from "./pages.ts";

/** What one session of a page says about a target: whether it stands at it, or away from it, beyond doubt. */
export interface TargetPoint {
  readonly date: CalendarDate;
  /** When, epoch ms. */
  readonly at: number;
  /** At the target or beyond it: surely for a time, very likely for a level. */
  readonly isThere: boolean;
  /** Away from it again beyond doubt; never for a best, which once reached is reached for good. */
  readonly isAway: boolean;
}

/** How it stands with a target. */
export type Standing =
  /** Times no longer compare with those it was set for. */
  | { readonly kind: "older page" }
  /** Reached, and not lost since; before its date, or it has none. */
  | { readonly kind: "reached"; readonly on: CalendarDate }
  /** It stood there before it was set. */
  | { readonly kind: "reached before"; readonly on: CalendarDate }
  /** Its date has passed; `lostOn` where it was reached in time and away again, `reachedOn` where it came there later. */
  | {
      readonly kind: "missed";
      readonly lostOn: CalendarDate | undefined;
      readonly reachedOn: CalendarDate | undefined;
    }
  /** `daysLeft` is absent for a target without a date; `lostOn` where it was reached and is away again. */
  | {
      readonly kind: "open";
      readonly daysLeft: number | undefined;
      readonly lostOn: CalendarDate | undefined;
    };

/**
 * Where a target stands on a day: the one home of "reached". A best lap once reached is reached for good; a usual lap is
 * reached when the level is very likely at it or under, and lost only when it is very likely above again. Missed when its
 * date has passed; what is lost or reached after that day no longer counts.
 * @param points of the page it is asked on, oldest first, none later than the day
 * @param page the page of the day
 */
export function standingOf(
  target: Pick<Target, "setAt" | "by">,
  points: readonly TargetPoint[],
  page: PageSpan,
  today: CalendarDate,
): Standing {
  const { setAt, by } = target;
  if (!isOnPage(page, setAt)) return { kind: "older page" };
  const inTime = by === undefined ? points : points.filter(({ date }) => date <= by);
  const { since, lostOn } = foldOf(inTime);
  if (since !== undefined) return { kind: since.at < setAt ? "reached before" : "reached", on: since.date };
  if (by === undefined) return { kind: "open", daysLeft: undefined, lostOn };
  if (by >= today) return { kind: "open", daysLeft: daysBetween(today, by), lostOn };
  return { kind: "missed", lostOn, reachedOn: foldOf(points).since?.date };
}

/** Whether a target counts as reached. */
export function isReached({ kind }: Standing): boolean {
  return kind === "reached" || kind === "reached before";
}

/** Since when it has been there, and when it was lost last, even where it has come there again. */
function foldOf(points: readonly TargetPoint[]) {
  let since: TargetPoint | undefined;
  let lostOn: CalendarDate | undefined;
  for (const point of points) {
    if (since === undefined && point.isThere) since = point;
    else if (since !== undefined && point.isAway) {
      since = undefined;
      lostOn = point.date;
    }
  }
  return { since, lostOn };
}
