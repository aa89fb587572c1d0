import type { CalendarDate } from "#domain";
import { isDrivenSession } from "../digest/isDrivenSession.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/** Laps driven on one practice day. */
export interface PracticeDay {
  readonly date: CalendarDate;
  readonly laps: number;
  readonly sessions: number;
}

/** How much was driven. */
export interface PracticeAmount {
  readonly sessions: number;
  readonly laps: number;
  /** Sum of the laps, ms; a lap without a time counts as a usual one. */
  readonly drivingMs: number;
  /** From start to end of the sessions where both are known, ms, and how many those are. */
  readonly sittingMs: number;
  readonly sittingsKnown: number;
  /** Days with laps, oldest first. */
  readonly days: readonly PracticeDay[];
}

/** Laps, hours and days of the sessions driven; guests' laps have no part in it. */
export function practiceAmount(all: readonly SessionDigest[]): PracticeAmount {
  const digests = all.filter(isDrivenSession);
  const days = new Map<CalendarDate, { date: CalendarDate; laps: number; sessions: number }>();
  for (const { date, counts } of digests) {
    const day = days.get(date) ?? { date, laps: 0, sessions: 0 };
    days.set(date, { date, laps: day.laps + counts.driven, sessions: day.sessions + 1 });
  }
  const sittings = digests.flatMap(({ sittingMs }) => (sittingMs === undefined ? [] : [sittingMs]));
  return {
    sessions: digests.length,
    laps: digests.reduce((sum, { counts }) => sum + counts.driven, 0),
    drivingMs: digests.reduce((sum, { drivingMs }) => sum + drivingMs, 0),
    sittingMs: sittings.reduce((sum, ms) => sum + ms, 0),
    sittingsKnown: sittings.length,
    days: [...days.values()].sort((a, b) => (a.date < b.date ? -1 : 1)),
  };
}
