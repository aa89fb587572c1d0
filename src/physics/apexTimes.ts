import { type Figure, known, unknown } from "#domain";
import { type Corner, nothingUnused } from "./cornerShape.ts";
import { cornerTime, missingApproach } from "./cornerTime.ts";
import { cornerWay } from "./cornerWay.ts";
import { wrongWith } from "./wrongWith.ts";

export interface ApexTimes {
  /** Time in seconds between the two fixed points, by the angle turned up to the apex (degrees, rising). */
  readonly points: readonly { readonly apexAngle: number; readonly seconds: number }[];
  /** The point with the shortest time. */
  readonly best: { readonly apexAngle: number; readonly seconds: number };
}

/**
 * "Slow in, fast out" drawn out: the time through a corner with all of the road used, over the place of the apex, in
 * steps of a hundredth of the corner. Our methods, §9. Only lines that fit the straights as given are listed.
 * @returns a reason where the corner is wrong or no line fits
 * @throws RangeError for a NaN or an infinite value
 */
export function apexTimes(corner: Corner): Figure<ApexTimes> {
  const wrong = wrongWith(corner);
  if (wrong !== undefined) return unknown(wrong);
  const points = Array.from({ length: 99 }, (_, index) => (corner.angle * (index + 1)) / 100)
    .filter((apexAngle) => apexAngle < 180 && corner.angle - apexAngle < 180)
    .map((apexAngle) => ({ apexAngle, way: cornerWay(corner, nothingUnused, apexAngle) }))
    .filter(({ way }) => way.before <= corner.approachLength && way.after <= corner.exitLength)
    .map(({ apexAngle, way }) => ({
      apexAngle,
      stretches: way.over(corner.approachLength, corner.exitLength),
    }))
    .filter(({ stretches }) => missingApproach(stretches, corner) === 0)
    .map(({ apexAngle, stretches }) => ({ apexAngle, seconds: cornerTime(stretches, corner) }));
  const [first] = points;
  if (first === undefined) {
    return unknown({ because: "straights too short" });
  }
  return known({
    points,
    best: points.reduce((best, point) => (point.seconds < best.seconds ? point : best), first),
  });
}
