/**
 * Where a score that falls as the shift grows crosses a wanted value. Such a score is constant between neighbouring
 * candidates, so the crossing is the candidate at which it jumps over the value.
 * @param candidates shifts at which the score may jump, sorted
 * @param score score at a shift
 * @param wanted value to cross
 */
export function shiftWhere(
  candidates: Float64Array,
  score: (shift: number) => number,
  wanted: number,
): number {
  let low = 0;
  let high = candidates.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    const between = ((candidates[middle] as number) + (candidates[middle + 1] as number)) / 2;
    if (score(between) > wanted) low = middle + 1;
    else high = middle;
  }
  return candidates[low] as number;
}

/** Sorted, each value once. */
export function distinctSorted(values: Float64Array): Float64Array {
  return values.toSorted().filter((value, index, all) => index === 0 || value !== all[index - 1]);
}
