import type { PlanGlass, Point, ScreenPlan, ScreenView } from "#physics";
import { fieldEms, type Place, type PlanPlaces, planPlaces } from "./planPlaces.ts";

/** What is drawn: where everything stands, and the angles under which it is seen where they are known. */
export interface DrawnPlan {
  readonly plan: ScreenPlan;
  /** Eye to the middle of the middle picture, m. */
  readonly distance: number;
  readonly sideAngle: number | undefined;
  readonly view: ScreenView | undefined;
}

interface Told extends Place {
  readonly text: string;
}

/** How much is in the picture, metres: half of its width, and from the glass to its lower edge. */
export interface PlanFrame {
  readonly aside: number;
  readonly down: number;
}

export interface LaidPlan extends PlanPlaces {
  readonly height: number;
  readonly frame: PlanFrame;
  readonly glass: readonly string[];
  readonly frames: readonly string[];
  /** From the eye to the edges of the pictures. */
  readonly sight: readonly string[];
  /** From the eye straight ahead to the glass. */
  readonly ahead: string;
  readonly head: { readonly at: Place; readonly radius: number };
  readonly eye: Place;
  /** The angle of all screens, around the eye. */
  readonly sweep: string | undefined;
  /** The angle of each picture, and of all together below the eye. */
  readonly angles: readonly Told[];
  /** The angle of a side screen at its joint. */
  readonly turn: string | undefined;
  /** From the glass to the middle of its circle, as far as that is in the picture. */
  readonly radius: string | undefined;
  /** The outer end of the right screen, which turns it; only of three. */
  readonly outer: Place | undefined;
  /** px to metres: the distance and the side angle that a place stands for. */
  readonly distanceAt: (place: Place) => number;
  readonly sideAngleAt: (place: Place) => number;
}

/** Of a head seen from above, m. Common practice, no source. */
const HEAD = 0.09;
/** What is left free around it, px. */
const MARGIN = 14;
/** The plot is at most so high, in shares of the width and in em; three screens are wider than they stand away. */
const highest = { share: { one: 0.56, three: 0.5 }, em: 27 } as const;
const POINTS = 48;
/** What has to be in the picture. */
export function planFrame({ plan, distance }: DrawnPlan): PlanFrame {
  const points = [...plan.glass.flatMap(({ from, to }) => [from, to]), ...plan.hinges];
  return {
    aside: Math.max(0.25, ...points.map(([x]) => Math.abs(x))),
    down: Math.max(0.3, distance + 2.4 * HEAD, ...points.map(([, y]) => distance - y)),
  };
}

/**
 * Lays a plan into a box, to scale, the glass at the top and the eye below it.
 * @param isOverlaid fields are laid over the drawing, and need their room
 * @param held what was in the picture when a hand took hold of it: nothing moves under a finger
 */
export function layPlan(
  drawn: DrawnPlan,
  width: number,
  em: number,
  isOverlaid: boolean,
  held?: PlanFrame,
): LaidPlan {
  const { plan, distance, view } = drawn;
  const frame = held ?? planFrame(drawn);
  const top = MARGIN + em * (isOverlaid ? fieldEms.up + 1.6 : 1.4);
  const share = plan.hinges.length > 0 ? highest.share.three : highest.share.one;
  const plot = Math.min(width * share, em * highest.em);
  const foot = em * 1.6;
  // A box that is being measured may have no width yet.
  const perMetre = Math.min(Math.max(1, width / 2 - MARGIN) / frame.aside, Math.max(1, plot) / frame.down);
  const middle = width / 2;
  const place = ([x, y]: Point): Place => ({
    x: rounded(middle + x * perMetre),
    y: rounded(top + (distance - y) * perMetre),
  });
  const eye = place([0, 0]);
  const line = (points: readonly Point[]) => `M${points.map((point) => px(place(point))).join("L")}`;
  const ends = plan.glass.flatMap(({ from, to }) => [from, to]);
  const right = plan.glass.at(-1);
  const hinge = plan.hinges.at(-1);
  const edge = hinge ?? right?.to ?? [0, distance];
  const onCurve = right?.curve && pointsOf(right)[Math.round(POINTS * 0.85)];
  const sightLength = eye.y - top;
  // The middle angle stands between its arc and the glass.
  const around = Math.max(
    em,
    Math.min(em * 5.5, Math.max(em * 2.5, sightLength * 0.34), sightLength - em * 1.7),
  );
  return {
    height: Math.round(top + plot + foot),
    frame,
    glass: plan.glass.map((one) => line(pointsOf(one))),
    frames: plan.frames.map(({ from, to }) => line([from, to])),
    // Without a frame two pictures share an edge.
    sight: [...new Set(ends.map((end) => line([[0, 0], end])))],
    ahead: line([
      [0, 0],
      [0, distance],
    ]),
    head: { at: place([0, -HEAD]), radius: rounded(HEAD * perMetre) },
    eye,
    sweep: view && arcAround(eye, around, directionOf(ends[0]), directionOf(ends.at(-1))),
    angles:
      view === undefined
        ? []
        : anglesOf(plan, view, { eye, around, em, sightLength, belowHead: 2 * HEAD * perMetre + em * 1.2 }),
    turn: hinge && turnOf(place(hinge), drawn.sideAngle ?? 0, em * 2),
    radius:
      onCurve && right?.curve && line([onCurve, towards(onCurve, right.curve.centre, right.curve.radius)]),
    ...planPlaces({
      width,
      em,
      margin: MARGIN,
      top,
      sightLength,
      edge: place(edge),
      joints: plan.hinges.map(place),
      onCurve: onCurve && place(onCurve),
    }),
    outer: hinge && right ? place(right.to) : undefined,
    distanceAt: ({ y }) => (y - top) / perMetre,
    sideAngleAt: ({ x, y }) => {
      const from = place(edge);
      return (Math.atan2(y - from.y, x - from.x) * 180) / Math.PI;
    },
  };
}

/** Each picture's angle in the middle of its share of the sweep, that of the middle one on the line of sight; all below. */
function anglesOf(
  plan: ScreenPlan,
  view: ScreenView,
  {
    eye,
    around,
    em,
    sightLength,
    belowHead,
  }: Record<"around" | "em" | "sightLength" | "belowHead", number> & {
    eye: Place;
  },
): Told[] {
  const at = (turned: number, far: number, text: string): Told => ({
    x: rounded(eye.x + Math.sin(turned) * far),
    y: rounded(eye.y - Math.cos(turned) * far + em * 0.35),
    text,
  });
  const say = (degrees: number) => `${degrees.toFixed(1)}°`;
  // So near the glass there is no room for it; it stands in the figures all the same.
  const one = sightLength < around + em * 1.7 ? [] : [at(0, around + em * 0.9, say(view.one.horizontal))];
  if (view.sides === undefined) return one;
  const { each } = view.sides;
  const sides = [plan.glass[0], plan.glass[2]].map((glass) => {
    const turned = (directionOf(glass?.from) + directionOf(glass?.to)) / 2;
    return at(turned, around + em * 2.3, say(each));
  });
  const all = { x: eye.x, y: rounded(eye.y + belowHead), text: `${say(view.all.horizontal)} together` };
  return [...sides, ...one, all];
}

/** Where a point lies, seen from the eye: radians to the right of straight ahead. */
function directionOf([x, y]: Point = [0, 1]): number {
  return Math.atan2(x, y);
}

function arcAround({ x, y }: Place, radius: number, from: number, to: number): string {
  const points = Array.from({ length: POINTS + 1 }, (_, index) => {
    const at = from + ((to - from) * index) / POINTS;
    return `${rounded(x + Math.sin(at) * radius)} ${rounded(y - Math.cos(at) * radius)}`;
  });
  return `M${points.join("L")}`;
}

/** The plane of the middle screen carried on beyond the joint, and the arc from it to the side screen. */
function turnOf({ x, y }: Place, degrees: number, radius: number): string {
  const points = Array.from({ length: POINTS + 1 }, (_, index) => {
    const at = (degrees * index * Math.PI) / 180 / POINTS;
    return `${rounded(x + Math.cos(at) * radius)} ${rounded(y + Math.sin(at) * radius)}`;
  });
  return `M${x} ${y}h${rounded(radius * 1.4)}M${points.join("L")}`;
}

/** A picture as points, one after the other. */
function pointsOf({ from, to, curve }: PlanGlass): Point[] {
  if (curve === undefined) return [from, to];
  const { centre, radius } = curve;
  const [first, last] = [from, to].map(([x, y]) => Math.atan2(x - centre[0], y - centre[1])) as [
    number,
    number,
  ];
  return Array.from({ length: POINTS + 1 }, (_, index): Point => {
    const at = first + ((last - first) * index) / POINTS;
    return [centre[0] + radius * Math.sin(at), centre[1] + radius * Math.cos(at)];
  });
}

/** A point part of the way to the middle of a circle: at most 40 cm, so that the picture stays with the screens. */
function towards([x, y]: Point, centre: Point, radius: number): Point {
  const share = Math.min(1, 0.4 / radius);
  return [x + (centre[0] - x) * share, y + (centre[1] - y) * share];
}

const px = ({ x, y }: Place) => `${x} ${y}`;

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}
