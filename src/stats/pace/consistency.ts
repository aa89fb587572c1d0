import { type Figure, known, leastForSpread, unknown } from "#domain";
import { chiSquaredQuantile, median, type Numbers, requireFraction } from "#numbers";
import { successiveScatter } from "./successiveScatter.ts";

/** Effective degrees of freedom a successive difference is worth: lap times are skewed, so fewer than 2/3. */
const DEGREES_A_DIFFERENCE = 0.36;

/** Scatter in ms and in percent of the median, each with an interval. */
export interface Consistency {
  readonly scatterMs: number;
  readonly lowMs: number;
  readonly highMs: number;
  readonly percent: number;
  readonly lowPercent: number;
  readonly highPercent: number;
  /** Laps behind it. */
  readonly laps: number;
}

/**
 * Consistency: scatter as a percentage of the median, with the interval σ̂·√(ν/χ²), ν = 0.36·Σ(laps of a run − 1)
 * (the factor from our own simulation of skewed laps, where it held 90 to 94 % at a nominal 90 %).
 * @param runs lap times of each run in order, ms; a chain that was broken counts as two runs
 * @param confidence fraction, as 0.9
 * @returns a reason for fewer than five laps or where no two follow each other
 * @throws RangeError for a value that is not finite or a confidence outside 0 to 1
 * @example consistency([[84000, 84200, 84000, 84200, 84000]], 0.9) // scatterMs 141.42…, percent 0.168…
 */
export function consistency(runs: readonly Numbers[], confidence: number): Figure<Consistency> {
  requireFraction(confidence, "confidence");
  const scatterMs = successiveScatter(runs);
  const laps = runs.reduce((sum, run) => sum + run.length, 0);
  if (laps < leastForSpread) return unknown({ needs: leastForSpread, of: "pace lap", has: laps });
  if (scatterMs === undefined) return unknown({ because: "no two laps in a row" });
  const middle = median(runs.flatMap((run) => Array.from(run))) as number;
  const differences = runs.reduce((sum, run) => sum + Math.max(0, run.length - 1), 0);
  const degrees = DEGREES_A_DIFFERENCE * differences;
  const at = (p: number) => scatterMs * Math.sqrt(degrees / chiSquaredQuantile(p, degrees));
  const lowMs = at((1 + confidence) / 2);
  const highMs = at((1 - confidence) / 2);
  const percentOf = (ms: number) => (100 * ms) / middle;
  return known({
    scatterMs,
    lowMs,
    highMs,
    percent: percentOf(scatterMs),
    lowPercent: percentOf(lowMs),
    highPercent: percentOf(highMs),
    laps,
  });
}
