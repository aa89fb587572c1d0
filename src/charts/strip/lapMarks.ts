import { aboutRemark, type StripLap, stripMark } from "#domain";

/** Ink of a piece of a mark. A mark is known by its shape; the ink only agrees with it. */
export type MarkInk = "ink" | "soft" | "loss" | "accent";

/** A piece of a mark: a path that is filled, drawn with a line, or drawn as a ring that hides what is under it. */
export interface MarkPiece {
  readonly ink: MarkInk;
  readonly how: "filled" | "drawn" | "ring";
  readonly path: string;
}

/**
 * How a lap is drawn about a place: a filled dot, a mark of its own for each remark, a ring where the time is from memory,
 * a lozenge on a wet track, a small soft one in a run that is measured against nothing, a larger one for the PB.
 * @param x and `y` the middle, px
 * @param r radius of a plain lap's dot, px
 */
export function lapMark(lap: StripLap, x: number, y: number, r: number): MarkPiece[] {
  const mark = stripMark(lap);
  if (mark === "plain") return [bodyOf(lap, x, y, r)];
  return marks[mark === "noTime" ? "cross" : aboutRemark(mark).mark](lap, x, y, r);
}

type Drawn = (lap: StripLap, x: number, y: number, r: number) => MarkPiece[];

type Shape = ReturnType<typeof aboutRemark>["mark"] | "cross";

const marks: Readonly<Record<Shape, Drawn>> = {
  notch: (_, x, y, r) => {
    const [left, top, right, bottom] = sides(x, y, r * 1.1);
    const square = `M${left} ${top}H${right}V${bottom}H${left}Z`;
    return [
      { ink: "ink", how: "ring", path: square },
      { ink: "ink", how: "filled", path: `M${left} ${px(y)}L${px(x)} ${bottom}H${left}Z` },
    ];
  },
  tick: (lap, x, y, r) => [
    { ...bodyOf(lap, x, y, r * 0.75), ink: "loss" },
    { ink: "loss", how: "drawn", path: `M${px(x)} ${px(y)}L${px(x + r * 1.7)} ${px(y - r * 1.5)}` },
  ],
  loop: (_, x, y, r) => [
    // Three quarters of a loop, and the way it left by.
    {
      ink: "loss",
      how: "drawn",
      path: `M${px(x + r)} ${px(y)}A${px(r)} ${px(r)} 0 1 1 ${px(x)} ${px(y - r)}H${px(x + r * 1.6)}`,
    },
  ],
  wall: (lap, x, y, r) => {
    const wall = x + r * 1.1;
    return [
      { ...bodyOf(lap, x - r * 0.3, y, r * 0.75), ink: "loss" },
      { ink: "loss", how: "drawn", path: `M${px(wall)} ${px(y - r * 1.4)}V${px(y + r * 1.4)}` },
    ];
  },
  "two dots": (_, x, y, r) => [
    { ink: "soft", how: "filled", path: dot(x - r * 0.8, y, r * 0.6) + dot(x + r * 0.8, y, r * 0.6) },
  ],
  "two bars": (_, x, y, r) => {
    const [left, top, right, bottom] = sides(x, y, r);
    const [upper, lower] = [(top + y) / 2, (bottom + y) / 2].map(px);
    return [{ ink: "soft", how: "drawn", path: `M${left} ${upper}H${right}M${left} ${lower}H${right}` }];
  },
  leaving: (_, x, y, r) => {
    const [left, top, right, bottom] = sides(x, y, r * 0.9);
    return [{ ink: "soft", how: "drawn", path: `M${left} ${top}L${right} ${px(y)}L${left} ${bottom}` }];
  },
  "coming in": (_, x, y, r) => {
    const [left, top, right, bottom] = sides(x, y, r * 0.9);
    return [{ ink: "soft", how: "drawn", path: `M${right} ${top}L${left} ${px(y)}L${right} ${bottom}` }];
  },
  cross: (_, x, y, r) => {
    const [left, top, right, bottom] = sides(x, y, r);
    return [
      {
        ink: "loss",
        how: "drawn",
        path: `M${left} ${top}L${right} ${bottom}M${right} ${top}L${left} ${bottom}`,
      },
    ];
  },
};

/** The dot of a lap with a time, by how and where it was driven. */
function bodyOf(lap: StripLap, x: number, y: number, r: number): MarkPiece {
  const { surface = "dry", isFromMemory, isApart, isBest } = lap;
  const radius = isBest ? r * 1.35 : isApart ? r * 0.75 : r;
  return {
    ink: isBest ? "accent" : isApart ? "soft" : "ink",
    how: isFromMemory ? "ring" : "filled",
    path: surface !== "dry" ? lozenge(x, y, radius * 1.25) : dot(x, y, radius),
  };
}

/** The sign at a mark that lies farther off than the strip is high: it points the way. */
export function farMark(x: number, y: number, r: number, way: "up" | "down"): MarkPiece {
  const tip = way === "up" ? y - r * 0.7 : y + r * 0.7;
  return {
    ink: "soft",
    how: "drawn",
    path: `M${px(x - r)} ${px(y)}L${px(x)} ${px(tip)}L${px(x + r)} ${px(y)}`,
  };
}

function dot(x: number, y: number, r: number): string {
  const [radius, across] = [px(r), px(r) * 2];
  return `M${px(x - px(r))} ${px(y)}a${radius} ${radius} 0 1 0 ${across} 0a${radius} ${radius} 0 1 0 ${-across} 0Z`;
}

function lozenge(x: number, y: number, r: number): string {
  const [left, top, right, bottom] = sides(x, y, r);
  return `M${px(x)} ${top}L${right} ${px(y)}L${px(x)} ${bottom}L${left} ${px(y)}Z`;
}

const sides = (x: number, y: number, r: number): [number, number, number, number] => [
  px(x - r),
  px(y - r),
  px(x + r),
  px(y + r),
];

/** A tenth of a pixel is seen by nobody. */
function px(value: number): number {
  return Math.round(value * 10) / 10;
}
