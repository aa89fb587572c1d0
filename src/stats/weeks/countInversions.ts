import type { Numbers } from "#numbers";

/**
 * Number of pairs in which the later value is the smaller one, counted while merging (Knight 1966, "A computer method
 * for calculating Kendall's tau with ungrouped data").
 * @example countInversions([3, 1, 2]) // 2
 */
export function countInversions(values: Numbers): number {
  let from = Float64Array.from(values);
  let to = new Float64Array(from.length);
  let inversions = 0;
  for (let width = 1; width < from.length; width *= 2) {
    for (let start = 0; start < from.length; start += 2 * width) {
      const middle = Math.min(start + width, from.length);
      const end = Math.min(start + 2 * width, from.length);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place++) {
        const takesRight =
          right < end && (left >= middle || (from[right] as number) < (from[left] as number));
        if (takesRight) inversions += middle - left;
        to[place] = from[takesRight ? right++ : left++] as number;
      }
    }
    [from, to] = [to, from];
  }
  return inversions;
}
