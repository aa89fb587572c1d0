import { type Numbers, requireFinite } from "#numbers";

/**
 * Mean best lap over all possible choices of k of the n laps: Σ x₍ᵢ₎·C(n−i, k−1)/C(n, k) over sorted times, by running
 * ratios. It takes the luck of "more attempts" out of a best lap; k = n gives the best, k = 1 the mean.
 * @param values lap times, ms
 * @param k laps in a choice, whole, from 1
 * @returns undefined for fewer than k laps
 * @throws RangeError for a value that is not finite or a k that is not a whole number from 1
 * @example bestOfK([84000, 84300, 84600], 2) // (84000 + 84000 + 84300) / 3
 */
export function bestOfK(values: Numbers, k: number): number | undefined {
  if (!Number.isInteger(k) || k < 1) throw new RangeError(`k is ${k}: a whole number from 1 is needed`);
  requireFinite(values);
  const n = values.length;
  if (n < k) return undefined;
  const sorted = Float64Array.from(values).sort();
  const best = sorted[0] as number;
  let weight = k / n;
  let behind = 0;
  for (let i = 1; i <= n - k; i++) {
    weight *= (n - i - k + 1) / (n - i);
    behind += weight * ((sorted[i] as number) - best);
  }
  return best + behind;
}
