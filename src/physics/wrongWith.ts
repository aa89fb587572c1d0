import { apexOf, type Corner } from "./cornerShape.ts";
import { mustBeFinite } from "./finite.ts";

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
