import { type Figure, known, unknown } from "#domain";
import { toRadians } from "./angles.ts";
import { notAboveZero } from "./finite.ts";

/** Pixels a degree at which an eye that resolves one minute of arc stops seeing single pixels. */
export const sharpPixelsPerDegree = 60;

/**
 * Pixels per degree at the centre of a screen: pixels/width · distance · π/180. Our methods, §8.
 * @param screen pixels across; width of the picture and eye distance in one unit of length
 * @returns a reason when one of them is not above zero
 * @throws RangeError for a NaN or an infinite value
 */
export function pixelsPerDegree(screen: {
  readonly pixels: number;
  readonly width: number;
  readonly distance: number;
}): Figure<number> {
  const { pixels, width, distance } = screen;
  const wrong = notAboveZero({ pixels, width, distance });
  return wrong === undefined ? known((pixels / width) * distance * toRadians(1)) : unknown(wrong);
}
