import { toRadians } from "./angles.ts";

/** Standard gravity, m/s². */
export const gravity = 9.80665;

/**
 * Squared speed that grip allows on an arc of radius R: μ·g·R on a flat road (OpenStax, University Physics 1,
 * §6.3), g·R·(tan β + μ)/(1 − μ·tan β) on a banked one; Infinity where the banking holds any speed.
 */
export function squaredLimit(radius: number, grip: number, banking = 0): number {
  const slope = Math.tan(toRadians(banking));
  const rest = 1 - grip * slope;
  return rest <= 0 ? Infinity : (gravity * radius * (slope + grip)) / rest;
}
