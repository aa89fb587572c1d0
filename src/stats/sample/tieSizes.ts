import type { Numbers } from "#numbers";

/**
 * Sizes of the groups of equal values, of those with two or more.
 * @example tieSizes([3, 1, 3, 2, 3, 1]) // [2, 3]
 */
export function tieSizes(values: Numbers): number[] {
  const sorted = Float64Array.from(values).sort();
  const sizes: number[] = [];
  let start = 0;
  for (let i = 1; i <= sorted.length; i++) {
    if (i < sorted.length && sorted[i] === sorted[start]) continue;
    if (i - start > 1) sizes.push(i - start);
    start = i;
  }
  return sizes;
}
