/** A point on the ground, metres. */
export type Point = readonly [x: number, y: number];

/**
 * Half of a corner, from the straight to the apex, in radians and metres. The centre of the corner's own arcs is (0, 0), the
 * car comes along +x below it, and the road begins to turn towards +y at x = 0. The way of the car's inner side is a
 * straight, then an arc that touches the circle of radius `apexRadius` when it has turned through `turn`.
 */
export interface HalfCorner {
  readonly turn: number;
  /** Inner edge of the road without the kerb, and how wide the road is without kerbs. */
  readonly innerRadius: number;
  readonly roadWidth: number;
  readonly carWidth: number;
  readonly apexRadius: number;
  /** Of the car's inner side. */
  readonly radius: number;
  /** Metres of straight that are looked at. */
  readonly straight: number;
}

/** A place along the road: metres before the corner's own start as a number below 0, radians turned from it above. */
type Station = number;

const stepAngle = Math.PI / 120;
const bisections = 50;

/** Centre of the arc. */
export const arcCentre = ({ turn, apexRadius, radius }: HalfCorner): Point => [
  -(radius - apexRadius) * Math.sin(turn),
  (radius - apexRadius) * Math.cos(turn),
];

/** The way of what lies `out` metres outside the car's inner side, from the beginning of the straight to the apex. */
export function wayOf(half: HalfCorner, out: number): Point[] {
  const { turn, straight } = half;
  const [, y] = onArc(half, out, 0);
  return [[-straight, y], ...steps(0, turn).map((angle) => onArc(half, out, angle))];
}

/** A line along the road at a distance from the centre of its bend, between two places. */
export function alongRoad(lateral: number, from: Station, to: Station): Point[] {
  const straight: Point[] = from < 0 ? [[from, -lateral]] : [];
  if (to < 0) return [...straight, [to, -lateral]];
  return [
    ...straight,
    ...steps(Math.max(0, from), to).map(
      (angle): Point => [lateral * Math.sin(angle), -lateral * Math.cos(angle)],
    ),
  ];
}

/** Up to where the car's outer side lies beyond the outer edge of the road; the beginning where it never does. */
export function outsideUntil(half: HalfCorner): Station {
  const { innerRadius, roadWidth, carWidth, straight } = half;
  const angle = turnedWhere(half, carWidth, innerRadius + roadWidth);
  return angle === 0 ? -straight : stationOf(onArc(half, carWidth, angle));
}

/** From where on the car's inner side lies within the inner edge of the road; the apex where it never does. */
export function insideFrom(half: HalfCorner): Station {
  return stationOf(onArc(half, 0, turnedWhere(half, 0, half.innerRadius)));
}

/** The angle turned when a side of the car, which comes ever nearer to the bend's centre, is as near as that. */
function turnedWhere(half: HalfCorner, out: number, lateral: number): number {
  const isFarther = (angle: number) => lateralOf(onArc(half, out, angle)) > lateral;
  if (!isFarther(0)) return 0;
  if (isFarther(half.turn)) return half.turn;
  let [farther, nearer] = [0, half.turn];
  for (let n = 0; n < bisections; n++) {
    const middle = (farther + nearer) / 2;
    if (isFarther(middle)) farther = middle;
    else nearer = middle;
  }
  return nearer;
}

function onArc(half: HalfCorner, out: number, angle: number): Point {
  const [x, y] = arcCentre(half);
  const radius = half.radius + out;
  return [x + radius * Math.sin(angle), y - radius * Math.cos(angle)];
}

const stationOf = ([x, y]: Point): Station => (x < 0 ? x : Math.atan2(x, -y));
const lateralOf = ([x, y]: Point): number => (x < 0 ? -y : Math.hypot(x, y));

/** From one angle to another in even steps of about a degree and a half, both ends among them. */
function steps(from: number, to: number): number[] {
  const count = Math.max(1, Math.ceil((to - from) / stepAngle));
  return Array.from({ length: count + 1 }, (_, index) => from + ((to - from) * index) / count);
}
