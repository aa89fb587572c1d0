import { type Figure, known, unknown } from "#domain";
import { angleOf } from "./angles.ts";
import { notAboveZero } from "./finite.ts";

/** Field of view in degrees, from edge to edge. */
export interface FieldOfView {
  readonly horizontal: number;
  readonly vertical: number;
}

/**
 * Field of view of one flat screen seen square from its middle: 2·atan(w/2d). Our methods, §8.
 * Lengths in metres (or any one unit); a reason when one of them is not above zero.
 * @throws RangeError for a NaN or an infinite length
 * @example flatScreen({ width: 2, height: 2, distance: 1 }) // 90° each way
 */
export function flatScreen(screen: {
  readonly width: number;
  readonly height: number;
  readonly distance: number;
}): Figure<FieldOfView> {
  const { width, height, distance } = screen;
  const wrong = notAboveZero({ width, height, distance });
  if (wrong !== undefined) return unknown(wrong);
  return known({ horizontal: angleOf(width, distance), vertical: angleOf(height, distance) });
}
