import type { SessionTrend, Slope } from "#stats";
import { awayFromZero, sayAmount, type Unit } from "./amount.ts";
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
 * The finding of a trend, which can be that there is none; then what is ruled out stands with it.
 * @example "Faster by 0.42 s in 6 weeks, very likely at least 0.20 s"
 * @example "No clear change in 12 weeks: not slower by more than 0.10 s a week"
 */
export function trendTitle({ finding, perWeek }: SessionTrend, { words, days }: Told): string {
  const { unit } = words;
  const span = sayDays(days);
  if (isSame(perWeek)) return `No change in ${span}: the same all along`;
  if (finding === "no clear change") return `No clear change in ${span}: ${ruledOut(perWeek, words)}`;
  const change = timesWeeks(perWeek, days / WEEK);
  const direction = finding === "falling" ? words.fall : words.rise;
  return asSentence(
    `${direction} by ${sayAmount(change.slope, unit)} in ${span}, ${sayAtLeast(change, unit)}`,
  );
}

/**
 * What stands behind the finding: sessions, interval, and without a clear change when an answer is likely.
 * @example "From 9 sessions: between 0.06 s faster and 0.10 s slower a week. About 9 more sessions like these would
 * show a change of 0.42 s."
 */
export function trendReading(trend: SessionTrend, { words }: Told): string {
  const { finding, perWeek, sessions } = trend;
  const isFound = finding !== "no clear change";
  const chance = !isFound && (perWeek.low >= 0 || perWeek.high <= 0) ? ", may be chance" : "";
  const between = isSame(perWeek)
    ? "no difference"
    : `${sayBetween(perWeek, words.unit, words)} a week${chance}`;
  const weekly = `From ${counted(sessions, "session")}: ${between}.`;
  const after = isFound
    ? "Sessions in a row are alike, so this is a little too sure."
    : whenLikely(trend, words);
  return `${weekly}${after === "" ? "" : ` ${after}`}`;
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

/** The worse end first: what the driver fears most. */
function ruledOut({ low, high }: Slope, { unit, fall, rise }: TrendWords): string {
  if (high > 0) return `not ${rise} by more than ${unit.say(awayFromZero(high, unit))} a week`;
  return `not ${fall} by more than ${unit.say(awayFromZero(low, unit))} a week`;
}

function whenLikely({ change, moreSessions }: SessionTrend, { unit }: TrendWords): string {
  if (!(change > 0)) return "";
  const worth = `a change of ${sayAmount(change, unit)}`;
  if (moreSessions === undefined) return `To show ${worth} would take more than 500 sessions like these.`;
  if (moreSessions === 0) return `Sessions like these show ${worth} in 16 of 20 cases.`;
  return `About ${moreSessions} more ${moreSessions === 1 ? "session" : "sessions"} like these would show ${worth}.`;
}

/** "12 weeks", under two weeks "9 days" */
export function sayDays(days: number): string {
  return days < WEEKS_FROM
    ? counted(Math.max(1, Math.round(days)), "day")
    : `${Math.round(days / WEEK)} weeks`;
}
