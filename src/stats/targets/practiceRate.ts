import { type AssumedPractice, addDays, type CalendarDate, daysBetween } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

const WEEKS = 6;
const WEEK = 7;

/** How much was driven lately: what a forecast takes for the sessions to come. */
export interface PracticeRate {
  readonly sessionsAWeek: number;
  /** Timed laps a session. */
  readonly lapsASession: number;
  /** Sessions behind it. */
  readonly sessions: number;
  /** The first session of all, where it lies within the six weeks: counted from it. */
  readonly since?: CalendarDate;
  /** The driver counts on other practice than lately; the figures are the driver's where there is one. */
  readonly isAssumed?: true;
}

/**
 * Sessions a week and timed laps a session over the last six weeks; of a driver who began within them since the first session,
 * but over a week at least: nobody was practising before it.
 * @param digests of one combo's page, in any order
 * @returns undefined where no session with a timed lap lies in them
 * @example three sessions of 20 laps in the last six weeks, and earlier ones, give 0.5 sessions a week and 20 laps a session
 */
export function practiceRate(
  digests: readonly SessionDigest[],
  today: CalendarDate,
): PracticeRate | undefined {
  const from = addDays(today, 1 - WEEK * WEEKS);
  const driven = digests.filter(({ date, timedDriven }) => date <= today && timedDriven > 0);
  const lately = driven.filter(({ date }) => date >= from);
  if (lately.length === 0) return undefined;
  const laps = lately.reduce((sum, { timedDriven }) => sum + timedDriven, 0);
  const first = lately.reduce((least, { date }) => (date < least ? date : least), today);
  const hasBegunLately = lately.length === driven.length && first > from;
  const days = hasBegunLately ? Math.max(WEEK, daysBetween(first, today) + 1) : WEEK * WEEKS;
  return {
    sessionsAWeek: (lately.length * WEEK) / days,
    lapsASession: laps / lately.length,
    sessions: lately.length,
    ...(hasBegunLately && { since: first }),
  };
}

/**
 * The practice to count on: what the driver assumes, and else what was driven lately.
 * @param lately undefined where nothing was
 * @returns undefined where one of the two figures is not known
 */
export function practiceToCountOn(
  lately: PracticeRate | undefined,
  assumed: AssumedPractice = {},
): PracticeRate | undefined {
  const { sessionsAWeek = lately?.sessionsAWeek, lapsASession = lately?.lapsASession } = assumed;
  if (sessionsAWeek === undefined || lapsASession === undefined) return undefined;
  const isAssumed = assumed.sessionsAWeek !== undefined || assumed.lapsASession !== undefined;
  return {
    sessionsAWeek,
    lapsASession,
    sessions: lately?.sessions ?? 0,
    ...(lately?.since !== undefined && { since: lately.since }),
    ...(isAssumed && { isAssumed }),
  };
}
