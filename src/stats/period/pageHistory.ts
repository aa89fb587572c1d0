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
  /** To how many decimals of a second its median is known. */
  readonly medianDecimals: number;
  /** Of the first one: days the combo was driven before, on an older page or in sessions too short for a usual lap. */
  readonly drivenBefore?: readonly CalendarDate[] | undefined;
}

/**
 * The sessions of one page that have a median (five pace laps), in time order; the laps of the others count as driven,
 * and their days as days driven. So do the days of the combo's other pages: practice there is practice.
 * @param page digests of the page, in any order
 * @param combo digests of the combo on all its pages, in any order; those of the page where not said
 */
export function pageHistory(
  page: readonly SessionDigest[],
  combo: readonly SessionDigest[] = page,
): PageSession[] {
  const onPage = new Map(page.map((digest) => [digest.sessionId, digest]));
  const drivenBefore: CalendarDate[] = [];
  let lapsBefore = 0;
  const history: (PageSession & { readonly drivenSince: CalendarDate[] })[] = [];
  for (const each of combo.toSorted((a, b) => a.startedAt - b.startedAt)) {
    const digest = onPage.get(each.sessionId);
    const { sessionId, date, startedAt, timedDriven: laps } = digest ?? each;
    const { medianForTrend: medianMs, medianDecimals = 3, best: bestMs, bestDecimals } = digest?.pace ?? {};
    if (medianMs !== undefined && bestMs !== undefined) {
      const before = history.length === 0 && drivenBefore.length > 0 ? { drivenBefore } : {};
      history.push({
        sessionId,
        date,
        startedAt,
        lapsBefore,
        laps,
        medianMs,
        medianDecimals,
        bestMs,
        bestDecimals,
        drivenSince: [],
        ...before,
      });
    } else if (isDrivenSession(digest ?? each)) (history.at(-1)?.drivenSince ?? drivenBefore).push(date);
    if (digest !== undefined) lapsBefore += laps;
  }
  return history;
}

/**
 * The dated events between the sessions of a history: breaks of ten days or more without any session, found here, also
 * one before the first session and one that is going on today, and steps that are handed in. A step before the first
 * session moves nothing and is left out; a break before it makes it slower, whatever page was driven last.
 * @param history from `pageHistory`
 * @param today the day of asking
 * @param steps days of changes whose effect stays (a new record of rig settings)
 */
export function pageEvents(
  history: readonly PageSession[],
  today: CalendarDate,
  steps: readonly CalendarDate[] = [],
): SessionEvent[] {
  const breaks = [daysBefore(history), ...history]
    .map((from, index) => from !== undefined && isBreak(from, history[index]?.date ?? today))
    .flatMap((isOne, afterSession): SessionEvent[] => (isOne ? [{ kind: "break", afterSession }] : []));
  const changes = steps
    .map((day) => history.filter((session) => session.date < day).length)
    .filter((before) => before > 0)
    .map((afterSession): SessionEvent => ({ kind: "step", afterSession }));
  return [...breaks, ...changes].toSorted((a, b) => a.afterSession - b.afterSession);
}

const isBreak = (from: DrivenDays, next: CalendarDate) => longestPause(from, next).days >= BREAK_DAYS;

/** The days driven before the first session from the last one on another page on; undefined where there is none. */
function daysBefore([first]: readonly PageSession[]): DrivenDays | undefined {
  const [date, ...drivenSince] = first?.drivenBefore ?? [];
  return date === undefined ? undefined : { date, drivenSince };
}
