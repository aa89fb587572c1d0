import { type Figure, leastForSpread } from "#domain";
import type { DatedBest } from "../bests/datedBest.ts";
import type { SessionPoint } from "../period/comboReviewFigures.ts";
import type { CurveOutlook } from "../period/curveOutlook.ts";
import type { PageSession } from "../period/pageHistory.ts";
import type { ForecastKind } from "../targets/futureFigures.ts";
import { levelFigure, type TargetFigure } from "./figureForTarget.ts";

/** What a figure of a target is looked up in. */
export interface FigureSources {
  readonly curve: Figure<CurveOutlook>;
  /** Sessions of the page with a median. */
  readonly history: readonly PageSession[];
  /** The page's personal-best line. */
  readonly bests: readonly DatedBest[];
  /** Sessions of all pages, in time order. */
  readonly points: readonly SessionPoint[];
}

/**
 * The figure that stood against a target at an instant: the personal best, or the level at the last session before; where
 * there is no level yet, the usual lap of that session.
 * @param at epoch ms; infinite for now
 * @returns undefined where there was none
 */
export function figureAt(
  { bests, curve, history, points }: FigureSources,
  kind: ForecastKind,
  at: number,
): TargetFigure | undefined {
  if (kind === "best") {
    const best = bests.findLast((step) => step.at < at);
    return best && { value: best.ms, decimals: best.decimals };
  }
  if (!curve.known) return usualBefore(points, at);
  const before = new Set(history.flatMap(({ sessionId, startedAt }) => (startedAt < at ? [sessionId] : [])));
  const level = curve.value.line.findLast(({ sessionId }) => before.has(sessionId))?.mid;
  return level === undefined ? undefined : levelFigure(level);
}

/** The usual lap of the last session of the page with five pace laps: what there is before there is a level. */
function usualBefore(points: readonly SessionPoint[], at: number): TargetFigure | undefined {
  const last = points.findLast(
    ({ isPresentPage, paceLaps, startedAt }) => isPresentPage && paceLaps >= leastForSpread && startedAt < at,
  );
  return last?.median === undefined
    ? undefined
    : { value: Math.round(last.median), decimals: last.medianDecimals };
}
