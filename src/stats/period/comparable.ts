import { type Figure, known, leastForSpread, unknown } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { lapsForMedian } from "../pace/lapsForMedian.ts";

/** Sessions that two periods are compared by. */
export interface Comparable {
  readonly sessions: number;
  readonly sessionsBefore: number;
}

/** A comparison needs so many sessions of five pace laps on either side, and with them 25 pace laps. */
const LEAST_SESSIONS = 5;

/**
 * Whether a period may be compared with the one before: one of two sessions says nothing against one of eighteen.
 * @returns a reason with fewer than five sessions of five pace laps on either side
 */
export function comparable(
  now: readonly SessionDigest[],
  before: readonly SessionDigest[],
): Figure<Comparable> {
  const [sessions, sessionsBefore] = [withPace(now), withPace(before)];
  const lacking = { needs: LEAST_SESSIONS, of: "session", each: lapsForMedian } as const;
  if (sessions < LEAST_SESSIONS) return unknown({ ...lacking, has: sessions });
  if (sessionsBefore < LEAST_SESSIONS) return unknown({ ...lacking, has: sessionsBefore, period: "before" });
  return known({ sessions, sessionsBefore });
}

function withPace(digests: readonly SessionDigest[]): number {
  return digests.filter(({ pace }) => pace.laps >= leastForSpread).length;
}
