import { type CalendarDate, formatLapTime, type Reason, sayDate } from "#domain";
import type { ForecastKind, TargetOutlook } from "#stats";
import { likelihoodOf } from "./certainty.ts";
import { sayChance } from "./chance.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { sayExpected, sayExpectedExactly } from "./outlook.ts";
import { sayReason, sayTooFew } from "./reason.ts";
import { sayLevel } from "./usualLap.ts";

/**
 * A target's chance by its date, in a word and in twenty: a word alone is read differently by everyone.
 * @param chance fraction from 0 to 1
 * @example sayTargetChance(0.7, "2026-12-13") // "More likely than not by Sun 13 Dec 2026: 14 chances in 20."
 */
export function sayTargetChance(chance: number, by: CalendarDate): string {
  return `${asSentence(likelihoodOf(chance))} by ${sayDate(by)}: ${sayChance(chance)}.`;
}

/**
 * When a target is likely to be reached.
 * @example "Possible from Sun 1 Nov 2026, as likely as not by Thu 3 Dec 2026, very likely by spring."
 */
export function sayTargetDates({ expected }: Pick<TargetOutlook, "expected">, today: CalendarDate): string {
  return `${sayExpected(expected, today, "a year")}.`;
}

/**
 * The same to the day.
 * @example "2 chances in 20 by Sun 1 Nov 2026, 10 by Thu 3 Dec 2026, fewer than 18 within a year."
 */
export function sayTargetDatesExactly({ expected }: Pick<TargetOutlook, "expected">): string {
  return `${sayExpectedExactly(expected, "a year")}.`;
}

/** What the chance of a usual lap is about, beside what counts for the target itself. */
export const usualLapMeaning =
  "The chance is that the usual lap of one session comes there; the target counts as reached once your level is very likely there.";

/**
 * The steps on the way to a target; undefined where there are none. Those of a usual lap are levels.
 * @example sayMilestones({ milestones: [83_631, 83_520, 83_410, 83_300] }, "best")
 * // "Steps on the way: 1:23.631, 1:23.520 and 1:23.410."
 */
export function sayMilestones(
  { milestones }: Pick<TargetOutlook, "milestones">,
  kind: ForecastKind,
): string | undefined {
  const between = milestones.slice(0, -1);
  if (between.length === 0) return undefined;
  return `${between.length === 1 ? "A step" : "Steps"} on the way: ${listed(between.map((ms) => (kind === "median" ? sayLevel(ms) : formatLapTime(ms))))}.`;
}

/**
 * What a forecast rests on: sessions driven and those counted on.
 * @example "From 22 sessions, and 6 more by then: 1.8 a week of 21 timed laps, as in the last six weeks."
 */
export function sayTargetRests({
  byDate,
  rate,
  sessions,
  isMostlyAssumption,
}: Pick<TargetOutlook, "byDate" | "rate" | "sessions" | "isMostlyAssumption">): string {
  const often = rate.sessionsAWeek.toFixed(1);
  const laps = `a week of ${counted(Math.round(rate.lapsASession), "timed lap")}, as in the last six weeks`;
  const more =
    byDate === undefined ? `${often} more ${laps}` : `${byDate.sessions} more by then: ${often} ${laps}`;
  const doubt = isMostlyAssumption ? "Little more than a guess: fewer than 4 sessions. " : "";
  return `${doubt}From ${counted(sessions, "session")}, and ${more}.`;
}

/**
 * Why there is no forecast: other figures need other numbers of sessions, so it says what for.
 * @example "No forecast yet: it needs 3 sessions with 5 pace laps each, has 2."
 */
export function sayNoForecast(reason: Reason): string {
  return "needs" in reason ? `No forecast yet: it ${sayReason(reason)}.` : `${sayTooFew(reason)}.`;
}

/** What a chance means and how far it has been found true (test/calibration), for whoever asks. */
export const chanceMeaning: readonly string[] = [
  "Your next sessions are drawn 2,000 times from the sessions you have driven: 14 chances in 20 means that 14 of 20 draws reach the target.",
  "Tried on simulated drivers, of 20 targets with 10 chances in 20 about 9 were reached.",
  "Those who have just stopped improving, or get slower, reach fewer: 2 to 7 of 20 such targets. Those who improve in a straight line reach more.",
];
