import { type Figure, known, unknown } from "#domain";
import { angleOf, toDegrees } from "./angles.ts";
import { notAboveZero } from "./finite.ts";
import type { FieldOfView } from "./flatScreen.ts";

/**
 * Field of view of a curved screen, seen from the axis: 2·atan2(half-chord, d − sagitta). 180° and more come out
 * when the eye sits deeper than the screen's edges. The vertical angle is that at the middle. Our methods, §8.
 * @param screen lengths in metres (or any one unit); width measured along the glass, distance to its deepest point
 * @returns a reason when a length is not above zero or the glass is more than half a circle
 * @throws RangeError for a NaN or an infinite length
 */
export function curvedScreen(screen: {
  readonly arcWidth: number;
  readonly height: number;
  readonly radius: number;
  readonly distance: number;
}): Figure<FieldOfView> {
  const { arcWidth, height, radius, distance } = screen;
  const wrong = notAboveZero({ "arc width": arcWidth, height, radius, distance });
  if (wrong !== undefined) return unknown(wrong);
  const half = arcWidth / (2 * radius);
  if (half > Math.PI / 2) {
    return unknown({ because: "more than half a circle", arcWidth, radius });
  }
  const halfChord = radius * Math.sin(half);
  const sagitta = radius * (1 - Math.cos(half));
  return known({
    horizontal: toDegrees(2 * Math.atan2(halfChord, distance - sagitta)),
    vertical: angleOf(height, distance),
  });
}
