import { type CalendarDate, type Figure, type Id, known, unknown } from "#domain";
import { needs } from "../sample/needs.ts";
import type { PastSession } from "../weeks/history.ts";
import type { PracticeQuestion } from "../weeks/practiceCurve.ts";
import { pageEvents, pageHistory } from "./pageHistory.ts";
import { type PracticeRate, practiceRate } from "./practiceRate.ts";
import { seedOf } from "./seedOf.ts";
import type { SessionDigest } from "./sessionDigest.ts";
import { sessionsAhead } from "./sessionsAhead.ts";

/** From so many sessions on chances have been found to come true as often as they say. */
const LEAST_SESSIONS = 3;
/** So many sessions fix a curve; more only take time. */
const MOST_SESSIONS = 250;
/** How far is looked ahead. */
const DAYS_AHEAD = 365;

/** The practice of one combo's present page. */
export interface PagePractice {
  readonly comboId: Id;
  /** Digests of the page, in any order. */
  readonly page: readonly SessionDigest[];
  readonly today: CalendarDate;
}

/** What every forecast about a page is made from. */
export interface ForecastBasis {
  readonly question: PracticeQuestion & { readonly history: readonly PastSession[] };
  readonly rate: PracticeRate;
  /** Days of the sessions that a year brings at that rate. */
  readonly ahead: readonly CalendarDate[];
}

/**
 * Past sessions, breaks, seed and the sessions to come. The seed comes from the combo, so the same laps always give the
 * same chances, and an easier target never a lower one than a harder.
 * @returns a reason with fewer than three sessions of five pace laps, or where nothing was driven in six weeks
 */
export function forecastBasis({ comboId, page, today }: PagePractice): Figure<ForecastBasis> {
  const history = pageHistory(page).slice(-MOST_SESSIONS);
  if (history.length < LEAST_SESSIONS)
    return unknown(needs(LEAST_SESSIONS, "session with 5 pace laps for a forecast", history.length));
  const rate = practiceRate(page, today);
  if (rate === undefined) return unknown("nothing was driven in the last six weeks, so nothing is forecast");
  const question = { history, seed: seedOf(comboId), events: pageEvents(history, today) };
  return known({ question, rate, ahead: sessionsAhead(rate.sessionsAWeek, today, DAYS_AHEAD) });
}

/** The sessions to count on until a day; at least one, since whoever wants the target drives for it. */
export function sessionsUntil({ ahead, rate }: ForecastBasis, by: CalendarDate): { readonly laps: number }[] {
  const count = ahead.filter((date) => date <= by).length;
  return Array.from({ length: Math.max(1, count) }, () => ({ laps: rate.lapsASession }));
}
