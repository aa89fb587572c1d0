/** The lowest point of a function along one axis. */
export interface Lowest {
  readonly at: number;
  /** Whether it lies at an end of the range, so that the true one may lie outside. */
  readonly isAtEnd: boolean;
}

const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Finds the lowest point of a function: the best of evenly spaced points first, then golden-section search between
 * its neighbours (Kiefer 1953), to about 1e-9 of the step.
 */
export function leastAlong(cost: (at: number) => number, from: number, to: number, points: number): Lowest {
  const step = (to - from) / (points - 1);
  const costs = Array.from({ length: points }, (_, i) => cost(from + i * step));
  const best = costs.indexOf(Math.min(...costs));
  let low = from + Math.max(0, best - 1) * step;
  let high = from + Math.min(points - 1, best + 1) * step;
  for (let round = 0; round < 45; round++) {
    const left = high - golden * (high - low);
    const right = low + golden * (high - low);
    if (cost(left) <= cost(right)) high = right;
    else low = left;
  }
  return { at: (low + high) / 2, isAtEnd: best === 0 || best === points - 1 };
}
