import { toRadians } from "./angles.ts";
import { mustBeFinite } from "./finite.ts";

/** A corner, the car in it, and the straights beside it. Metres, degrees, m/s, m/s². */
export interface Corner {
  /** Radius of the inner edge. */
  readonly innerRadius: number;
  /** Between the edges a driver may use, kerbs included. */
  readonly roadWidth: number;
  readonly carWidth: number;
  /** Angle the road turns through, 5 to 200. */
  readonly angle: number;
  /** Angle turned up to the apex; half of `angle` when not known. */
  readonly apexAngle?: number;
  /** Road left unused, in metres. */
  readonly unused: { readonly entry: number; readonly apex: number; readonly exit: number };
  /** Coefficient of friction. */
  readonly grip: number;
  readonly braking: number;
  readonly drive: number;
  readonly approachLength: number;
  readonly approachSpeed: number;
  readonly exitLength: number;
  /** Banking towards the inside; 0 when not given. */
  readonly banking?: number;
  /** Speed the straights allow at most. */
  readonly topSpeed?: number;
}

export const nothingUnused = { entry: 0, apex: 0, exit: 0 } as const;

/** The angle turned up to the apex, in degrees. */
export const apexOf = (corner: Corner): number => corner.apexAngle ?? corner.angle / 2;

/**
 * What is wrong with a corner, as a sentence for the driver; undefined when all is well.
 * @throws RangeError for a NaN or an infinite value
 */
export function wrongWith(corner: Corner): string | undefined {
  const { unused, angle, banking = 0, apexAngle, topSpeed } = corner;
  const above = {
    "inner radius": corner.innerRadius,
    "road width": corner.roadWidth,
    "car width": corner.carWidth,
    grip: corner.grip,
    braking: corner.braking,
    drive: corner.drive,
    "approach speed": corner.approachSpeed,
  };
  const notBelow = {
    "approach length": corner.approachLength,
    "exit length": corner.exitLength,
    "unused at entry": unused.entry,
    "unused at the apex": unused.apex,
    "unused at exit": unused.exit,
    banking,
  };
  mustBeFinite({ ...above, ...notBelow, angle, "apex angle": apexAngle, "top speed": topSpeed });
  const zero = Object.entries(above).find(([, value]) => value <= 0);
  if (zero) return `${zero[0]} must be more than 0, is ${zero[1]}`;
  const minus = Object.entries(notBelow).find(([, value]) => value < 0);
  if (minus) return `${minus[0]} must be 0 or more, is ${minus[1]}`;
  if (angle < 5 || angle > 200) return `the corner must turn through 5 to 200 degrees, is ${angle}`;
  if (banking >= 90) return `banking must be under 90 degrees, is ${banking}`;
  if (topSpeed !== undefined && topSpeed < corner.approachSpeed) {
    return `top speed must not be under the approach speed of ${corner.approachSpeed}, is ${topSpeed}`;
  }
  const apex = apexOf(corner);
  if (apex <= 0 || apex >= angle || apex >= 180 || angle - apex >= 180) {
    return `the apex must lie inside the corner of ${angle} degrees, is at ${apex}`;
  }
  const room = corner.roadWidth - corner.carWidth;
  if (room <= 0) {
    return `the road must be wider than the car: ${corner.roadWidth} m against ${corner.carWidth} m`;
  }
  const most = unused.apex + Math.max(unused.entry, unused.exit);
  if (most > room) return `${most} m unused is more than the ${room} m there are beside the car`;
  return undefined;
}

/** Standard gravity, m/s². */
const gravity = 9.80665;

/**
 * Squared speed that grip allows on an arc of radius R: μ·g·R on a flat road (OpenStax, University Physics 1,
 * §6.3), g·R·(tan β + μ)/(1 − μ·tan β) on a banked one; Infinity where the banking holds any speed.
 */
export function squaredLimit(radius: number, grip: number, banking = 0): number {
  const slope = Math.tan(toRadians(banking));
  const rest = 1 - grip * slope;
  return rest <= 0 ? Infinity : (gravity * radius * (slope + grip)) / rest;
}
