import type { ConsistencySession } from "#charts/consistencyTable.ts";
import type { BestStep, ProgressData, ProgressTarget } from "#charts/progress.ts";
import { formatLapTime, type Target } from "#domain";
import type { ComboReview } from "#stats";
import type { Days } from "./periods.ts";

/** What the progress chart draws; sessions without a pace lap have no place on it. */
export function progressOf(review: ComboReview, days: Days, targets: readonly Target[]): ProgressData {
  const sessions = review.points
    .filter(({ median, best }) => median !== undefined || best !== undefined)
    .map((point) => ({
      id: point.sessionId,
      date: point.date,
      startedAt: point.startedAt,
      median: point.median,
      q1: point.lowerQuartile,
      q3: point.upperQuartile,
      best: point.best,
      bestOfTen: point.bestOfTen,
      laps: point.paceLaps,
      isPresentPage: point.isPresentPage,
    }));
  return { sessions, pbSteps: bestSteps(review, days), targets: targets.flatMap(targetLine) };
}

/**
 * The steps of the personal-best line in the period, the last of each session; the one that held when it began stands at its first session.
 */
function bestSteps({ points, bests }: ComboReview, { from = "", to = "9999-12-31" }: Days): BestStep[] {
  const first = points.find(({ isPresentPage }) => isPresentPage);
  if (first === undefined) return [];
  const held = bests.findLast(({ date }) => date < from);
  const within = bests.filter(({ date }) => date >= from && date <= to);
  const steps = within
    .filter(({ sessionId }, index) => within[index + 1]?.sessionId !== sessionId)
    .map(({ date, ms, sessionId }) => ({ date, ms, sessionId }));
  return held === undefined ? steps : [{ date: first.date, ms: held.ms, since: held.date }, ...steps];
}

function targetLine({ kind, value }: Target): ProgressTarget[] {
  if (kind === "best") return [{ ms: value, label: `target ${formatLapTime(value)}` }];
  if (kind === "median") return [{ ms: value, label: `target, usual ${formatLapTime(value)}` }];
  return [];
}

/** What the consistency chart draws; a session with too few laps stays in its table. */
export function consistencyOf({ points }: ComboReview): ConsistencySession[] {
  return points.map((point) => ({
    id: point.sessionId,
    date: point.date,
    startedAt: point.startedAt,
    scatterPercent: point.consistency?.percent,
    intervalPercent: point.consistency && [point.consistency.low, point.consistency.high],
    laps: point.paceLaps,
    isPresentPage: point.isPresentPage,
  }));
}
