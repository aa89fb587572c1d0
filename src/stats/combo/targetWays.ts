import { isOnPage, type PageSpan } from "#combo";
import type { CalendarDate, Target } from "#domain";
import { datedBests } from "../bests/datedBests.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { pageHistory } from "../period/pageHistory.ts";
import { levelFigure, type TargetFigure } from "./figureForTarget.ts";
import { pageLevel } from "./pageLevel.ts";
import type { TargetFacts } from "./targetPoints.ts";

/** A figure of a target as it was known on a day. */
export interface WayPoint extends TargetFigure {
  readonly date: CalendarDate;
}

/** How a target's figure went from its setting to its date, or to today. */
export interface TargetWay {
  readonly targetId: Target["id"];
  /** In time order; for a best lap each step of the PB line, for a usual lap the level after each session. */
  readonly points: readonly WayPoint[];
}

export interface WaysQuestion {
  readonly targets: readonly Target[];
  /** The page the combo stands on, its digests in time order, and those of all its pages. */
  readonly span: PageSpan;
  readonly page: readonly SessionDigest[];
  readonly driven: readonly SessionDigest[];
}

/**
 * The ways that the figures of targets have come since they were set: what was known on each day, without what came later.
 * Only for targets of a best or a usual lap that were set on the page.
 */
export function targetWays({ targets, span, page, driven }: WaysQuestion): TargetWay[] {
  const history = pageHistory(page, driven);
  const facts = { page, history, level: pageLevel(history) };
  return targets
    .filter(({ setAt }) => isOnPage(span, setAt))
    .flatMap((target) => {
      const points = pointsOf(target, facts);
      return points === undefined ? [] : [{ targetId: target.id, points }];
    });
}

function pointsOf(
  { kind, setAt, by }: Target,
  { page, history, level }: TargetFacts,
): readonly WayPoint[] | undefined {
  const isWithin = (at: number, date: CalendarDate) => at >= setAt && (by === undefined || date <= by);
  switch (kind) {
    case "best":
      return datedBests(page).flatMap(({ at, date, ms, decimals }) =>
        isWithin(at, date) ? [{ date, value: ms, decimals }] : [],
      );
    case "median":
      return history.flatMap(({ startedAt, date }, index) => {
        const mid = isWithin(startedAt, date) ? level.after(index)?.mid : undefined;
        return mid === undefined ? [] : [{ date, ...levelFigure(mid) }];
      });
    default:
      return undefined;
  }
}
