/** Metres; the car comes along +x and turns towards +y. */
export type DrawnPoint = readonly [x: number, y: number];

/** A corner from above. */
export interface DrawnCorner {
  readonly direction: "left" | "right";
  readonly inner: readonly DrawnPoint[];
  readonly outer: readonly DrawnPoint[];
  /** Edges of kerbs that may be used. */
  readonly kerbs: readonly (readonly DrawnPoint[])[];
  /** Ways of the car's middle. */
  readonly widest: readonly DrawnPoint[];
  readonly driven: readonly DrawnPoint[] | undefined;
  /** Where the car is drawn, and how far it has turned by then, degrees. */
  readonly cars: readonly { readonly at: DrawnPoint; readonly turned: number }[];
  readonly carWidth: number;
  /** How far the road turns, degrees. */
  readonly angle: number;
  /** Where a line touches the inside: the middle of its car there, and how far that has turned, degrees. */
  readonly apex: DrawnApex;
  /** The best place for it, where that is another one. */
  readonly bestApex: DrawnApex | undefined;
}

interface DrawnApex {
  readonly at: DrawnPoint;
  readonly turned: number;
}

/** A place in px. */
interface LaidPoint {
  readonly x: number;
  readonly y: number;
}

/** The same in px, as paths. */
export interface LaidLine {
  readonly height: number;
  readonly road: string;
  readonly kerbs: readonly string[];
  readonly widestLine: string;
  readonly drivenLine: string | undefined;
  readonly cars: readonly string[];
  readonly apex: LaidPoint;
  readonly bestApex: LaidPoint | undefined;
  /** Middles of the words at the road's ends, and the arrow of travel at its beginning. */
  readonly ends: { readonly entry: LaidPoint; readonly exit: LaidPoint; readonly arrow: string };
  readonly scale: { readonly path: string; readonly x: number; readonly y: number; readonly text: string };
}

/** A car is drawn so much longer than wide. Common practice, no source. */
const LENGTH_OF_CAR = 2.4;
const MARGIN = 12;
/** Half of a short word, em. */
const WORD = { across: 1.2, up: 0.5 } as const;
/** What the arrow and the word below the road's beginning take, em. */
const ENTRY_ROOM = 2.4;
/** The drawing is at most so high, in shares of its width and in em. */
const HIGHEST = { share: 0.9, em: 34 } as const;
/** Lengths the scale may have, m; it takes about a fifth of the width. */
const scales = [2, 5, 10, 20, 50, 100, 200] as const;

/** Lays a corner into a box, to scale, as large as it fits. */
export function layLine(corner: DrawnCorner, width: number, em: number): LaidLine {
  // The car comes up from below; a left-hander turns to the left.
  const side = corner.direction === "left" ? -1 : 1;
  const all = [...corner.inner, ...corner.outer, ...corner.kerbs.flat()];
  const ups = all.map(([x]) => x);
  const asides = all.map(([, y]) => side * y);
  const [low, high, left, right] = [
    Math.min(...ups),
    Math.max(...ups),
    Math.min(...asides),
    Math.max(...asides),
  ];
  const foot = em * 1.8;
  const out = outwards(corner, side, em);
  // Room for "exit" beyond the road's end, wherever that points, and for the arrow and "entry" below its beginning.
  const beyond = {
    right: Math.max(0, out.x + (out.x > 0 ? WORD.across * em : 0)),
    left: Math.max(0, -out.x + (out.x < 0 ? WORD.across * em : 0)),
    top: Math.max(0, -out.y + (out.y < 0 ? WORD.up * em : 0)),
    foot: Math.max(em * ENTRY_ROOM, out.y + WORD.up * em),
  };
  const room = {
    width: width - 2 * MARGIN - beyond.left - beyond.right,
    height: Math.min(width * HIGHEST.share, em * HIGHEST.em),
  };
  const perMetre = Math.min(room.width / (right - left), room.height / (high - low));
  const across = MARGIN + beyond.left + (room.width - (right - left) * perMetre) / 2;
  const place = ([x, y]: DrawnPoint): LaidPoint => ({
    x: rounded(across + (side * y - left) * perMetre),
    y: rounded(MARGIN + beyond.top + (high - x) * perMetre),
  });
  const px = (point: DrawnPoint) => {
    const { x, y } = place(point);
    return `${x} ${y}`;
  };
  const line = (points: readonly DrawnPoint[]) => `M${points.map(px).join("L")}`;
  const roadFoot = MARGIN + beyond.top + (high - low) * perMetre;
  const height = roadFoot + beyond.foot + MARGIN + foot;
  const [begins, ends] = [0, -1].map((at) => place(middle(corner.inner.at(at), corner.outer.at(at)))) as [
    LaidPoint,
    LaidPoint,
  ];
  const metres = scales.findLast((length) => length * perMetre <= width / 5) ?? scales[0];
  const baseline = height - em * 0.5;
  return {
    height,
    road: `${line([...corner.inner, ...corner.outer.toReversed()])}Z`,
    kerbs: corner.kerbs.map(line),
    widestLine: line(corner.widest),
    drivenLine: corner.driven && line(corner.driven),
    cars: corner.cars.map((car) => `${line(outlineOf(car, corner.carWidth))}Z`),
    apex: place(inside(corner.apex, corner.carWidth)),
    bestApex: corner.bestApex && place(inside(corner.bestApex, corner.carWidth)),
    ends: {
      entry: { x: begins.x, y: rounded(begins.y + em * 1.9) },
      exit: { x: rounded(ends.x + out.x), y: rounded(ends.y + out.y) },
      arrow: arrowUp(begins.x, begins.y + em * 0.3, em * 0.9),
    },
    scale: {
      path: `M${rounded(width - MARGIN - metres * perMetre)} ${rounded(baseline - 4)}v4H${width - MARGIN}v-4`,
      x: rounded(width - MARGIN - metres * perMetre - em * 0.5),
      y: baseline,
      text: `${metres} m`,
    },
  };
}

/** From the middle of the road's far end to the middle of the word there, px: clear of the road, the way the car leaves. */
function outwards({ angle }: DrawnCorner, side: number, em: number): LaidPoint {
  const heading = (angle * Math.PI) / 180;
  const [x, y] = [side * Math.sin(heading), -Math.cos(heading)];
  const far = em * (0.5 + Math.abs(x) * WORD.across + Math.abs(y) * WORD.up);
  return { x: x * far, y: y * far };
}

function middle([x0, y0]: DrawnPoint = [0, 0], [x1, y1]: DrawnPoint = [0, 0]): DrawnPoint {
  return [(x0 + x1) / 2, (y0 + y1) / 2];
}

/** The side of a car that is turned to the inside of the corner. */
function inside({ at: [x, y], turned }: DrawnApex, carWidth: number): DrawnPoint {
  const heading = (turned * Math.PI) / 180;
  return [x - (carWidth / 2) * Math.sin(heading), y + (carWidth / 2) * Math.cos(heading)];
}

function arrowUp(x: number, top: number, length: number): string {
  const wing = rounded(length * 0.35);
  return `M${x} ${rounded(top + length)}V${rounded(top)}m${-wing} ${wing}l${wing} ${-wing}l${wing} ${wing}`;
}

/** The four corners of a car. */
function outlineOf({ at: [x, y], turned }: DrawnCorner["cars"][number], carWidth: number): DrawnPoint[] {
  const [along, aside] = [(carWidth * LENGTH_OF_CAR) / 2, carWidth / 2];
  const heading = (turned * Math.PI) / 180;
  const [cos, sin] = [Math.cos(heading), Math.sin(heading)];
  const signs = [
    [1, 1],
    [1, -1],
    [-1, -1],
    [-1, 1],
  ] as const;
  return signs.map(([a, b]) => [
    x + a * along * cos - b * aside * sin,
    y + a * along * sin + b * aside * cos,
  ]);
}

function rounded(px: number): number {
  return Math.round(px * 100) / 100;
}
