import { isOnPage, type PageSpan } from "#combo";
import type { CalendarDate, Target } from "#domain";
import { datedBests } from "../bests/datedBests.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { pageHistory } from "../period/pageHistory.ts";
import { levelFigure, type TargetFigure } from "./figureForTarget.ts";
import { pageLevel } from "./pageLevel.ts";
import { type SessionFigure, sessionFigures } from "./sessionFigures.ts";
import type { TargetFacts } from "./targetPoints.ts";

/** A figure of a target as it was known on a day. */
export interface WayPoint extends TargetFigure {
  readonly date: CalendarDate;
}

/** How a target's figure went from its setting to its date, or to today. */
export interface TargetWay {
  readonly targetId: Target["id"];
  /**
   * In time order; for a best lap each step of the PB line and for a mean the same of it, for a usual lap the level after each
   * session, else the figure of each session.
   */
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
 * Only for targets that were set on the page.
 */
export function targetWays({ targets, span, page, driven }: WaysQuestion): TargetWay[] {
  const history = pageHistory(page, driven);
  const facts = { page, history, level: pageLevel(history) };
  return targets
    .filter(({ setAt }) => isOnPage(span, setAt))
    .map((target) => ({ targetId: target.id, points: pointsOf(target, facts) }));
}

function pointsOf(target: Target, { page, history, level }: TargetFacts): readonly WayPoint[] {
  const { kind, setAt, by } = target;
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
    case "meanOf":
      return stepsDown(sessionFigures(target, page)).flatMap(pointIf(isWithin));
    case "scatter":
    case "cleanShare":
      return sessionFigures(target, page).flatMap(pointIf(isWithin));
  }
}

/** Those that are better than all before. */
function stepsDown(figures: readonly SessionFigure[]): readonly SessionFigure[] {
  let best = Number.POSITIVE_INFINITY;
  return figures.filter(({ value }) => {
    const isStep = value < best;
    best = Math.min(best, value);
    return isStep;
  });
}

function pointIf(isWithin: (at: number, date: CalendarDate) => boolean) {
  return ({ session: { startedAt, date }, value, decimals }: SessionFigure): readonly WayPoint[] =>
    isWithin(startedAt, date) ? [{ date, value, decimals }] : [];
}
