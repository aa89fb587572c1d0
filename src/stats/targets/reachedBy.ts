/**
 * The figure that at least a share of the futures reach in one of their sessions.
 * @param figures draws, at least one array, one for each session
 * @param share from 0 to 1
 */
export function reachedBy(figures: readonly Float64Array[], share: number): number {
  const fastest = new Float64Array(figures[0]?.length ?? 0).fill(Infinity);
  for (const values of figures) {
    for (let draw = 0; draw < values.length; draw++) {
      const value = values[draw] as number;
      if (value < (fastest[draw] as number)) fastest[draw] = value;
    }
  }
  return fastest.toSorted()[Math.max(0, Math.ceil(share * fastest.length) - 1)] ?? Infinity;
}
