import { type CalendarDate, latestMs, type TargetKind } from "#domain";
import type { ComboReview, DatedBest } from "#stats";

/** The kinds of target whose figure the review of a combo holds. */
export const measuredKinds = ["best", "median"] as const satisfies readonly TargetKind[];
export type MeasuredKind = (typeof measuredKinds)[number];

export function isMeasured(kind: TargetKind): kind is MeasuredKind {
  return kind === "best" || kind === "median";
}

/** A lap time and when it was driven. */
export interface DatedTime {
  readonly ms: number;
  /** How many decimals of a second are known. */
  readonly decimals: number;
  /** Its latest possible value: a time known to tenths may have been 0.099 s longer. */
  readonly surelyMs: number;
  readonly date: CalendarDate;
  readonly at: number;
}

/**
 * What a target of this kind is measured by, oldest first, of the present page: the steps of the personal-best line,
 * or the medians of sessions of at least five pace laps.
 */
export function timesOf(review: ComboReview, kind: MeasuredKind): DatedTime[] {
  return kind === "best" ? review.bests.map(timeOfLap) : drivenFor(review, kind);
}

/** What every session of the present page brought for a target of this kind, a step forward or not; oldest first. */
export function drivenFor(review: ComboReview, kind: MeasuredKind): DatedTime[] {
  if (kind === "best") return review.sessionBests.map(timeOfLap);
  return review.history.map(({ medianMs, date, startedAt }) => ({
    ms: medianMs,
    decimals: 3,
    surelyMs: medianMs,
    date,
    at: startedAt,
  }));
}

function timeOfLap(lap: DatedBest): DatedTime {
  const { ms, decimals, date, at } = lap;
  return { ms, decimals, surelyMs: latestMs(lap), date, at };
}

/** The figure as it stood at an instant: PB, or median of the last session before it; undefined where there was none. */
export function figureAt(review: ComboReview, kind: MeasuredKind, at: number): DatedTime | undefined {
  return timesOf(review, kind).findLast((time) => time.at < at);
}

/** Fastest and slowest of the best laps of the present page's sessions; undefined for fewer than two. */
export function rangeOfBests({
  points,
}: ComboReview): { readonly low: number; readonly high: number } | undefined {
  const bests = points.flatMap(({ best, isPresentPage }) =>
    isPresentPage && best !== undefined ? [best] : [],
  );
  return bests.length < 2 ? undefined : { low: Math.min(...bests), high: Math.max(...bests) };
}
