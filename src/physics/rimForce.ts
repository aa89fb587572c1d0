import { type Figure, known, unknown } from "#domain";
import { notAboveZero } from "./finite.ts";

/** Torque in N·m from which a wheel can injure fingers, wrists and thumbs (common practice, no source). */
export const torqueOfCaution = 8;

/**
 * Force at the rim of the wheel in newtons: torque/radius. Our methods, §8.
 * @param wheel torque in N·m, radius of the rim in metres
 * @returns a reason when one of them is not above zero
 * @throws RangeError for a NaN or an infinite value
 * @example rimForce({ torque: 15, radius: 0.15 }) // 100 N
 */
export function rimForce(wheel: { readonly torque: number; readonly radius: number }): Figure<number> {
  const { torque, radius } = wheel;
  const wrong = notAboveZero({ torque, radius });
  return wrong === undefined ? known(torque / radius) : unknown(wrong);
}
