import { toDegrees, toRadians } from "./angles.ts";
import { mustBeAboveZero } from "./finite.ts";

function rescale(degrees: number, factor: number): number {
  mustBeAboveZero({ degrees });
  if (degrees >= 180) throw new RangeError(`degrees must be less than 180, is ${degrees}`);
  return toDegrees(2 * Math.atan(factor * Math.tan(toRadians(degrees) / 2)));
}

function ratio([across, up]: readonly [number, number]): number {
  mustBeAboveZero({ "aspect, first number": across, "aspect, second number": up });
  return across / up;
}

/**
 * Vertical field of view that goes with a horizontal one on a flat picture: tan(V/2) = (q/p)·tan(H/2).
 * Our methods, §8.
 * @param degrees horizontal, above 0 and under 180
 * @param aspect width to height, for example [16, 9]
 * @throws RangeError outside these ranges
 */
export function verticalFromHorizontal(degrees: number, aspect: readonly [number, number]): number {
  return rescale(degrees, 1 / ratio(aspect));
}

/** The way back: tan(H/2) = (p/q)·tan(V/2). Arguments and errors as in `verticalFromHorizontal`. */
export function horizontalFromVertical(degrees: number, aspect: readonly [number, number]): number {
  return rescale(degrees, ratio(aspect));
}
