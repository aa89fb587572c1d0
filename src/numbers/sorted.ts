/** Numbers kept sorted, so that one more costs little. */
import { MAD_SCALE } from "./medianAbsoluteDeviation.ts";

/** Puts a number in its place among sorted ones. */
export function insertSorted(sorted: number[], value: number): void {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  sorted.splice(low, 0, value);
}

/** Median of sorted numbers; undefined when there are none. */
export function medianOfSorted(sorted: readonly number[]): number | undefined {
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2;
}

/**
 * Scaled median absolute deviation of sorted numbers; undefined when there are none. Walks outwards from the median, the
 * nearer side first.
 */
export function medianAbsoluteDeviationOfSorted(sorted: readonly number[]): number | undefined {
  const median = medianOfSorted(sorted);
  if (median === undefined) return undefined;
  let right = sorted.findIndex((value) => value >= median);
  let left = right - 1;
  let last = 0;
  let before = 0;
  for (let taken = 0; taken <= sorted.length >> 1; taken += 1) {
    const toRight = (sorted[right] ?? Number.POSITIVE_INFINITY) - median;
    const toLeft = median - (sorted[left] ?? Number.NEGATIVE_INFINITY);
    before = last;
    last = Math.min(toLeft, toRight);
    if (toLeft < toRight) left -= 1;
    else right += 1;
  }
  return MAD_SCALE * (sorted.length % 2 === 1 ? last : (before + last) / 2);
}
