import {
  addDays,
  type CalendarDate,
  type Corner,
  type Id,
  isoWeek,
  type Reason,
  sayDate,
  sayShortDate,
} from "#domain";
import type { WeekStatement, WorkOn } from "#stats";
import { accountLineNames } from "./account.ts";
import { certaintyOf } from "./certainty.ts";
import { counted } from "./counted.ts";
import { sayApart, sayLapTime } from "./lapTime.ts";
import { progressReading, progressTitle } from "./progress.ts";
import { sayTooFew } from "./reason.ts";
import type { NextRun } from "./suggestion.ts";
import { sayTargetValue, targetFigure } from "./targets.ts";
import { workOnLine } from "./workOnLine.ts";

const LAPS_OF_A_RUN = 8;

/**
 * The name of a week.
 * @example weekTitle("2026-11-16") // "Week 47 of 2026"
 */
export function weekTitle(monday: CalendarDate): string {
  const { year, week } = isoWeek(monday);
  return `Week ${week} of ${year}`;
}

/** "Mon 16 Nov 2026 to Sun 22 Nov 2026" */
export function weekDays(monday: CalendarDate): string {
  return `${sayDate(monday)} to ${sayDate(addDays(monday, 6))}`;
}

/** The finding of a week, and what it rests on. */
export interface WeekFinding {
  readonly title: string;
  readonly reading: string;
  /** The combo it is about. */
  readonly comboId: Id;
}

/**
 * The finding that matters most. The first of these that is true: a target was reached; the usual lap of the combo
 * driven most has clearly changed over the twelve weeks to its end; that combo has a new PB; else what its twelve weeks
 * rule out, or how many sessions are missing.
 * @param today the day it is read on: in the week of today the finding over the weeks is the one Review has
 * @returns undefined for a week without a session
 */
export function weekFinding(
  { targets, main, lines, asOf }: WeekStatement,
  today: CalendarDate,
): WeekFinding | undefined {
  if (main === undefined) return undefined;
  const { comboId, season } = main;
  const reached = targets.find(({ isNewlyReached }) => isNewlyReached)?.target;
  if (reached !== undefined)
    return {
      title: `Target reached: ${targetFigure(reached)} ${sayTargetValue(reached.kind, reached.value)}`,
      reading: reached.by === undefined ? "It had no date." : `Its date was ${sayDate(reached.by)}.`,
      comboId: reached.comboId,
    };
  const { gain } = season;
  const overWeeks = {
    title: progressTitle(season, { asOf, today }),
    reading: progressReading(season),
    comboId,
  };
  if (gain.known && certaintyOf(gain.value.chanceFaster) === "very likely") return overWeeks;
  const { best, bestBefore } = lines.find((line) => line.comboId === comboId) ?? {};
  if (best === undefined || bestBefore === undefined || best.lapId === bestBefore.lapId) return overWeeks;
  return {
    title: `PB ${sayApart(bestBefore, best)} faster: ${sayLapTime(best.ms, best.decimals)}`,
    reading: `One lap shows what is possible, not the usual. ${overWeeks.title}.`,
    comboId,
  };
}

/**
 * What to do next, out of the week's time account; where there is none, what would make one.
 * @param corners of the layout driven most
 * @returns undefined for a week without a session
 */
export function weekNext({ main }: WeekStatement, corners: readonly Corner[] = []): NextRun | undefined {
  if (main === undefined) return undefined;
  const { workOn, seasonWorkOn, week } = main;
  const onLine = workOnLine({ workOn, target: undefined }, LAPS_OF_A_RUN, "this week", corners);
  if (onLine !== undefined && workOn !== undefined)
    return { ...onLine, reason: `${onLine.reason}${overTheSeason(workOn, seasonWorkOn)}` };
  const evidence = { reason: "measured on you", advice: "common practice, no source" } as const;
  const { account } = week;
  return account.known
    ? {
        suggestion: "Set a faster target.",
        reason: "Nothing of yours costs time against the present one.",
        evidence,
        check: "The next time account shows what to work on.",
      }
    : {
        suggestion: `Drive a pace run of ${LAPS_OF_A_RUN} laps on a dry track${isTargetMissing(account.reason) ? ", and set a target for the day" : ""}.`,
        reason: `The week has no time account. ${sayTooFew(account.reason)}.`,
        evidence,
        check: "The session's page shows where the time goes.",
      };
}

/** What costs most over the twelve weeks, where that is another line or another sector than in the week. */
function overTheSeason(week: WorkOn, season: WorkOn | undefined): string {
  if (season === undefined) return "";
  const { line, sector } = season;
  const where = sector === undefined ? "" : `, in sector ${sector + 1}`;
  if (line !== week.line) return ` Over the twelve weeks it was ${accountLineNames[line]}${where}.`;
  return sector === week.sector || sector === undefined
    ? ""
    : ` Over the twelve weeks it was sector ${sector + 1}.`;
}

/**
 * How the figures before and after a week are to be read: why the level may have moved further than the usual lap.
 * @param asOf the last day the week knows of
 */
export function weekAgainstMeaning(asOf: CalendarDate, today: CalendarDate): string {
  const end = asOf >= today ? "today" : sayShortDate(asOf, today);
  return `The level evens out good and bad evenings over the four weeks to ${end}. Usual and usual before are two single sessions, so they may move by less, or by more.`;
}

function isTargetMissing(reason: Reason): boolean {
  return "because" in reason && reason.because === "nothing to measure a period against";
}

/**
 * Laps and sessions of a day or a week in one phrase.
 * @example sayDriven({ sessions: 2, laps: 41 }) // "2 sessions, 41 laps"
 */
export function sayDriven({ sessions, laps }: { readonly sessions: number; readonly laps: number }): string {
  return `${counted(sessions, "session")}, ${counted(laps, "lap")}`;
}
