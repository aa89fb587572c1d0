import type { Range, WrongMeasure } from "#domain";
import { apexOf, type Corner, noKerbs, usableRoad } from "./cornerShape.ts";
import { belowZero, mustBeFinite, notAboveZero } from "./finite.ts";

/** Degrees a corner may turn through for its sums to hold. */
export const turningRange: Range = { least: 5, most: 200 };

/**
 * What is wrong with a corner, as a reason; undefined when all is well.
 * @throws RangeError for a NaN or an infinite value
 */
export function wrongWith(corner: Corner): WrongMeasure | undefined {
  const { unused, kerbs = noKerbs, angle, banking = 0, apexAngle, topSpeed } = corner;
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
    "kerb at entry": kerbs.entry,
    "kerb at the apex": kerbs.apex,
    "kerb at exit": kerbs.exit,
    banking,
  };
  mustBeFinite({ ...above, ...notBelow, angle, "apex angle": apexAngle, "top speed": topSpeed });
  const outside = notAboveZero(above) ?? belowZero(notBelow);
  if (outside !== undefined) return outside;
  if (angle < turningRange.least || angle > turningRange.most)
    return {
      because: "out of range",
      measure: "angle of the corner",
      from: turningRange.least,
      to: turningRange.most,
      value: angle,
    };
  if (banking >= 90) return { because: "out of range", measure: "banking", from: 0, to: 90, value: banking };
  if (topSpeed !== undefined && topSpeed < corner.approachSpeed) {
    return { because: "top speed under the approach", approachSpeed: corner.approachSpeed, topSpeed };
  }
  const apex = apexOf(corner);
  if (apex <= 0 || apex >= angle || apex >= 180 || angle - apex >= 180) {
    return { because: "apex outside the corner", angle, apexAngle: apex };
  }
  if (corner.roadWidth <= corner.carWidth) {
    return { because: "car wider than the road", roadWidth: corner.roadWidth, carWidth: corner.carWidth };
  }
  if (kerbs.apex >= corner.innerRadius) {
    const most = { from: 0, to: corner.innerRadius };
    return { because: "out of range", measure: "kerb at the apex", ...most, value: kerbs.apex };
  }
  const { entryRoom, exitRoom } = usableRoad(corner);
  const halves = [
    { room: entryRoom, unused: unused.apex + unused.entry },
    { room: exitRoom, unused: unused.apex + unused.exit },
  ].sort((a, b) => b.unused - b.room - (a.unused - a.room));
  const over = halves.find((half) => half.unused > half.room);
  return over && { because: "more unused than there is", ...over };
}
