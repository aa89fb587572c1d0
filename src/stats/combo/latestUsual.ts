import { leastForSpread } from "#domain";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/** A usual lap, ms, and to how many decimals it is known. */
export interface UsualLap {
  readonly ms: number;
  readonly decimals: number;
}

/**
 * The usual lap of the latest session with five pace laps, ms, and to how many decimals it is known: the median that the
 * session's own page and the list of sessions show. That of trend and practice curve leaves out the first laps and is
 * never called a session's usual lap.
 * @param digests in time order
 */
export function latestUsual(digests: readonly SessionDigest[]): UsualLap | undefined {
  const pace = digests.findLast((digest) => digest.pace.laps >= leastForSpread)?.pace;
  return pace?.median === undefined ? undefined : { ms: pace.median, decimals: pace.medianDecimals };
}
