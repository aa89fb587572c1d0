/** A place on the plane with a range above it, px. */
export interface RangeAt {
  readonly x: number;
  readonly low: number;
  readonly high: number;
}

/** The outline of a band through ranges: along the highs, back along the lows. Nothing for fewer than two. */
export function ribbonPath(ranges: readonly RangeAt[]): string {
  if (ranges.length < 2) return "";
  const over = ranges.map(({ x, high }) => `${x} ${high}`);
  const under = ranges.toReversed().map(({ x, low }) => `${x} ${low}`);
  return `M${[...over, ...under].join("L")}Z`;
}

/** Half the width a mark may have so that neighbours do not run into each other, at most 5 px. */
export function halfMark(places: readonly number[]): number {
  const span = Math.max(...places) - Math.min(...places);
  return places.length < 2 ? 5 : Math.min(5, (0.4 * span) / (places.length - 1));
}

/** Below this half width marks are drawn as one band with a line. */
const leastHalfMark = 1.5;

/** Whether marks at these places, px, stand so close that one band and one line are drawn through them. */
export function isDense(places: readonly number[]): boolean {
  return halfMark(places) < leastHalfMark;
}
