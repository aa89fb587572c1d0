import { type Numbers, requireFinite } from "./numbers.ts";
import { quantileWithin } from "./quantile.ts";

/** Makes the median absolute deviation of normal values agree with their standard deviation: 1 / Φ⁻¹(3/4). */
export const MAD_SCALE = 1.4826;

/**
 * Scaled median absolute deviation: 1.4826 times the median distance from the median (Hampel 1974, "The influence
 * curve and its role in robust estimation").
 * @returns undefined for no values
 * @throws RangeError for a value that is not finite
 * @example medianAbsoluteDeviation([1, 2, 3]) // 1.4826
 */
export function medianAbsoluteDeviation(values: Numbers): number | undefined {
  requireFinite(values);
  if (values.length === 0) return undefined;
  const copy = Float64Array.from(values);
  return MAD_SCALE * medianDistance(copy, quantileWithin(copy, 0.5));
}

/** Median distance of a working copy from a centre; overwrites the copy. */
export function medianDistance(copy: Float64Array, centre: number): number {
  for (let i = 0; i < copy.length; i++) copy[i] = Math.abs((copy[i] as number) - centre);
  return quantileWithin(copy, 0.5);
}
