import { toRadians } from "./angles.ts";
import { type Corner, usableRoad } from "./cornerShape.ts";
import type { Stretch } from "./cornerTime.ts";
import { squaredLimit } from "./squaredLimit.ts";

/** A line through a corner: two arcs that meet at the apex, and how much of the straights they take. */
export interface CornerWay {
  readonly entryRadius: number;
  readonly exitRadius: number;
  /** Metres of the straights that the arcs reach into. */
  readonly before: number;
  readonly after: number;
  /** The way over straights of the given lengths: straight, two arcs, straight. */
  readonly over: (approachLength: number, exitLength: number) => Stretch[];
}

/**
 * The line of two arcs that touch at the apex: R = r + p + (W − p − unused)/(1 − cos of the angle of that arc), the
 * first arc beginning (R − r − p)·sin φ before the corner's own start. Our methods, §9. Radii are those of the car's
 * inner side and give the speed limits; the car's centre drives half a car wider, which gives the lengths. Kerbs belong
 * to the road: r is less that at the apex, W more that at the apex and the one on the arc's own side.
 * @param apexAngle degrees turned up to the apex
 */
export function cornerWay(corner: Corner, unused: Corner["unused"], apexAngle: number): CornerWay {
  const { carWidth, angle, grip, banking } = corner;
  const { innerRadius, entryRoom, exitRoom } = usableRoad(corner);
  const apexRadius = innerRadius + unused.apex;
  const arc = (degrees: number, room: number, left: number) => {
    const turn = toRadians(degrees);
    const wider = (room - unused.apex - left) / (1 - Math.cos(turn));
    const radius = apexRadius + wider;
    const stretch = { length: (radius + carWidth / 2) * turn, limit: squaredLimit(radius, grip, banking) };
    return { radius, stretch, reach: wider * Math.sin(turn) };
  };
  const entry = arc(apexAngle, entryRoom, unused.entry);
  const exit = arc(angle - apexAngle, exitRoom, unused.exit);
  const straight = (length: number) => ({ length, limit: Infinity });
  return {
    entryRadius: entry.radius,
    exitRadius: exit.radius,
    before: entry.reach,
    after: exit.reach,
    over: (approachLength, exitLength) => [
      straight(approachLength - entry.reach),
      entry.stretch,
      exit.stretch,
      straight(exitLength - exit.reach),
    ],
  };
}
