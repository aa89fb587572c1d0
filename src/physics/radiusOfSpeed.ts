import { mustBeAboveZero, mustBeFinite } from "./finite.ts";
import { squaredLimit } from "./squaredLimit.ts";

/**
 * The radius on which a speed is the limit of the grip, m: R = v²/(μ·g) on a flat road (OpenStax, University Physics 1,
 * §6.3), v²·(1 − μ·tan β)/(g·(tan β + μ)) on a banked one; 0 where the banking holds any speed.
 * @param speed m/s
 * @param banking degrees towards the inside
 * @throws RangeError for a speed not above zero, no grip on a flat road, or a value that is not finite
 * @example radiusOfSpeed(15.65, 0.5) // 49.95
 */
export function radiusOfSpeed(speed: number, grip: number, banking = 0): number {
  mustBeFinite({ grip, banking });
  mustBeAboveZero(banking > 0 ? { speed } : { speed, grip });
  return speed ** 2 / squaredLimit(1, grip, banking);
}
