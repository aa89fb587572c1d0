import type { SessionTrend, Slope } from "#stats";
import { sayAmount, type Unit } from "./amount.ts";
import { asSentence, counted } from "./counted.ts";
import { type Directions, isClear, isSame, sayAtLeast, sayBetween } from "./shift.ts";

const WEEK = 7;
const WEEKS_FROM = 14;

/** How the trend of one figure is told. */
export interface TrendWords extends Directions {
  readonly unit: Unit;
}

/** What is known beside a trend: the days from its first session to its last. */
export interface Told {
  readonly words: TrendWords;
  readonly days: number;
}

/**
 * The finding of a trend, which can be that there is none so far.
 * @example "Faster by 0.42 s in 6 weeks, very likely at least 0.20 s"
 * @example "Not getting faster or slower so far"
 */
export function trendTitle({ finding, perWeek }: SessionTrend, { words, days }: Told): string {
  const { unit, fall, rise } = words;
  if (isSame(perWeek)) return `No change in ${sayDays(days)}: the same all along`;
  if (finding === "no clear change") return `Not getting ${fall} or ${rise} so far`;
  const change = timesWeeks(perWeek, days / WEEK);
  const direction = finding === "falling" ? fall : rise;
  return asSentence(
    `${direction} by ${sayAmount(change.slope, unit)} in ${sayDays(days)}, ${sayAtLeast(change, unit)}`,
  );
}

/**
 * What stands behind the finding: sessions, interval, and without a clear change when an answer is likely.
 * @example "From 9 sessions in 12 weeks: between 0.06 s faster and 0.10 s slower a week. A change this small would show
 * in about 3 months at this rate."
 */
export function trendReading(trend: SessionTrend, { words, days }: Told): string {
  const { finding, perWeek, sessions } = trend;
  const isFound = finding !== "no clear change";
  const chance = !isFound && (perWeek.low >= 0 || perWeek.high <= 0) ? ", may be chance" : "";
  const between = isSame(perWeek)
    ? "no difference"
    : `${sayBetween(perWeek, words.unit, words)} a week${chance}`;
  const from = `From ${counted(sessions, "session")} in ${sayDays(days)}: ${between}.`;
  const after = isFound
    ? "Good and bad evenings come in streaks, which can look like this."
    : whenLikely(trend, words, days);
  return `${from}${after === "" ? "" : ` ${after}`}`;
}

/**
 * The same trend by practice instead of by time; empty where no laps lie between the sessions.
 * @example "A hundred laps: between 0.05 and 0.18 s faster."
 */
export function trendBy100Laps({ per100Laps }: SessionTrend, words: TrendWords): string {
  if (per100Laps === undefined) return "";
  const chance = isClear(per100Laps) || isSame(per100Laps) ? "" : ", may be chance";
  return `A hundred laps: ${sayBetween(per100Laps, words.unit, words)}${chance}.`;
}

function timesWeeks({ slope, low, high }: Slope, weeks: number): Slope {
  return { slope: slope * weeks, low: low * weeks, high: high * weeks };
}

/** Days of a month, and days from which on a wait is one of years. */
const MONTH = 30.4;
const YEARS_FROM = 550;

/** When a change worth showing would be told from chance, at the pace at which sessions came so far. */
function whenLikely(
  { change, moreSessions, sessions }: SessionTrend,
  { unit }: TrendWords,
  days: number,
): string {
  if (!(change > 0)) return "";
  const worth = `A change of ${sayAmount(change, unit)}`;
  if (moreSessions === 0) return `${worth} should show by now: 16 chances in 20.`;
  const wait = moreSessions === undefined ? Infinity : (moreSessions * days) / Math.max(1, sessions - 1);
  if (wait >= YEARS_FROM) return `${worth} would not show for years at this rate.`;
  const time = wait < 2 * MONTH ? sayDays(wait) : `${Math.round(wait / MONTH)} months`;
  return `${worth} would show in about ${time} at this rate, with ${counted(moreSessions as number, "more session")}.`;
}

/** "12 weeks", under two weeks "9 days" */
export function sayDays(days: number): string {
  return days < WEEKS_FROM
    ? counted(Math.max(1, Math.round(days)), "day")
    : `${Math.round(days / WEEK)} weeks`;
}
