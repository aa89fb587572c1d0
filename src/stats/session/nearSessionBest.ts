import { leastForSpread } from "#domain";
import { CONFIDENCE, type Numbers } from "#numbers";
import { type NearTheBest, shareWithinMargin } from "../pace/shareWithinMargin.ts";
import { wilsonInterval } from "../sample/wilsonInterval.ts";

/**
 * How many pace laps of a session, or of those of a period, lie near the best of their own session. Against the best of
 * the whole period every lap of an improving driver but the latest would lie far off, and getting faster would look like
 * getting uneven; against a dry best every wet lap would.
 * @param sessions for each session the times of the pace laps that may stand as a best, ms; one with fewer than five is
 * left out: of one or two most are near the best
 * @param marginPercent margin in percent of the best, from 0
 * @returns undefined where no session has five
 */
export function nearSessionBest(
  sessions: readonly Numbers[],
  marginPercent: number,
): NearTheBest | undefined {
  let within = 0;
  let laps = 0;
  for (const times of sessions) {
    const near = shareWithinMargin(times, marginPercent, CONFIDENCE);
    if (near === undefined || near.laps < leastForSpread) continue;
    within += near.within;
    laps += near.laps;
  }
  const share = wilsonInterval(within, laps, CONFIDENCE);
  return share === undefined ? undefined : { ...share, within, laps };
}
