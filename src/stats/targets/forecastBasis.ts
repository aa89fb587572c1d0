import {
  type AssumedPractice,
  addDays,
  type CalendarDate,
  type Figure,
  type Id,
  known,
  type TimeKind,
  unknown,
} from "#domain";
import { exactRuns } from "../combo/exactRuns.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { bestInARow } from "../pace/bestInARow.ts";
import { lapsForMedian } from "../pace/lapsForMedian.ts";
import { type PageSession, pageEvents, pageHistory } from "../period/pageHistory.ts";
import { seedOf } from "../random/seedOf.ts";
import type { PastSession, PracticeQuestion } from "../weeks/history.ts";
import type { ForecastKind } from "./futureFigures.ts";
import { type PracticeRate, practiceRate, practiceToCountOn } from "./practiceRate.ts";
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
  /** Practice that the driver counts on; what is absent is taken as it was lately. */
  readonly practice?: AssumedPractice | undefined;
}

/** The figure of a target that has a forecast. */
export interface TimeTarget {
  readonly kind: TimeKind;
  /** Number of laps of a mean. */
  readonly laps?: number | undefined;
}

/** What every forecast about a page is made from. */
export interface ForecastBasis {
  readonly question: PracticeQuestion & { readonly history: readonly PastSession[] };
  /** What is forecast of each session: its median, or its best, in whose place the mean of a target of some laps stands. */
  readonly kind: ForecastKind;
  readonly rate: PracticeRate;
  /** Days of the sessions that a year brings at that rate. */
  readonly ahead: readonly CalendarDate[];
  /** The last day that is looked at. */
  readonly horizon: CalendarDate;
}

/**
 * Past sessions, breaks, seed and the sessions to come. The seed comes from the combo, so the same laps always give the
 * same chances, and an easier target never a lower one than a harder.
 * @returns a reason with fewer than three sessions of five pace laps, for a longer mean of so many in a row, or where nothing was driven in six weeks
 */
export function forecastBasis(
  { comboId, page, driven, today, practice }: PagePractice,
  { kind, laps = 1 }: TimeTarget = { kind: "median" },
): Figure<ForecastBasis> {
  const sessions = pageHistory(page, driven).slice(-MOST_SESSIONS);
  const history = kind === "meanOf" ? withMeans(sessions, page, laps) : sessions;
  if (history.length < LEAST_SESSIONS)
    return unknown({
      needs: LEAST_SESSIONS,
      of: "session",
      each:
        kind === "meanOf" && laps > lapsForMedian.needs
          ? { needs: laps, of: "pace lap in a row" }
          : lapsForMedian,
      has: history.length,
    });
  const rate = practiceToCountOn(practiceRate(page, today), practice);
  if (rate === undefined) return unknown({ because: "nothing driven lately" });
  const question = { history, seed: seedOf(comboId), events: pageEvents(history, today) };
  const ahead = sessionsAhead(rate.sessionsAWeek, today, DAYS_AHEAD);
  const horizon = addDays(today, DAYS_AHEAD);
  return known({ question, kind: kind === "median" ? kind : "best", rate, ahead, horizon });
}

/**
 * The sessions with the best mean of so many pace laps in a row in the place of the best lap; those that have none are left
 * out. A drill is driven slowly on purpose: where it holds the only such laps they say nothing of what is to come.
 */
function withMeans(
  sessions: readonly PageSession[],
  page: readonly SessionDigest[],
  laps: number,
): PageSession[] {
  const digests = new Map(page.map((digest) => [digest.sessionId, digest]));
  return sessions.flatMap((session) => {
    const digest = digests.get(session.sessionId);
    const mean = digest && bestInARow(exactRuns(digest, "paceBests"), laps)?.meanMs;
    return mean === undefined ? [] : [{ ...session, bestMs: mean, bestDecimals: 3 }];
  });
}

/** Days of the sessions to count on until a date; at least one, since whoever wants a target drives for it. */
export function daysUntil({ ahead }: ForecastBasis, by: CalendarDate): readonly CalendarDate[] {
  const days = ahead.filter((day) => day <= by);
  return days.length === 0 ? [by] : days;
}
