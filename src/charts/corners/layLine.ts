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
}

/** The same in px, as paths. */
export interface LaidLine {
  readonly height: number;
  readonly road: string;
  readonly kerbs: readonly string[];
  readonly widestLine: string;
  readonly drivenLine: string | undefined;
  readonly cars: readonly string[];
  readonly scale: { readonly path: string; readonly x: number; readonly y: number; readonly text: string };
}

/** A car is drawn so much longer than wide. Common practice, no source. */
const LENGTH_OF_CAR = 2.4;
const MARGIN = 12;
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
  const room = { width: width - 2 * MARGIN, height: Math.min(width * HIGHEST.share, em * HIGHEST.em) };
  const perMetre = Math.min(room.width / (right - left), room.height / (high - low));
  const across = (width - (right - left) * perMetre) / 2;
  const px = ([x, y]: DrawnPoint) =>
    `${rounded(across + (side * y - left) * perMetre)} ${rounded(MARGIN + (high - x) * perMetre)}`;
  const line = (points: readonly DrawnPoint[]) => `M${points.map(px).join("L")}`;
  const height = (high - low) * perMetre + 2 * MARGIN + foot;
  const metres = scales.findLast((length) => length * perMetre <= width / 5) ?? scales[0];
  const baseline = height - em * 0.5;
  return {
    height,
    road: `${line([...corner.inner, ...corner.outer.toReversed()])}Z`,
    kerbs: corner.kerbs.map(line),
    widestLine: line(corner.widest),
    drivenLine: corner.driven && line(corner.driven),
    cars: corner.cars.map((car) => `${line(outlineOf(car, corner.carWidth))}Z`),
    scale: {
      path: `M${rounded(width - MARGIN - metres * perMetre)} ${rounded(baseline - 4)}v4H${width - MARGIN}v-4`,
      x: rounded(width - MARGIN - metres * perMetre - em * 0.5),
      y: baseline,
      text: `${metres} m`,
    },
  };
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
