import {
  median,
  type Numbers,
  normalQuantile,
  quantileWithin,
  requireFinite,
  requireFraction,
  requireSameLength,
  select,
} from "#numbers";
import { tieSizes } from "./tieSizes.ts";

/** A straight line by the median of all slopes, with Sen's interval for the slope. */
export interface TheilSenLine {
  readonly slope: number;
  readonly intercept: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Theil–Sen line: the median of the slopes of all pairs with different x, and median(y) − slope·median(x).
 *
 * Theil 1950; the interval is Sen's 1968 ("Estimates of the regression coefficient based on Kendall's tau"), with the
 * ranks rounded as in scipy.stats.theilslopes. All slopes are held at once: a thousand points are half a million.
 * @param x places, in any order
 * @param y values, as many
 * @param confidence fraction, as 0.9
 * @returns undefined for fewer than two different x
 * @throws RangeError for values that are not finite, columns of different length, or a confidence outside 0 to 1
 * @example theilSen([0, 1, 2], [5, 7, 9], 0.9)?.slope // 2
 */
export function theilSen(x: Numbers, y: Numbers, confidence: number): TheilSenLine | undefined {
  requireSameLength(x, y);
  requireFinite(x, "x");
  requireFinite(y, "y");
  requireFraction(confidence, "confidence");
  const slopes = slopesOfPairs(x, y);
  if (slopes.length === 0) return undefined;
  const slope = quantileWithin(slopes, 0.5);
  const middle = (slopes.length - 1) >> 1;
  const n = y.length;
  const variance = (pairTerm(n) - sumOf(tieSizes(x)) - sumOf(tieSizes(y))) / 18;
  const reach = normalQuantile((1 + confidence) / 2) * Math.sqrt(Math.max(0, variance));
  const lowRank = Math.max(Math.round((slopes.length - reach) / 2) - 1, 0);
  const highRank = Math.min(Math.round((slopes.length + reach) / 2), slopes.length - 1);
  return {
    slope,
    intercept: (median(y) as number) - slope * (median(x) as number),
    low: select(slopes, lowRank, 0, Math.max(lowRank, middle)),
    high: select(slopes, highRank, Math.min(highRank, middle)),
  };
}

function slopesOfPairs(x: Numbers, y: Numbers): Float64Array {
  const slopes = new Float64Array((x.length * (x.length - 1)) / 2);
  let count = 0;
  for (let i = 1; i < x.length; i++) {
    for (let j = 0; j < i; j++) {
      const run = (x[i] as number) - (x[j] as number);
      // Adding 0 turns −0, the slope of a fall by nothing, into 0.
      if (run !== 0) slopes[count++] = ((y[i] as number) - (y[j] as number)) / run + 0;
    }
  }
  return slopes.subarray(0, count);
}

function pairTerm(size: number): number {
  return size * (size - 1) * (2 * size + 5);
}

function sumOf(sizes: readonly number[]): number {
  return sizes.reduce((sum, size) => sum + pairTerm(size), 0);
}
