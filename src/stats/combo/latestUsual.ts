import { type CalendarDate, type Id, leastForSpread } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/** A usual lap, ms, and to how many decimals it is known. */
export interface UsualLap {
  readonly ms: number;
  readonly decimals: number;
}

/** The same with the session it is of. */
export interface LatestUsual extends UsualLap {
  readonly sessionId: Id;
  readonly date: CalendarDate;
}

/**
 * The usual lap of the latest session with five pace laps, ms, and to how many decimals it is known: the median that the
 * session's own page and the list of sessions show. That of trend and practice curve leaves out the first laps and is
 * never called a session's usual lap.
 * @param digests in time order
 */
export function latestUsual(digests: readonly SessionDigest[]): LatestUsual | undefined {
  const latest = digests.findLast((digest) => digest.pace.laps >= leastForSpread);
  if (latest?.pace.median === undefined) return undefined;
  const { sessionId, date, pace } = latest;
  return { ms: latest.pace.median, decimals: pace.medianDecimals, sessionId, date };
}
