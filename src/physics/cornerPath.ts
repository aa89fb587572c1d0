import { type Figure, known, unknown } from "#domain";
import { toRadians } from "./angles.ts";
import { apexOf, type Corner, noKerbs, nothingUnused, usableRoad } from "./cornerShape.ts";
import { type CornerWay, cornerWay } from "./cornerWay.ts";
import {
  alongRoad,
  arcCentre,
  type HalfCorner,
  insideFrom,
  outsideUntil,
  type Point,
  wayOf,
} from "./halfCorner.ts";
import { wrongWith } from "./wrongWith.ts";

/** An arc of the car's way. */
export interface PathArc {
  readonly centre: Point;
  /** Of the car's inner side, as in the sums; its centre drives half a car wider. */
  readonly radius: number;
}

/**
 * A corner to be drawn to scale, metres. The centre of the bend is (0, 0); the car comes along +x and the road turns to the
 * left where y is drawn upwards, to the right where it is drawn downwards. Lines run as the car does.
 */
export interface CornerPath {
  /** The way of the car's centre: straight, arc to the apex, arc from it, straight. */
  readonly centre: readonly Point[];
  /** Edges of the road, without kerbs. */
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  /** The edge of the kerb that may be used, where it is needed; empty without a kerb. */
  readonly kerbs: Readonly<Record<"entry" | "apex" | "exit", readonly Point[]>>;
  readonly arcs: Readonly<Record<"entry" | "exit", PathArc>>;
  /** Where the car's centre begins to turn, is at the apex, and has turned. */
  readonly turnIn: Point;
  readonly apex: Point;
  readonly turnedOut: Point;
}

/**
 * The line of a car through a corner, to be drawn: the two arcs of `cornerLine` as points, with the edges of the road and of
 * its kerbs. Of the straights as much is given as the line with nothing unused takes, and a road's width more.
 * @param unused metres left unused; those of the corner where not said
 * @param apexAngle degrees turned up to the apex; that of the corner where not said
 * @returns a reason that names what is wrong with the corner
 * @throws RangeError for a NaN or an infinite value
 */
export function cornerPath(
  corner: Corner,
  unused: Corner["unused"] = corner.unused,
  apexAngle: number = apexOf(corner),
): Figure<CornerPath> {
  const wrong = wrongWith({ ...corner, unused, apexAngle });
  if (wrong !== undefined) return unknown(wrong);
  const { carWidth, roadWidth, kerbs = noKerbs } = corner;
  const ways = [unused, nothingUnused].map((gaps) => cornerWay(corner, gaps, apexAngle)) as [
    CornerWay,
    CornerWay,
  ];
  const [driven, full] = ways;
  const inner = usableRoad(corner).innerRadius;
  const halvesOf = (turn: number, radius: (way: CornerWay) => number, reach: number) => {
    const road = { innerRadius: corner.innerRadius, roadWidth, carWidth, straight: reach + roadWidth };
    const half = (way: CornerWay, apexRadius: number): HalfCorner => ({
      ...road,
      turn: toRadians(turn),
      radius: radius(way),
      apexRadius,
    });
    return { driven: half(driven, inner + unused.apex), full: half(full, inner) };
  };
  const entry = halvesOf(apexAngle, ({ entryRadius }) => entryRadius, full.before);
  const exit = halvesOf(corner.angle - apexAngle, ({ exitRadius }) => exitRadius, full.after);
  const [before, after] = [drawn(entry, kerbs.entry, kerbs.apex), drawn(exit, kerbs.exit, kerbs.apex)];
  const turned = (points: readonly Point[]) =>
    points.map((point) => fromExit(point, toRadians(corner.angle))).reverse();
  const [apexBefore, apexAfter] = [before.apexKerb, turned(after.apexKerb)];
  const through = (line: "way" | "inner" | "outer") => [...before[line], ...turned(after[line]).slice(1)];
  return known({
    centre: through("way"),
    inner: through("inner"),
    outer: through("outer"),
    kerbs: {
      entry: before.outerKerb,
      apex: [...apexBefore, ...apexAfter.slice(1)],
      exit: turned(after.outerKerb),
    },
    arcs: {
      entry: { centre: arcCentre(entry.driven), radius: driven.entryRadius },
      exit: {
        centre: fromExit(arcCentre(exit.driven), toRadians(corner.angle)),
        radius: driven.exitRadius,
      },
    },
    turnIn: before.turnIn,
    apex: before.apex,
    turnedOut: fromExit(after.turnIn, toRadians(corner.angle)),
  });
}

interface DrawnHalf {
  readonly way: readonly Point[];
  readonly inner: readonly Point[];
  readonly outer: readonly Point[];
  readonly outerKerb: readonly Point[];
  readonly apexKerb: readonly Point[];
  readonly turnIn: Point;
  readonly apex: Point;
}

/** A half with its kerbs as far as the line, or the one with nothing unused, needs them. */
function drawn(
  { driven, full }: { readonly driven: HalfCorner; readonly full: HalfCorner },
  outerKerb: number,
  apexKerb: number,
): DrawnHalf {
  const { innerRadius, roadWidth, carWidth, straight, turn } = driven;
  const outerRadius = innerRadius + roadWidth;
  const both = [driven, full];
  const way = wayOf(driven, carWidth / 2);
  return {
    way,
    inner: alongRoad(innerRadius, -straight, turn),
    outer: alongRoad(outerRadius, -straight, turn),
    outerKerb:
      outerKerb > 0 ? alongRoad(outerRadius + outerKerb, -straight, Math.max(...both.map(outsideUntil))) : [],
    apexKerb: apexKerb > 0 ? alongRoad(innerRadius - apexKerb, Math.min(...both.map(insideFrom)), turn) : [],
    turnIn: way[1] as Point,
    apex: way.at(-1) as Point,
  };
}

/** A point of the half behind the apex, which is drawn as if it were driven backwards, in the frame of the corner. */
function fromExit([x, y]: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [-x * cos - y * sin, -x * sin + y * cos];
}
