import { mean } from "./mean.ts";
import type { Numbers } from "./numbers.ts";
import { squaredDeviations } from "./squaredDeviations.ts";

/**
 * Standard deviation with n − 1 in the denominator, in the unit of the values.
 * @returns undefined for fewer than two values
 * @throws RangeError for a value that is not finite
 * @example standardDeviation([1, 2, 3]) // 1
 */
export function standardDeviation(values: Numbers): number | undefined {
  const centre = mean(values);
  if (centre === undefined || values.length < 2) return undefined;
  return Math.sqrt(squaredDeviations(values, centre) / (values.length - 1));
}
