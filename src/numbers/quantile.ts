import { type Numbers, requireFinite } from "./numbers.ts";
import { select } from "./select.ts";

/**
 * Quantile by linear interpolation between the two nearest values: type 7 of Hyndman & Fan 1996, "Sample quantiles
 * in statistical packages", at place (n − 1)·p counted from 0.
 * @param p share of values below, 0 to 1
 * @returns undefined for no values
 * @throws RangeError for a value that is not finite or a share outside 0 to 1
 * @example quantile([1, 2, 3, 4], 0.25) // 1.75
 */
export function quantile(values: Numbers, p: number): number | undefined {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`p is ${p}: a share from 0 to 1 is needed`);
  requireFinite(values);
  return values.length === 0 ? undefined : quantileWithin(Float64Array.from(values), p);
}

/**
 * The quantile of a working copy, which it rearranges: from `left` on, nothing smaller than what stands before.
 * @param copy at least one finite value
 * @param left first place that can hold the quantile
 */
export function quantileWithin(copy: Float64Array, p: number, left = 0): number {
  const place = (copy.length - 1) * p;
  const k = Math.floor(place);
  const lower = select(copy, k, Math.min(left, k));
  const part = place - k;
  if (part === 0) return lower;
  let upper = copy[k + 1] as number;
  for (let i = k + 2; i < copy.length; i++) upper = Math.min(upper, copy[i] as number);
  return lower + part * (upper - lower);
}
