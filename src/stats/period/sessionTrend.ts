import { type Figure, known, type Shortage, unknown } from "#domain";
import { CONFIDENCE, median, normalCdf } from "#numbers";
import { theilSen } from "../sample/theilSen.ts";
import { type MannKendall, mannKendall } from "../weeks/mannKendall.ts";
import { sessionsNeededForChange } from "../weeks/sessionsNeededForChange.ts";
import { streakFactor } from "../weeks/streakFactor.ts";

const LEAST_SESSIONS = 5;
const WEEK = 7 * 86_400_000;

/** A slope with its 90 % interval; a fall is negative. */
export interface Slope {
  readonly slope: number;
  readonly low: number;
  readonly high: number;
}

/** The trend of one figure over sessions. */
export interface SessionTrend {
  readonly sessions: number;
  /** Mann–Kendall, two-sided, corrected for good and bad sessions in streaks (beyond ten of them). */
  readonly p: number;
  readonly tau: number;
  /** A clear change needs p under 0.1 and an interval without zero. */
  readonly finding: "falling" | "rising" | "no clear change";
  readonly perWeek: Slope;
  /** By laps driven; absent where fewer than a hundred lie between the sessions: no line is told beyond what was driven. */
  readonly per100Laps: Slope | undefined;
  /** A change worth showing, in the figure's unit, and how many more sessions like these would show it; undefined
   * when more than 500. */
  readonly change: number;
  readonly moreSessions: number | undefined;
}

/** A session's place in time and in laps, and its figure. */
export interface TrendPoint {
  readonly startedAt: number;
  /** Laps driven on the page up to the middle of the session. */
  readonly laps: number;
  readonly value: number;
}

/**
 * Trend of a figure over sessions: Mann–Kendall, corrected for streaks, for whether there is one, Theil–Sen with Sen's interval for how fast.
 * @param points in time order
 * @param counted what a point is, for the reason: { of: "combo with this figure" }
 * @param worthShowing share of the usual figure that a change worth showing has
 * @returns a reason for fewer than five sessions or where all lie at one instant
 */
export function sessionTrend(
  points: readonly TrendPoint[],
  counted: Pick<Shortage, "of" | "each">,
  worthShowing: number,
): Figure<SessionTrend> {
  const values = points.map((point) => point.value);
  if (points.length < LEAST_SESSIONS)
    return unknown({ needs: LEAST_SESSIONS, ...counted, has: points.length });
  const first = points[0]?.startedAt ?? 0;
  const weeks = points.map((point) => (point.startedAt - first) / WEEK);
  const test = mannKendall(values);
  const perWeek = theilSen(weeks, values, CONFIDENCE);
  const driven = points.map((point) => point.laps / 100);
  const isLong = (driven.at(-1) ?? 0) - (driven[0] ?? 0) >= 1;
  const per100Laps = isLong ? theilSen(driven, values, CONFIDENCE) : undefined;
  if (test === undefined || perWeek === undefined) return unknown({ because: "all at one time" });
  const p = withStreaks(test, weeks, values, perWeek.slope);
  const isClear = p < 1 - CONFIDENCE && (perWeek.low > 0 || perWeek.high < 0);
  const change = worthShowing * Math.abs(median(values) as number);
  return known({
    sessions: points.length,
    p,
    tau: test.tau,
    finding: !isClear ? "no clear change" : test.s < 0 ? "falling" : "rising",
    perWeek: slopeOf(perWeek),
    per100Laps: per100Laps === undefined ? undefined : slopeOf(per100Laps),
    change,
    moreSessions: change > 0 ? sessionsNeededForChange(values, change) : undefined,
  });
}

/** The probability of the test where good and bad sessions come in streaks; counted exactly, it is left as it is. */
function withStreaks(
  { exact, p, z }: MannKendall,
  weeks: readonly number[],
  values: readonly number[],
  slope: number,
): number {
  if (exact) return p;
  const rest = values.map((value, i) => value - slope * (weeks[i] as number));
  return Math.min(1, 2 * normalCdf(-Math.abs(z) / Math.sqrt(streakFactor(rest))));
}

function slopeOf({ slope, low, high }: Slope): Slope {
  return { slope, low, high };
}
