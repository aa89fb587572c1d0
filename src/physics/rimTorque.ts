import { type Figure, known, unknown } from "#domain";
import { notAboveZero } from "./finite.ts";

/**
 * The strongest torque at the rim, N·m: the share of the wheel's own that the strongest force takes. The limit of the force
 * is what the wheel can give at most, so a force over it gives no more than that. From the definition of the limit.
 * @param wheel torque the wheel can give at most, N·m; strongest force in percent of the limit
 * @returns a reason when one of them is not above zero
 * @throws RangeError for a NaN or an infinite value
 * @example rimTorque({ torque: 8, peak: 90 }) // 7.2 N·m
 */
export function rimTorque(wheel: { readonly torque: number; readonly peak: number }): Figure<number> {
  const { torque, peak } = wheel;
  const wrong = notAboveZero({ torque, peak });
  return wrong === undefined ? known((torque * Math.min(peak, 100)) / 100) : unknown(wrong);
}
