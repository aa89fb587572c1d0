/** A dot of a heap: its middle, and how many lie under it. */
export interface StackedDot {
  readonly x: number;
  readonly level: number;
}

/**
 * Heaps dots on a line: each stands where it belongs, as low as no other one is in its way.
 * @param places middles, the leftmost first
 * @param width how far apart two dots of one level have to be
 */
export function stackDots(places: readonly number[], width: number): readonly StackedDot[] {
  const ends: number[] = [];
  return places.map((x) => {
    const free = ends.findIndex((end) => end <= x);
    const level = free < 0 ? ends.length : free;
    ends[level] = x + width;
    return { x, level };
  });
}
