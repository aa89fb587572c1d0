import { VERY_LIKELY } from "#stats";

/** How sure a direction is. There are no other words for it; too few data are "cannot be told yet". */
export type Certainty = "very likely" | "likely" | "may be chance";

const LIKELY = 0.9;

/**
 * How sure it is which way something went: very likely where the 90 % interval lies wholly on one side, likely where the
 * 80 % interval does.
 * @param chance that it went one way, 0 to 1
 */
export function certaintyOf(chance: number): Certainty {
  const surer = Math.max(chance, 1 - chance);
  return surer >= VERY_LIKELY ? "very likely" : surer >= LIKELY ? "likely" : "may be chance";
}
