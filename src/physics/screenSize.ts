import { mustBeAboveZero } from "./finite.ts";

/**
 * Width and height of a flat screen from its diagonal: w = D·p/√(p² + q²). Our methods, §8.
 * @param diagonal in any unit of length; the answer has the same unit
 * @param aspect width to height, for example [16, 9]
 * @throws RangeError for anything that is not a finite number above zero
 * @example screenSize({ diagonal: 5, aspect: [4, 3] }) // { width: 4, height: 3 }
 */
export function screenSize(screen: {
  readonly diagonal: number;
  readonly aspect: readonly [number, number];
}): { width: number; height: number } {
  const { diagonal, aspect } = screen;
  const [across, up] = aspect;
  mustBeAboveZero({ diagonal, "aspect, first number": across, "aspect, second number": up });
  const unit = diagonal / Math.hypot(across, up);
  return { width: across * unit, height: up * unit };
}
