import { daysBetween, sayDate } from "#domain";
import type { ComboReview, CurveOutlook, SessionTrend } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";
import { certaintyOf } from "./certainty.ts";
import { gainReading, gainTitle, type KnownOn } from "./gain.ts";
import { pace } from "./shift.ts";
import { trendBy100Laps } from "./trendSays.ts";

type Reviewed = Pick<ComboReview, "gain" | "trend" | "curve">;

/**
 * What the progress chart finds: how far the level has moved over the period, and whether it still moves.
 * @example "Usual lap faster by 2.40 s since 31 Aug, very likely at least 2.13 s; no longer moving"
 */
export function progressTitle({ gain, curve }: Pick<Reviewed, "gain" | "curve">, on: KnownOn): string {
  const title = gainTitle(gain, on);
  return gain.known && curve.known && curve.value.isLevel ? `${title}; no longer moving` : title;
}

/** What stands behind it: sessions and interval, since when the level rests or moves again, and the straight line. */
export function progressReading({ gain, trend, curve }: Reviewed): string {
  return [gainReading(gain), curve.known && sayRest(curve.value), sayStraightLine({ trend, gain })]
    .filter(Boolean)
    .join(" ");
}

/** Since when the level no longer moves, or moves again; empty where it simply moves. */
function sayRest({ isLevel, levelSince, movingSince, line, sessionsLeftOut }: CurveOutlook): string {
  const dayOf = (session: number) => line[session - sessionsLeftOut]?.date;
  const [rests, moves] = [levelSince, movingSince].map((since) =>
    since === undefined ? undefined : dayOf(since),
  );
  if (isLevel && rests !== undefined) return `No longer moving since about ${sayDate(rests)}.`;
  return !isLevel && moves !== undefined ? `Moving again since about ${sayDate(moves)}.` : "";
}

/** The trend as a straight line, which is never multiplied by weeks; empty where it is not clear, or the level does not agree. */
function sayStraightLine({ trend, gain }: Pick<ComboReview, "trend" | "gain">): string {
  if (!trend.known || trend.value.finding === "no clear change" || !isBorneOut(trend.value, gain)) return "";
  const { perWeek, finding } = trend.value;
  const direction = finding === "falling" ? pace.fall : pace.rise;
  return `About ${sayAmount(perWeek.slope, hundredths)} a week ${direction}, as a straight line.`;
}

/** The trend by a hundred laps, for who wants it; empty where there is none, or the level does not agree. */
export function progressBy100Laps({ trend, gain }: Pick<ComboReview, "trend" | "gain">): string {
  if (!trend.known || !isBorneOut(trend.value, gain)) return "";
  return trendBy100Laps(trend.value, { ...pace, unit: hundredths });
}

/** Whether the level went the way a straight line goes: one page does not say faster and not clearly faster. */
function isBorneOut({ perWeek }: SessionTrend, gain: ComboReview["gain"]): boolean {
  if (!gain.known || certaintyOf(gain.value.chanceFaster) === "may be chance") return false;
  return Math.sign(perWeek.slope) === Math.sign(gain.value.change);
}

/** Days from the first to the last session of the present page with a usual lap. */
export function daysOfPage(points: ComboReview["points"]): number {
  const dates = points
    .filter((point) => point.isPresentPage && point.median !== undefined)
    .map((point) => point.date);
  const [first, last] = [dates[0], dates.at(-1)];
  return first === undefined || last === undefined ? 0 : daysBetween(first, last);
}
