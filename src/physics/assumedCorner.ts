import { type Bend, bends, type Car, type Corner as KnownCorner, type Straight } from "#domain";
import { toRadians } from "./angles.ts";
import {
  assumedBend,
  assumedBends,
  assumedCar,
  assumedGrip,
  assumedStraight,
  assumedStraights,
  assumedWidth,
  LEAST_RADIUS,
  measuredWithin,
} from "./cornerAssumptions.ts";
import { type Corner, type Kerbs, noKerbs, usableRoad } from "./cornerShape.ts";
import { radiusOfSpeed } from "./radiusOfSpeed.ts";
import { gravity, squaredLimit } from "./squaredLimit.ts";

/** Metres left unused, as seen; below zero over the edge; absent where nobody looked. */
export interface SeenGaps {
  readonly entry?: number | undefined;
  readonly apex?: number | undefined;
  readonly exit?: number | undefined;
}

/** What is known of a corner in one car; whatever is missing is assumed. */
export interface CornerFacts {
  readonly corner: KnownCorner;
  readonly car: Pick<Car, "width" | "grip" | "braking" | "drive" | "topSpeed">;
  /** The straight before it: that after the corner before it. */
  readonly before: { readonly after?: Straight | undefined; readonly length?: number | undefined };
  /** Lowest speed seen in it, m/s, and the gaps of the line it was seen on. */
  readonly lowestSpeed?: number | undefined;
  readonly seenOn?: SeenGaps | undefined;
}

/** What of a corner is assumed, in the order in which the answer hangs on it. */
export type AssumedFact =
  | "bend"
  | "radius"
  | "width"
  | "angle"
  | "after"
  | "before"
  | "grip"
  | "car width"
  | "braking"
  | "drive"
  | "top speed";

/** A corner with all that its sums need: metres, degrees, m/s, m/s². */
export interface AssumedCorner {
  readonly corner: Omit<Corner, "unused">;
  readonly assumed: readonly AssumedFact[];
  /**
   * The lowest speed is too low for a bend of this kind and width: its inner radius would lie under the least there is,
   * and stands at that.
   */
  readonly isTooSlow: boolean;
}

/** How much grip and width there is taken to be, within what is plausible. */
export interface Scenario {
  readonly grip: keyof typeof assumedGrip;
  readonly width: keyof typeof assumedWidth;
}

export const likeliest: Scenario = { grip: "mid", width: "mid" };

/**
 * A corner with all that its sums need. What was measured wins; an inner radius that was not is worked out from the lowest
 * speed seen, by R = v²/(μ·g) and the gaps of that line; what is left is typical of the bend and the straights
 * (`cornerAssumptions`). Where the bend is not said but a speed is, it is the bend that is usually driven at that speed.
 * The car comes out of the corner before at the speed that this one lets through.
 * @throws RangeError for a value that is not finite
 */
export function assumedCorner(facts: CornerFacts, scenario = likeliest): AssumedCorner {
  const { corner, car, before, lowestSpeed } = facts;
  const grip = within(car.grip, assumedGrip, measuredWithin.grip, scenario.grip);
  const road = {
    roadWidth: within(corner.width, assumedWidth, measuredWithin.width, scenario.width),
    carWidth: car.width ?? assumedCar.width,
    kerbs: { ...noKerbs, ...corner.kerbs },
  };
  const { radius: typicalRadius, angle: typicalAngle } = assumedBends[bendTaken(facts)];
  const angle = corner.angle ?? typicalAngle;
  const ofSpeed =
    corner.radius === undefined && lowestSpeed !== undefined
      ? innerRadius(radiusOfSpeed(lowestSpeed, grip), road, angle, facts.seenOn)
      : undefined;
  const least = LEAST_RADIUS + road.kerbs.apex;
  const radius = corner.radius ?? ofSpeed ?? typicalRadius;
  const isTooSlow = ofSpeed !== undefined && ofSpeed < least;
  const shape = { ...road, innerRadius: isTooSlow ? least : radius };
  const topSpeed = car.topSpeed ?? assumedCar.topSpeed;
  return {
    corner: {
      ...shape,
      angle,
      grip,
      braking: car.braking ?? assumedCar.brakingShare * grip * gravity,
      drive: car.drive ?? assumedCar.drive,
      topSpeed,
      approachSpeed: Math.min(topSpeed, widestSpeed(shape, angle, grip)),
      approachLength: straightOf(before.after, before.length),
      exitLength: straightOf(corner.after, corner.afterLength),
    },
    assumed: assumedOf(facts),
    isTooSlow,
  };
}

/** How long what follows a corner is, by what is known of it, m. */
export function straightOf(after: Straight | undefined, length: number | undefined): number {
  return after === "none" ? 0 : (length ?? assumedStraights[after ?? assumedStraight]);
}

type Spread = typeof assumedGrip | typeof assumedWidth;

function within(
  known: number | undefined,
  spread: Spread,
  share: number,
  step: Scenario["grip" | "width"],
): number {
  if (known === undefined) return spread[step];
  return known * (step === "mid" ? 1 : step === "low" ? 1 - share : 1 + share);
}

type Road = Pick<Corner, "roadWidth" | "carWidth"> & { readonly kerbs: Kerbs };

/** Radius of the single arc with its apex in the middle, less the gaps, and of what is added to the inner edge for it. */
function innerRadius(driven: number, road: Road, angle: number, seen: SeenGaps = {}): number {
  const gap = (metres = 0) => Math.max(0, metres);
  const { entryRoom, exitRoom } = usableRoad({ ...road, innerRadius: 0 });
  const room = Math.min(entryRoom - gap(seen.entry), exitRoom - gap(seen.exit)) - gap(seen.apex);
  return driven - gap(seen.apex) + road.kerbs.apex - wider(room, angle);
}

/** By how much an arc is wider than what it touches at its apex. */
const wider = (room: number, angle: number) => Math.max(0, room) / (1 - Math.cos(toRadians(angle / 2)));

/** Speed on the widest arc there is, m/s. */
function widestSpeed(shape: Road & Pick<Corner, "innerRadius">, angle: number, grip: number): number {
  const { innerRadius: inner, entryRoom, exitRoom } = usableRoad(shape);
  return Math.sqrt(squaredLimit(inner + wider(Math.min(entryRoom, exitRoom), angle), grip));
}

/**
 * The kind of bend that a corner's sums take: as said, else the one usually driven at the lowest speed seen, else a middling
 * one.
 */
export function bendTaken({ corner, car, lowestSpeed }: CornerFacts): Bend {
  if (corner.bend !== undefined) return corner.bend;
  if (lowestSpeed === undefined) return assumedBend;
  const road = {
    roadWidth: corner.width ?? assumedWidth.mid,
    carWidth: car.width ?? assumedCar.width,
    kerbs: noKerbs,
  };
  const off = (bend: Bend) => {
    const { radius, angle } = assumedBends[bend];
    return Math.abs(
      lowestSpeed - widestSpeed({ ...road, innerRadius: radius }, angle, car.grip ?? assumedGrip.mid),
    );
  };
  return bends.toSorted((a, b) => off(a) - off(b))[0] ?? assumedBend;
}

function assumedOf({ corner, car, before, lowestSpeed }: CornerFacts): AssumedFact[] {
  const hasRadius = corner.radius !== undefined || lowestSpeed !== undefined;
  const isMissing: Readonly<Record<AssumedFact, boolean>> = {
    bend: corner.bend === undefined && (!hasRadius || corner.angle === undefined),
    radius: !hasRadius,
    width: corner.width === undefined,
    angle: corner.angle === undefined,
    after: corner.after === undefined && corner.afterLength === undefined,
    before: before.after === undefined && before.length === undefined,
    grip: car.grip === undefined,
    "car width": car.width === undefined,
    braking: car.braking === undefined,
    drive: car.drive === undefined,
    "top speed": car.topSpeed === undefined,
  };
  return (Object.keys(isMissing) as AssumedFact[]).filter((fact) => isMissing[fact]);
}
