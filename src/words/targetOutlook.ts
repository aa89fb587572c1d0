import { type CalendarDate, formatLapTime, type Reason, sayDate, type TimeKind } from "#domain";
import type { TargetOutlook } from "#stats";
import { chanceWord, sayChance } from "./chance.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { sayAsLately, saySessionsAWeek } from "./countedPractice.ts";
import { sayFarDate } from "./farDate.ts";
import { sayExpected } from "./outlook.ts";
import { sayReason, sayTooFew } from "./reason.ts";
import { sayLevel } from "./usualLap.ts";

/**
 * A target's chance by its date, in a word and as a number.
 * @param chance fraction from 0 to 1
 * @example sayTargetChance(0.7, "2026-12-13") // "More likely than not by Sun 13 Dec 2026: 14 chances in 20."
 */
export function sayTargetChance(chance: number, by: CalendarDate): string {
  return `${asSentence(chanceWord(chance))} by ${sayDate(by)}: ${sayChance(chance)}.`;
}

/**
 * When a target is likely to be reached. Where its chance by a date is told, no second date is very unlikely.
 * @example "Very unlikely before Sun 6 Dec 2026, as likely as not by mid-January, very likely by April 2027."
 */
export function sayTargetDates(
  { expected, byDate }: Pick<TargetOutlook, "expected" | "byDate">,
  today: CalendarDate,
): string {
  return `${asSentence(sayExpected(expected, today, byDate !== undefined))}.`;
}

/** What a chance counts where the target is a usual lap, beside what counts for the target itself. */
export const usualLapMeaning =
  "A chance counts one session whose usual lap gets there; the target is reached once your level is very likely there.";

/**
 * The steps on the way to a target, each with the day by which it is as likely as not to be there; undefined where there
 * are none. Those of a usual lap are levels.
 * @example "Steps on the way: 1:23.631 by Sun 6 Dec 2026, 1:23.520 by mid-January and 1:23.410."
 */
export function sayMilestones(
  { milestones }: Pick<TargetOutlook, "milestones">,
  kind: TimeKind,
  today: CalendarDate,
): string | undefined {
  const between = milestones.slice(0, -1);
  if (between.length === 0) return undefined;
  const steps = between.map(({ ms, by }) => {
    const step = kind === "median" ? sayLevel(ms) : formatLapTime(ms);
    return by === undefined ? step : `${step} by ${sayFarDate(by, today)}`;
  });
  return `${between.length === 1 ? "A step" : "Steps"} on the way: ${listed(steps)}.`;
}

/**
 * What stands beside a chance from so few sessions that no model can tell one driver from another.
 * @example "Little more than a guess: it rests on 3 sessions."
 */
export function sayMostlyAssumption({ sessions }: Pick<TargetOutlook, "sessions">): string {
  return `Little more than a guess: it rests on ${counted(sessions, "session")}.`;
}

/**
 * What a forecast rests on: sessions driven and those counted on.
 * @example "From 22 sessions, and 6 more by then: 1.8 a week of 21 timed laps, as in the last six weeks."
 */
export function sayTargetRests({
  byDate,
  rate,
  sessions,
}: Pick<TargetOutlook, "byDate" | "rate" | "sessions">): string {
  const often = saySessionsAWeek(rate);
  const as = rate.isAssumed ? "as you count on" : sayAsLately(rate);
  const laps = `a week of ${counted(Math.round(rate.lapsASession), "timed lap")}, ${as}`;
  const more =
    byDate === undefined ? `${often} more ${laps}` : `${byDate.sessions} more by then: ${often} ${laps}`;
  return `From ${counted(sessions, "session")}, and ${more}.`;
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
  "Your next sessions can go many ways. 2,000 of them are drawn from the sessions you have driven; a chance is how many of them reach the target, told as so many in 20.",
  "Tried on simulated drivers, targets with 10 chances in 20 were reached about 9 times in 20.",
  "Those who have just stopped improving, or get slower, reach fewer: of 20 such targets 2 to 7. Those who improve in a straight line reach more.",
];
