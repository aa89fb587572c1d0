import { sayDate, unbroken } from "#domain";
import type { Break, PracticeAmount, PracticeRate } from "#stats";
import { hundredths } from "./amount.ts";
import { counted } from "./counted.ts";
import { sayLacking } from "./reason.ts";
import { isClear, pace, sayBetween, sayClear, sayNotClear } from "./shift.ts";

const MINUTE = 60_000;

/**
 * A length of time as hours and minutes, on one line.
 * @example sayHours(39_081_560) // "10 h 51 min"
 */
export function sayHours(ms: number): string {
  const minutes = Math.round(ms / MINUTE);
  const hours = Math.floor(minutes / 60);
  return unbroken(hours === 0 ? `${minutes} min` : `${hours} h ${String(minutes % 60).padStart(2, "0")} min`);
}

/**
 * How much was driven.
 * @example "22 sessions, 454 laps, 10 h 51 min at the wheel"
 */
export function practiceTitle({ sessions, laps, drivingMs }: PracticeAmount): string {
  return `${counted(sessions, "session")}, ${counted(laps, "lap")}, ${sayHours(drivingMs)} at the wheel`;
}

/**
 * Sitting time where it is known, and the same length before.
 * @param before the period before in words; undefined where there is none
 */
export function practiceReading(
  now: PracticeAmount,
  was: PracticeAmount,
  before: string | undefined,
): string {
  const { sittingMs, sittingsKnown, sessions } = now;
  const known = sittingsKnown === sessions ? "" : ` (start and end known of ${sittingsKnown})`;
  const sitting =
    sittingsKnown === 0 ? "" : ` From start to end of the sessions ${sayHours(sittingMs)}${known}.`;
  const earlier =
    before === undefined
      ? ""
      : ` In ${before}: ${was.sessions === 0 ? "no session" : `${counted(was.sessions, "session")}, ${counted(was.laps, "lap")}, ${sayHours(was.drivingMs)}`}.`;
  return `Time at the wheel is the sum of the laps; a lap without a time counts as a usual one.${sitting}${earlier}`;
}

/**
 * A break and what it cost.
 * @example "16 days without a session until Sat 17 Oct 2026: the first session after it was not clearly faster or slower,
 * between 0.10 s faster and 0.79 s slower. A session as fast as the last one before it came after 40 laps."
 */
export function sayBreak({ days, to, cost, lapsUntilBack, isCompared }: Break): string {
  const back = sayBack(lapsUntilBack, cost.known && isClear(cost.value));
  const pause = `${counted(days, "day")} without a session until ${sayDate(to)}`;
  return isCompared
    ? `${pause}: ${costWords(cost)}. ${back}`
    : `${pause}; what it cost cannot be told: no usual lap before and after it that can be compared.`;
}

/** What was not clearly lost cannot be back. */
function sayBack(laps: number | undefined, isLost: boolean): string {
  if (laps === undefined) return "No session since has been as fast as the last one before it.";
  const after = `after ${counted(laps, "lap")}`;
  return isLost
    ? `You were as fast as before ${after}.`
    : `A session as fast as the last one before it came ${after}.`;
}

function costWords(cost: Break["cost"]): string {
  if (!cost.known) return `what it cost cannot be told yet, ${sayLacking(cost.reason)}`;
  return isClear(cost.value)
    ? `the first session after it was ${sayClear(cost.value, hundredths, pace)}`
    : `the first session after it was ${sayNotClear(pace)}, ${sayBetween(cost.value, hundredths, pace)}`;
}

/** Breaks in short, for a folded answer; empty without one. */
export function sayBreaks(breaks: readonly Break[]): string {
  const longest = Math.max(0, ...breaks.map(({ days }) => days));
  if (breaks.length === 0) return "no break of ten days or more";
  return breaks.length === 1
    ? `one break of ${counted(longest, "day")}`
    : `${breaks.length} breaks, the longest ${counted(longest, "day")}`;
}

/**
 * How much was driven lately, which the forecast takes for the weeks to come.
 * @example "At the rate of the last six weeks: 1.8 sessions a week of 20 laps, from 11 sessions."
 */
export function sayPracticeRate(rate: PracticeRate | undefined): string {
  if (rate === undefined) return "Nothing was driven in the last six weeks, so nothing is forecast.";
  const { sessionsAWeek, lapsASession, sessions, since } = rate;
  return `Forecast for six weeks at the rate ${since === undefined ? "of the last six" : `since ${sayDate(since)}`}: ${sessionsAWeek.toFixed(1)} sessions a week of ${counted(Math.round(lapsASession), "timed lap")}, from ${counted(sessions, "session")}.`;
}
