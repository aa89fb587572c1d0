import { type CalendarDate, daysBetween, type Id } from "#domain";
import { BREAK_DAYS } from "../weeks/breakCosts.ts";
import type { PastSession } from "../weeks/history.ts";
import type { SessionEvent } from "../weeks/sessionEvents.ts";
import type { SessionDigest } from "./sessionDigest.ts";

/** A session of a page as practice curve and forecast take it, and which it is. */
export interface PageSession extends PastSession {
  readonly sessionId: Id;
  readonly date: CalendarDate;
  readonly startedAt: number;
}

/**
 * The sessions of one page that have a median (five pace laps), in time order; the laps of the others count as driven.
 * @param digests of one page, in any order
 */
export function pageHistory(digests: readonly SessionDigest[]): PageSession[] {
  let lapsBefore = 0;
  return digests
    .toSorted((a, b) => a.startedAt - b.startedAt)
    .flatMap((digest) => {
      const before = lapsBefore;
      lapsBefore += digest.timedDriven;
      const { medianForTrend, best } = digest.pace;
      if (medianForTrend === undefined || best === undefined) return [];
      const { sessionId, date, startedAt, timedDriven: laps } = digest;
      return [
        { sessionId, date, startedAt, lapsBefore: before, laps, medianMs: medianForTrend, bestMs: best },
      ];
    });
}

/**
 * The dated events between the sessions of a history: breaks of ten days or more, found here, also one that is going on
 * today, and steps that are handed in. A step before the first session moves nothing and is left out.
 * @param history from `pageHistory`
 * @param today the day of asking
 * @param steps days of changes whose effect stays (a new record of rig settings)
 */
export function pageEvents(
  history: readonly PageSession[],
  today: CalendarDate,
  steps: readonly CalendarDate[] = [],
): SessionEvent[] {
  const days = [...history.map((session) => session.date), today];
  const breaks = history.flatMap((session, index): SessionEvent[] =>
    daysBetween(session.date, days[index + 1] ?? today) >= BREAK_DAYS
      ? [{ kind: "break", afterSession: index + 1 }]
      : [],
  );
  const changes = steps
    .map((day) => history.filter((session) => session.date < day).length)
    .filter((before) => before > 0)
    .map((afterSession): SessionEvent => ({ kind: "step", afterSession }));
  return [...breaks, ...changes].toSorted((a, b) => a.afterSession - b.afterSession);
}
