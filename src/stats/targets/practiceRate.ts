import { type AssumedPractice, addDays, type CalendarDate } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

const WEEKS = 6;

/** How much was driven lately: what a forecast takes for the sessions to come. */
export interface PracticeRate {
  readonly sessionsAWeek: number;
  /** Timed laps a session. */
  readonly lapsASession: number;
  /** Sessions behind it. */
  readonly sessions: number;
  /** The driver counts on other practice than lately; the figures are the driver's where there is one. */
  readonly isAssumed?: true;
}

/**
 * Sessions a week and timed laps a session over the last six weeks.
 * @param digests of one combo's page, in any order
 * @returns undefined where no session with a timed lap lies in them
 * @example three sessions of 20 laps in the last six weeks give 0.5 sessions a week and 20 laps a session
 */
export function practiceRate(
  digests: readonly SessionDigest[],
  today: CalendarDate,
): PracticeRate | undefined {
  const from = addDays(today, 1 - 7 * WEEKS);
  const lately = digests.filter(({ date, timedDriven }) => date >= from && date <= today && timedDriven > 0);
  if (lately.length === 0) return undefined;
  const laps = lately.reduce((sum, { timedDriven }) => sum + timedDriven, 0);
  return {
    sessionsAWeek: lately.length / WEEKS,
    lapsASession: laps / lately.length,
    sessions: lately.length,
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
    ...(isAssumed && { isAssumed }),
  };
}
