import { type Numbers, requireFinite } from "./numbers.ts";

/**
 * Arithmetic mean, in the unit of the values.
 *
 * Two passes: the mean of what is left after the first mean is taken off is added to it, so that many large values
 * keep all their digits (Chan, Golub & LeVeque 1983, "Algorithms for computing the sample variance").
 * @returns undefined for no values
 * @throws RangeError for a value that is not finite
 * @example mean([84000, 84200, 84100]) // 84100
 */
export function mean(values: Numbers): number | undefined {
  const n = values.length;
  if (n === 0) return undefined;
  let sum = 0;
  for (let i = 0; i < n; i++) sum += values[i] as number;
  if (!Number.isFinite(sum)) {
    requireFinite(values);
    return sumOfShares(values);
  }
  const first = sum / n;
  let left = 0;
  for (let i = 0; i < n; i++) left += (values[i] as number) - first;
  return first + left / n;
}

/** For values so large that their sum is beyond the largest number. */
function sumOfShares(values: Numbers): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i] as number) / values.length;
  return sum;
}
