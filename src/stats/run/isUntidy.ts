import { placeOfLap } from "#domain";
import type { PlacedLap } from "../laps/sessionLaps.ts";

const LEAST_LOST = 2;
const TENTHS_LOST = 3;

/** The laps of a run without those on the way out or in, but with such a one that was lost by a mistake. */
export function flyingLaps(placed: readonly PlacedLap[]): PlacedLap[] {
  return placed.filter(({ lap, isMistake }) => isMistake || placeOfLap(lap) !== "outOrIn");
}

/**
 * Whether a run is untidy before it is anything else: two laps at least, and three in ten, lost or with a mistake of one's
 * own. Our methods, §4.
 * @param lost laps without a time or with a mistake of one's own
 * @param laps flying laps
 */
export function isUntidy(lost: number, laps: number): boolean {
  return lost >= LEAST_LOST && lost * 10 >= laps * TENTHS_LOST;
}
