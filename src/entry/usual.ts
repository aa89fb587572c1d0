/** What is usual in a session, from its pace laps; kept sorted, so that a long paste stays quick. */

/** Pace laps a spread needs (methods §2). */
export const fewestForSpread = 5;

/** Puts a time in its place among sorted ones. */
export function insertSorted(sorted: number[], ms: number): void {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? 0) < ms) low = middle + 1;
    else high = middle;
  }
  sorted.splice(low, 0, ms);
}

/** Median of sorted times; undefined when there are none. */
export function medianOf(sorted: readonly number[]): number | undefined {
  const upper = sorted[sorted.length >> 1];
  const lower = sorted[(sorted.length - 1) >> 1];
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2;
}

/**
 * Median absolute deviation × 1.4826 of sorted times (the scale of a normal spread); undefined under five. Walks
 * outwards from the median, the nearer side first.
 */
export function scaledDeviation(sorted: readonly number[]): number | undefined {
  const median = medianOf(sorted);
  if (median === undefined || sorted.length < fewestForSpread) return undefined;
  let right = sorted.findIndex((ms) => ms >= median);
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
  return 1.4826 * (sorted.length % 2 === 1 ? last : (before + last) / 2);
}
