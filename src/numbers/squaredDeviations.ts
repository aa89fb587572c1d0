import type { Numbers } from "./numbers.ts";

/**
 * Sum of the squared deviations from the mean, by the corrected two-pass formula (Chan, Golub & LeVeque 1983):
 * what the rounding of the mean adds is taken off again.
 */
export function squaredDeviations(values: Numbers, centre: number): number {
  let squares = 0;
  let rest = 0;
  for (let i = 0; i < values.length; i++) {
    const deviation = (values[i] as number) - centre;
    squares += deviation * deviation;
    rest += deviation;
  }
  return Math.max(0, squares - (rest * rest) / values.length);
}
