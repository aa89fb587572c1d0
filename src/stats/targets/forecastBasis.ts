import { addDays, type CalendarDate, type Figure, type Id, known, unknown } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { pageEvents, pageHistory } from "../period/pageHistory.ts";
import { seedOf } from "../random/seedOf.ts";
import type { PastSession, PracticeQuestion } from "../weeks/history.ts";
import { type PracticeRate, practiceRate } from "./practiceRate.ts";
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
  /** Digests of the combo on all its pages, in any order: driving on another one ends a break too. Those of the page where not said. */
  readonly driven?: readonly SessionDigest[] | undefined;
  readonly today: CalendarDate;
}

/** What every forecast about a page is made from. */
export interface ForecastBasis {
  readonly question: PracticeQuestion & { readonly history: readonly PastSession[] };
  readonly rate: PracticeRate;
  /** Days of the sessions that a year brings at that rate. */
  readonly ahead: readonly CalendarDate[];
  /** The last day that is looked at. */
  readonly horizon: CalendarDate;
}

/**
 * Past sessions, breaks, seed and the sessions to come. The seed comes from the combo, so the same laps always give the
 * same chances, and an easier target never a lower one than a harder.
 * @returns a reason with fewer than three sessions of five pace laps, or where nothing was driven in six weeks
 */
export function forecastBasis({ comboId, page, driven, today }: PagePractice): Figure<ForecastBasis> {
  const history = pageHistory(page, driven).slice(-MOST_SESSIONS);
  if (history.length < LEAST_SESSIONS)
    return unknown({ needs: LEAST_SESSIONS, of: "session", each: lapsForMedian, has: history.length });
  const rate = practiceRate(page, today);
  if (rate === undefined) return unknown({ because: "nothing driven lately" });
  const question = { history, seed: seedOf(comboId), events: pageEvents(history, today) };
  const ahead = sessionsAhead(rate.sessionsAWeek, today, DAYS_AHEAD);
  return known({ question, rate, ahead, horizon: addDays(today, DAYS_AHEAD) });
}

/** Days of the sessions to count on until a date; at least one, since whoever wants a target drives for it. */
export function daysUntil({ ahead }: ForecastBasis, by: CalendarDate): readonly CalendarDate[] {
  const days = ahead.filter((day) => day <= by);
  return days.length === 0 ? [by] : days;
}
