import { leastForSpread } from "#domain";
import { median } from "#numbers";

/** Laps of a long session, from which on its first ones are left out (warm-up decrement). */
const LONG = 10;
const WARMING_UP = 3;

/**
 * The usual lap of a session as the level takes it: the median of its pace laps, without the first three where there are
 * ten or more. Our methods, §5.
 * @param times of pace laps as driven, ms
 * @returns undefined with fewer than five
 */
export function medianForTrend(times: readonly number[]): number | undefined {
  if (times.length < leastForSpread) return undefined;
  return median(times.length >= LONG ? times.slice(WARMING_UP) : times);
}
