import type { CalendarDate, Id } from "#domain";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import type { PastSession } from "../weeks/history.ts";
import { BREAK_DAYS, type DrivenDays, longestPause } from "../weeks/longestPause.ts";
import type { SessionEvent } from "../weeks/sessionEvents.ts";

/** A session of a page as practice curve and forecast take it, and which it is. */
export interface PageSession extends PastSession, DrivenDays {
  readonly sessionId: Id;
  readonly startedAt: number;
}

/**
 * The sessions of one page that have a median (five pace laps), in time order; the laps of the others count as driven,
 * and their days as days driven.
 * @param digests of one page, in any order
 */
export function pageHistory(digests: readonly SessionDigest[]): PageSession[] {
  let lapsBefore = 0;
  const history: (PageSession & { readonly drivenSince: CalendarDate[] })[] = [];
  for (const digest of digests.toSorted((a, b) => a.startedAt - b.startedAt)) {
    const { sessionId, date, startedAt, timedDriven: laps } = digest;
    const { medianForTrend: medianMs, best: bestMs } = digest.pace;
    if (medianMs !== undefined && bestMs !== undefined)
      history.push({ sessionId, date, startedAt, lapsBefore, laps, medianMs, bestMs, drivenSince: [] });
    else if (isDrivenSession(digest)) history.at(-1)?.drivenSince.push(date);
    lapsBefore += laps;
  }
  return history;
}

/**
 * The dated events between the sessions of a history: breaks of ten days or more without any session, found here, also
 * one that is going on today, and steps that are handed in. A step before the first session moves nothing and is left out.
 * @param history from `pageHistory`
 * @param today the day of asking
 * @param steps days of changes whose effect stays (a new record of rig settings)
 */
export function pageEvents(
  history: readonly PageSession[],
  today: CalendarDate,
  steps: readonly CalendarDate[] = [],
): SessionEvent[] {
  const breaks = history.flatMap((session, index): SessionEvent[] =>
    longestPause(session, history[index + 1]?.date ?? today).days >= BREAK_DAYS
      ? [{ kind: "break", afterSession: index + 1 }]
      : [],
  );
  const changes = steps
    .map((day) => history.filter((session) => session.date < day).length)
    .filter((before) => before > 0)
    .map((afterSession): SessionEvent => ({ kind: "step", afterSession }));
  return [...breaks, ...changes].toSorted((a, b) => a.afterSession - b.afterSession);
}
