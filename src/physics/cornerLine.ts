import { type Figure, known, unknown } from "#domain";
import { toRadians } from "./angles.ts";
import { apexOf, type Corner, nothingUnused, usableRoad } from "./cornerShape.ts";
import { cornerTime, missingApproach } from "./cornerTime.ts";
import { cornerWay } from "./cornerWay.ts";
import { squaredLimit } from "./squaredLimit.ts";
import { wrongWith } from "./wrongWith.ts";

export interface CornerLine {
  /** Radii of the car's inner side on the two arcs. */
  readonly entryRadius: number;
  readonly exitRadius: number;
  /** Radius of the widest single arc the road allows, its apex in the middle. */
  readonly widestRadius: number;
  /** Speed limits of these arcs in m/s; Infinity where the banking holds any speed. */
  readonly entrySpeed: number;
  readonly exitSpeed: number;
  readonly widestSpeed: number;
  /** Time of this line less that of the line with nothing unused and the same apex; below 0 the tighter line wins. */
  readonly seconds: number;
  /** Whether using the road would gain nothing here: the shorter way beats the wider arc, or all is used. */
  readonly nothingToGain: boolean;
  /** Metres by which the straights were lengthened, for both lines, so that both fit. */
  readonly lengthened: { readonly approach: number; readonly exit: number };
}

/**
 * What the unused road of one corner costs: an estimate from two arcs that meet at the apex, even grip, braking and
 * drive, a flat or evenly banked road, no downforce. Our methods, §9. Both lines are timed between the same two
 * points, so that a tighter line drives longer straights. A straight too short for either line, or for braking
 * from the approach speed, is lengthened for both, and `lengthened` says by how much.
 * @returns the line against the one with nothing unused, or a reason that names what is wrong with the corner
 * @throws RangeError for a NaN or an infinite value
 */
export function cornerLine(corner: Corner): Figure<CornerLine> {
  const wrong = wrongWith(corner);
  if (wrong !== undefined) return unknown(wrong);
  const { angle, grip, banking } = corner;
  const { innerRadius, entryRoom, exitRoom } = usableRoad(corner);
  const line = cornerWay(corner, corner.unused, apexOf(corner));
  const full = cornerWay(corner, nothingUnused, apexOf(corner));
  const exitLength = Math.max(corner.exitLength, line.after, full.after);
  const fitting = Math.max(corner.approachLength, line.before, full.before);
  const braking = [line, full].map((way) => missingApproach(way.over(fitting, exitLength), corner));
  const approachLength = fitting + Math.max(...braking);
  const time = (way: typeof line) => cornerTime(way.over(approachLength, exitLength), corner);
  const widestRadius = innerRadius + Math.min(entryRoom, exitRoom) / (1 - Math.cos(toRadians(angle / 2)));
  const speed = (radius: number) => Math.sqrt(squaredLimit(radius, grip, banking));
  const seconds = time(line) - time(full);
  return known({
    entryRadius: line.entryRadius,
    exitRadius: line.exitRadius,
    widestRadius,
    entrySpeed: speed(line.entryRadius),
    exitSpeed: speed(line.exitRadius),
    widestSpeed: speed(widestRadius),
    seconds,
    nothingToGain: seconds <= 0,
    lengthened: { approach: approachLength - corner.approachLength, exit: exitLength - corner.exitLength },
  });
}
