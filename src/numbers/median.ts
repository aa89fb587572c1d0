import type { Numbers } from "./numbers.ts";
import { quantile } from "./quantile.ts";

/**
 * Median: the middle value, or the mean of the two in the middle.
 * @returns undefined for no values
 * @throws RangeError for a value that is not finite
 * @example median([3, 1, 2]) // 2
 */
export function median(values: Numbers): number | undefined {
  return quantile(values, 0.5);
}
