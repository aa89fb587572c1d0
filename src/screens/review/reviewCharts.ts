import type { ConsistencySession } from "#charts/consistency/consistencyTable.ts";
import type { BestStep, CurvePoint, ProgressData, ProgressTarget } from "#charts/progress/progress.ts";
import type { RangeRow } from "#charts/rangeRows/RangeRows.tsx";
import { addDays, type CalendarDate, daysBetween, formatLapTime, type Target } from "#domain";
import type { ComboReview, Share, TargetState } from "#stats";
import { factorNames, shareEnds, toldDifferences } from "#words";
import type { Looked } from "./looked.ts";
import type { Days } from "./periods.ts";

/** What the progress chart draws; sessions without a pace lap have no place on it. */
export function progressOf({ review, days, today }: Looked): ProgressData {
  const sessions = review.points
    .filter(({ median, best }) => median !== undefined || best !== undefined)
    .map((point) => ({
      id: point.sessionId,
      date: point.date,
      startedAt: point.startedAt,
      median: point.median,
      medianDecimals: point.medianDecimals,
      q1: point.lowerQuartile,
      q3: point.upperQuartile,
      best: point.best,
      bestDecimals: point.bestDecimals,
      bestOfTen: point.bestOfTen,
      laps: point.paceLaps,
      isPresentPage: point.isPresentPage,
    }));
  return {
    sessions,
    pbSteps: bestSteps(review, days),
    targets: review.targets.filter(isDrivenFor).flatMap(({ target }) => targetLine(target)),
    curve: curveOf(review, days, today),
  };
}

/** A day as a number, for pictures without an axis. */
export function dayNumber(date: CalendarDate): number {
  return daysBetween("1970-01-01", date);
}

/** What the height of a small picture of lap times stands for at least, as a share of the lap. */
export const leastShown = 0.015;

/** The level at the sessions of some days. */
export function levelIn<P extends { readonly date: CalendarDate }>(
  line: readonly P[],
  {
    from = "",
    to = "9999-12-31",
  }: { readonly from?: CalendarDate | undefined; readonly to?: CalendarDate | undefined },
): P[] {
  return line.filter(({ date }) => date >= from && date <= to);
}

/** Days of forecast shown at least; otherwise half as many as of the past. */
const leastAhead = 14;

/** Whether enough sessions stand behind a curve to draw it. */
export function isCurveDrawn(
  curve: ComboReview["curve"],
): curve is Extract<ComboReview["curve"], { known: true }> {
  return curve.known && !curve.value.isMostlyAssumption;
}

/**
 * The curve at the sessions of the period, and the sessions to come with their bands where the period reaches today.
 * Nothing of a curve that is mostly assumption: what it rests on least would be the largest thing drawn.
 */
function curveOf({ curve, points }: ComboReview, { from, to }: Days, today: CalendarDate): CurvePoint[] {
  if (!isCurveDrawn(curve) || points.length === 0) return [];
  const { line, ahead } = curve.value;
  const until = addDays(
    today,
    Math.max(leastAhead, Math.round(daysBetween(from ?? line[0]?.date ?? today, today) / 2)),
  );
  const past = levelIn(line, { from, to });
  return [
    ...past.map(({ date, sessionId, mid }) => ({ date, sessionId, ms: mid })),
    ...(to === undefined
      ? ahead
          .filter(({ date }) => date <= until)
          .map(
            ({ date, mid, low, lowHalf, highHalf, high }): CurvePoint => ({
              date,
              ms: mid,
              half: [lowHalf, highHalf],
              nineInTen: [low, high],
            }),
          )
      : []),
  ];
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
    .map(({ date, ms, decimals, sessionId }) => ({ date, ms, decimals, sessionId }));
  return held === undefined
    ? steps
    : [{ date: first.date, ms: held.ms, decimals: held.decimals, since: held.date }, ...steps];
}

/** What is driven for now: a target that is not archived, its date not gone by. */
function isDrivenFor({ target, standing }: TargetState): boolean {
  return target.archivedAt === undefined && (standing.kind === "open" || standing.kind === "reached");
}

function targetLine({ kind, value }: Target): ProgressTarget[] {
  if (kind === "best") return [{ ms: value, label: `target ${formatLapTime(value)}` }];
  if (kind === "median") return [{ ms: value, label: `target, usual ${formatLapTime(value)}` }];
  return [];
}

/** What the consistency chart draws; a session with too few laps stays in its table. */
export function consistencyOf({ points }: ComboReview): ConsistencySession[] {
  const driven = points.filter(({ laps }) => laps > 0);
  return driven.map((point) => ({
    id: point.sessionId,
    date: point.date,
    startedAt: point.startedAt,
    scatterPercent: point.consistency?.percent,
    intervalPercent: point.consistency && [point.consistency.low, point.consistency.high],
    laps: point.paceLaps,
    isPresentPage: point.isPresentPage,
  }));
}

/** The period before, where shares may be compared with it. */
export function sharesBefore({ against, before }: ComboReview): ComboReview["before"] | undefined {
  return against.known ? before : undefined;
}

/** Shares of clean laps and of laps near their session's best, now and before, in percent. */
export function shareRows(review: ComboReview, marginPercent: number): RangeRow[] {
  const row = (id: string, label: string, share: Share | undefined, soft: boolean): RangeRow[] => {
    if (share === undefined) return [];
    const [low, high] = shareEnds(share);
    const ends = [`${low} %`, `${high} %`] as const;
    return [
      { id, label, value: share.share * 100, low: share.low * 100, high: share.high * 100, ends, soft },
    ];
  };
  const near = `within ${marginPercent} % of the session's best`;
  return [
    ...row("clean", "clean, now", review.cleanShare, false),
    ...row("cleanBefore", "clean, before", sharesBefore(review)?.cleanShare, true),
    ...row("near", `${near}, now`, review.nearTheBest, false),
    ...row("nearBefore", `${near}, before`, sharesBefore(review)?.nearTheBest, true),
  ];
}

const mostDifferences = 8;

/** Differences in seconds: late laps, then the largest of what the laps were driven with. */
export function differenceRows({ thirds, factors }: ComboReview): RangeRow[] {
  const inSeconds = ({ estimate, low, high }: { estimate: number; low: number; high: number }) => ({
    value: estimate / 1000,
    low: low / 1000,
    high: high / 1000,
  });
  const late = thirds.known
    ? [{ id: "late", label: "late against early laps", ...inSeconds(thirds.value) }]
    : [];
  const told = toldDifferences(factors).slice(0, mostDifferences);
  return [
    ...late,
    ...told.map(({ factor, value, usual, difference }) => ({
      id: `${factor} ${value}`,
      label: `${factorNames[factor]}: ${value} against ${usual}`,
      ...inSeconds(difference),
    })),
  ];
}
