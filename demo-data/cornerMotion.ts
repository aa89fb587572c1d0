/** A corner as it truly is, the car in it and the straights beside it: metres, degrees, m/s, m/s². */
export interface TrueCorner {
  readonly radius: number;
  readonly width: number;
  readonly angle: number;
  readonly kerbAtExit?: number;
  /** Straight before it, the speed at which it begins, and the straight after it. */
  readonly approach: number;
  readonly approachSpeed: number;
  readonly exit: number;
}

/** A car as it truly is. */
export interface TrueCar {
  readonly width: number;
  readonly grip: number;
  readonly braking: number;
  readonly drive: number;
  readonly topSpeed: number;
}

/** Metres truly left unused. */
export interface TrueGaps {
  readonly entry: number;
  readonly apex: number;
  readonly exit: number;
}

const gravity = 9.80665;
/** Metres of one step. */
const step = 0.02;

interface Piece {
  readonly length: number;
  /** Speed that the grip holds on it, squared. */
  readonly limit: number;
}

/**
 * Seconds through a corner on a line of two arcs that meet at its middle, walked in steps of two centimetres: what the grip
 * does not need for turning is left for braking and driving. Kept apart from the app's own sums, which are held to it.
 */
export function secondsThrough(corner: TrueCorner, car: TrueCar, gaps: TrueGaps): number {
  const half = (corner.angle * Math.PI) / 360;
  const room = corner.width - car.width;
  const entry = arcOf(corner, car, half, gaps.apex, room - gaps.entry);
  const exit = arcOf(corner, car, half, gaps.apex, room + (corner.kerbAtExit ?? 0) - gaps.exit);
  const cells = [
    { length: corner.approach - entry.reach, limit: Number.POSITIVE_INFINITY },
    entry,
    exit,
    { length: corner.exit - exit.reach, limit: Number.POSITIVE_INFINITY },
  ].flatMap(inSteps);
  const allowed = new Array<number>(cells.length + 1).fill(Number.POSITIVE_INFINITY);
  for (let at = cells.length - 1; at >= 0; at--) {
    const { length, limit } = cells[at] as Piece;
    const end = Math.min(allowed[at + 1] as number, limit);
    allowed[at] = Math.min(limit, end + 2 * car.braking * left(end, limit) * length);
  }
  let squared = Math.min(corner.approachSpeed ** 2, allowed[0] as number);
  let seconds = 0;
  cells.forEach(({ length, limit }, at) => {
    const driven = squared + 2 * car.drive * left(squared, limit) * length;
    const next = Math.min(driven, limit, allowed[at + 1] as number, car.topSpeed ** 2);
    seconds += (2 * length) / (Math.sqrt(squared) + Math.sqrt(next));
    squared = next;
  });
  return seconds;
}

/** Share of the grip that turning leaves. */
const left = (squared: number, limit: number) =>
  limit === Number.POSITIVE_INFINITY ? 1 : Math.sqrt(Math.max(0, 1 - (squared / limit) ** 2));

function inSteps({ length, limit }: Piece): Piece[] {
  const count = Math.max(1, Math.round(length / step));
  return Array.from({ length: count }, () => ({ length: length / count, limit }));
}

/** The arc that begins as far out as there is room for and touches the inner edge, found by halving. */
function arcOf(
  { radius }: TrueCorner,
  car: TrueCar,
  half: number,
  apexGap: number,
  room: number,
): Piece & { readonly reach: number } {
  const apex = radius + apexGap;
  const beginsAt = (arc: number) => arc - (arc - apex) * Math.cos(half);
  let [narrow, wide] = [apex, 1e5];
  for (let halved = 0; halved < 80; halved++) {
    const middle = (narrow + wide) / 2;
    if (beginsAt(middle) < radius + room) narrow = middle;
    else wide = middle;
  }
  return {
    length: (wide + car.width / 2) * half,
    limit: car.grip * gravity * wide,
    reach: (wide - apex) * Math.sin(half),
  };
}
