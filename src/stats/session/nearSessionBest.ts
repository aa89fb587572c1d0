import { leastForSpread } from "#domain";
import { CONFIDENCE } from "#numbers";
import { lapFlags } from "../digest/digestFlags.ts";
import { timesWith } from "../digest/digestLaps.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { type NearTheBest, shareWithinMargin } from "../pace/shareWithinMargin.ts";
import { wilsonInterval } from "../sample/wilsonInterval.ts";

/**
 * How many clean laps of a period lie near the best one of their own session. Against the best of the whole period every
 * lap of an improving driver but the latest would lie far off, and getting faster would look like getting uneven.
 * @param digests sessions with fewer than five clean laps are left out: of one or two most are near the best
 * @param marginPercent margin in percent of the best, from 0
 * @returns undefined where no session has five
 */
export function nearSessionBest(
  digests: readonly SessionDigest[],
  marginPercent: number,
): NearTheBest | undefined {
  let within = 0;
  let laps = 0;
  for (const digest of digests) {
    const near = shareWithinMargin(timesWith([digest], lapFlags.mayBeBest), marginPercent, CONFIDENCE);
    if (near === undefined || near.laps < leastForSpread) continue;
    within += near.within;
    laps += near.laps;
  }
  const share = wilsonInterval(within, laps, CONFIDENCE);
  return share === undefined ? undefined : { ...share, within, laps };
}
