/** Size that small pictures are drawn in; on the page they are as wide as their place. */
export const smallWidth = 144;
export const smallHeight = 40;

/**
 * Where values lie between two edges, px; all in the middle where they are one.
 * @param values may be empty
 */
export function spread(
  values: readonly number[],
  [from, to]: readonly [number, number],
): (value: number) => number {
  const low = Math.min(...values);
  const size = Math.max(...values) - low;
  return (value) =>
    Math.round((size > 0 ? from + ((value - low) / size) * (to - from) : (from + to) / 2) * 10) / 10;
}
