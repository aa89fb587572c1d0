import { betweenParts, type CalendarDate, daysBetween, sayDate, sayShortDate } from "#domain";
import type { Period } from "#state/address.ts";
import type { ComboReview } from "#stats";
import {
  bandMeaning,
  counted,
  type KnownOn,
  personalBestTitle,
  progressReading,
  progressTitle,
  sayCounts,
  sayGuestLaps,
} from "#words";
import { type Days, rollingPeriods } from "./periods.ts";
import { isCurveDrawn } from "./reviewCharts.ts";

/** "the last 12 weeks" */
export function sayPeriod(period: Period): string {
  if (period.kind === "dates") return `${sayDate(period.from)} to ${sayDate(period.to)}`;
  return rollingPeriods.find(({ kind }) => kind === period.kind)?.phrase ?? "all the time";
}

/** Sessions and laps of the period, and where each lap went that is in no figure. */
export function sayWhatCounts(review: ComboReview): string {
  const { sessions, sessionsOnOldPages, guestLaps, counts } = review;
  return [
    counted(sessions, "session"),
    counts.driven > 0 && sayCounts(counts),
    sayGuestLaps(guestLaps),
    sessionsOnOldPages > 0 &&
      `${counted(sessionsOnOldPages, "session")} of older pages, in grey and in no figure`,
  ]
    .filter(Boolean)
    .join(betweenParts);
}

/**
 * What a period holds.
 * @example "12 weeks: 5 Sep to 28 Nov, 20 sessions, 416 laps"
 */
export function sayHolds(
  period: Period,
  { from, to }: Days,
  review: ComboReview,
  today: CalendarDate,
): string {
  const [first, last] = [from ?? review.points[0]?.date, to ?? today];
  const word = rollingPeriods.find(({ kind }) => kind === period.kind)?.word;
  const days = first === undefined ? "" : `${sayShortDate(first, today)} to ${sayShortDate(last, today)}, `;
  const holds = `${counted(review.practice.sessions, "session")}, ${counted(review.practice.laps, "lap")}`;
  return `${word === undefined ? "" : `${word}: `}${days}${holds}`;
}

/** What the progress chart finds; with too few sessions for a trend, what can be said already. */
export function sayProgressFound(
  review: ComboReview,
  on: KnownOn,
  isAhead: boolean,
): { readonly title: string; readonly reading: string } {
  const { curve } = review;
  const bands = isAhead && isCurveDrawn(curve) && curve.value.ahead.length > 0 ? ` ${bandMeaning}` : "";
  const reading = `${progressReading(review)}${bands}`;
  return {
    title: progressTitle(review, on),
    reading: review.gain.known ? reading : `${personalBestTitle(review.bests)}. ${reading}`,
  };
}

/** The equally long period before in words; undefined where the period has no beginning. */
export function sayBefore(period: Period): string | undefined {
  if (period.kind === "all") return undefined;
  if (period.kind === "year") return "the year before";
  if (period.kind !== "dates")
    return `the ${rollingPeriods.find(({ kind }) => kind === period.kind)?.word ?? ""} before`;
  return `the ${counted(daysBetween(period.from, period.to) + 1, "day")} before`;
}
