import { inSet } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/**
 * Timed laps up to and with the first clean one at a limit or under it; laps driven and not written down count too.
 * @param digests of one page, in time order
 * @param limit ms
 * @returns undefined where no written lap comes there
 */
export function lapsUntilWithin(digests: readonly SessionDigest[], limit: number): number | undefined {
  let before = 0;
  for (const digest of digests) {
    const [isTimed, mayBeBest] = [inSet(digest, "timed"), inSet(digest, "bests")];
    let timed = 0;
    for (const [lap, ms] of digest.times.entries()) {
      if (isTimed(lap)) timed++;
      if (ms <= limit && mayBeBest(lap)) return before + timed;
    }
    before += digest.timedDriven;
  }
  return undefined;
}
