import { type CalendarDate, daysBetween, type Id } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { paceRuns } from "../verdict/paceRuns.ts";
import { BREAK_DAYS } from "../weeks/longestPause.ts";

/** The level at one session, ms. */
interface LevelAtSession {
  readonly sessionId: Id;
  readonly mid: number;
}

/**
 * The pace laps of each evening with those of the next one, as driven: sessions of one day are one evening, and over a break of
 * ten days or more there is no night to tell of.
 * @param page digests of one page in time order
 */
export function eveningsInARow(
  page: readonly SessionDigest[],
): (readonly [before: readonly number[], after: readonly number[]])[] {
  const byDay = new Map<CalendarDate, number[]>();
  for (const digest of page) {
    const laps = paceRuns(digest, "dry").flatMap(({ times }) => times);
    if (laps.length > 0) byDay.set(digest.date, [...(byDay.get(digest.date) ?? []), ...laps]);
  }
  const evenings = [...byDay];
  return evenings.slice(1).flatMap(([date, laps], index) => {
    const [before, lapsBefore] = evenings[index] ?? [date, []];
    return daysBetween(before, date) < BREAK_DAYS ? [[lapsBefore, laps] as const] : [];
  });
}

/**
 * The pace laps of each run of each session, with the movement of the level taken out, or improving over the weeks would look
 * like evenings that differ. Sessions the level does not hold are left out.
 * @param page digests of one page in time order
 * @param line the level at its sessions, in time order: `pageCurve`
 */
export function eveningSpread(
  page: readonly SessionDigest[],
  line: readonly LevelAtSession[],
): (readonly (readonly number[])[])[] {
  const last = line.at(-1)?.mid ?? 0;
  const moved = new Map(line.map(({ sessionId, mid }) => [sessionId, mid - last]));
  return page.flatMap((digest) => {
    const by = moved.get(digest.sessionId);
    if (by === undefined) return [];
    return [paceRuns(digest, "dry").map(({ times }) => times.map((ms) => ms - by))];
  });
}
