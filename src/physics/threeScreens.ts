import { type Figure, known, unknown } from "#domain";
import { angleOf, toDegrees, toRadians } from "./angles.ts";
import { belowZero, mustBeFinite, notAboveZero } from "./finite.ts";
import type { FieldOfView } from "./flatScreen.ts";

export interface ThreeScreensView extends FieldOfView {
  /** Angle of the side screens at which the eye stands square before each: square, not widest. */
  readonly bestSideAngle: number;
  /** The middle picture alone. */
  readonly centre: number;
  /** One side picture alone, without its bezel. */
  readonly eachSide: number;
}

/**
 * Field of view of three equal flat screens, the outer two turned towards the eye. The horizontal angle runs from
 * outer edge to outer edge, bezels included; the vertical one is that of the middle screen. Our methods, §8:
 * the hinge lies at (w/2 + b, d), the side picture runs from b to b + w along the plane turned by the side angle.
 * @param screens lengths in metres (or any one unit): one picture's width and height, eye to middle screen,
 * bezel on each side of a joint; side angle in degrees, 0 = all three in one plane
 * @returns a reason where the eye would see a side screen from behind, or the side screens would meet
 * @throws RangeError for a NaN or an infinite value
 */
export function threeScreens(screens: {
  readonly width: number;
  readonly height: number;
  readonly distance: number;
  readonly sideAngle: number;
  readonly bezel: number;
}): Figure<ThreeScreensView> {
  const { width, height, distance, sideAngle, bezel } = screens;
  mustBeFinite({ sideAngle, bezel });
  const wrong = notAboveZero({ width, height, distance }) ?? belowZero({ bezel });
  if (wrong !== undefined) return unknown(wrong);
  if (sideAngle < 0 || sideAngle >= 180) {
    return unknown({ because: "out of range", measure: "side angle", from: 0, to: 180, value: sideAngle });
  }
  const hinge = width / 2 + bezel;
  const turn = toRadians(sideAngle);
  const angleAt = (along: number) =>
    Math.atan2(hinge + along * Math.cos(turn), distance - along * Math.sin(turn));
  if (hinge * Math.sin(turn) + distance * Math.cos(turn) <= 0) {
    return unknown({ because: "side screens seen from behind", sideAngle });
  }
  if (hinge + (bezel + width) * Math.cos(turn) <= 0) {
    return unknown({ because: "side screens meet", sideAngle });
  }
  return known({
    horizontal: toDegrees(2 * angleAt(bezel + width)),
    vertical: angleOf(height, distance),
    bestSideAngle: angleOf(2 * hinge, distance),
    centre: angleOf(width, distance),
    eachSide: toDegrees(angleAt(bezel + width) - angleAt(bezel)),
  });
}
