/** For each draw, the number (from 1) of the first session that reaches the target; Infinity where none does. */
export function firstReached(figures: readonly Float64Array[], targetMs: number): Float64Array {
  const first = new Float64Array(figures[0]?.length ?? 0).fill(Infinity);
  figures.forEach((values, k) => {
    values.forEach((value, draw) => {
      if (value <= targetMs && first[draw] === Infinity) first[draw] = k + 1;
    });
  });
  return first;
}
