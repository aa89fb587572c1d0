import { type CalendarDate, formatLapTime, type Reason, sayDate } from "#domain";
import type { ForecastKind, TargetOutlook } from "#stats";
import { sayChance } from "./chance.ts";
import { asSentence, counted, listed } from "./counted.ts";
import { sayExpected } from "./outlook.ts";
import { sayReason, sayTooFew } from "./reason.ts";
import { sayLevel } from "./usualLap.ts";

/** The word for a number of futures in 20, up to each bound; beyond the last "almost surely". */
const likelihoods = [
  [0, "almost surely not"],
  [4, "unlikely"],
  [8, "less likely than not"],
  [11, "about as likely as not"],
  [15, "more likely than not"],
  [19, "likely"],
] as const;

/**
 * A target's chance by its date, in a word and in futures: a word alone is read differently by everyone.
 * @param chance fraction from 0 to 1
 * @example sayTargetChance(0.7, "2026-12-13")
 * // "More likely than not by Sun 13 Dec 2026: reached in 14 of 20 futures, missed in 6."
 */
export function sayTargetChance(chance: number, by: CalendarDate): string {
  const futures = Math.round(chance * 20);
  const word = likelihoods.find(([bound]) => futures <= bound)?.[1] ?? "almost surely";
  return `${asSentence(word)} by ${sayDate(by)}: ${sayChance(chance)}.`;
}

/**
 * When a target is likely to be reached.
 * @example "2 of 20 futures reach it by Sun 1 Nov 2026, 10 by Thu 3 Dec 2026, fewer than 18 within a year."
 */
export function sayTargetDates({ expected }: Pick<TargetOutlook, "expected">): string {
  return `${sayExpected(expected, "a year")}.`;
}

/** What a future reaches where the target is a usual lap, beside what counts for the target itself. */
export const usualLapMeaning =
  "A future reaches it when the usual lap of one session does; the target counts as reached once your level is very likely there.";

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
  const doubt = isMostlyAssumption ? "Mostly assumption: fewer than 4 sessions. " : "";
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
  "A future is one way your next sessions may go, drawn from the sessions you have driven. 2,000 are drawn, told as 20.",
  "Tried on simulated drivers, targets said to be reached in 10 of 20 futures were reached by about 9 in 20 of them.",
  "Those who have just stopped improving, or get slower, reach fewer: of 20 such targets 2 to 7. Those who improve in a straight line reach more.",
];
