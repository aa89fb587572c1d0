import { type Axis, niceAxis } from "./niceAxis.ts";

const steps = [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50];

/** An axis of percentages that begins at nothing. */
export function percentTicks(percents: readonly number[], wanted = 6): Axis {
  return niceAxis([0, ...percents], steps, wanted, (step) => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2));
}
