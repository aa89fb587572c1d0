import { type Axis, niceAxis } from "./niceAxis.ts";

const steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60];

/** An axis of differences in seconds. */
export function secondTicks(seconds: readonly number[], wanted = 7): Axis {
  return niceAxis(seconds, steps, wanted, (step) => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2));
}
