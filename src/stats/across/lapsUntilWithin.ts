import { lapFlags } from "../digest/digestFlags.ts";
import { NO_TIME, type SessionDigest } from "../digest/sessionDigest.ts";

/**
 * Timed laps up to and with the first clean one at a limit or under it; laps driven and not written down count too.
 * @param digests of one page, in time order
 * @param limit ms
 * @returns undefined where no written lap comes there
 */
export function lapsUntilWithin(digests: readonly SessionDigest[], limit: number): number | undefined {
  let before = 0;
  for (const { times, flags, timedDriven } of digests) {
    let timed = 0;
    for (let i = 0; i < times.length; i++) {
      const flag = flags[i] ?? 0;
      const ms = times[i] ?? NO_TIME;
      if ((flag & lapFlags.timed) !== 0) timed++;
      if ((flag & lapFlags.mayBeBest) !== 0 && ms !== NO_TIME && ms <= limit) return before + timed;
    }
    before += timedDriven;
  }
  return undefined;
}
