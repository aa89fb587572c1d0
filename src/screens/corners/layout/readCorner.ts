import type { CornerEdit, CornerPatch } from "#db";
import {
  bends,
  type Car,
  type Corner,
  type FieldProblem,
  longestName,
  type Reading,
  type Straight,
} from "#domain";
import { type Choices, readChoice, readMeasure } from "#entry";
import { assumedCar } from "#physics";
import {
  type CornerCell,
  cornerCells,
  cornerMeasures,
  type MeasuredCell,
  sayFigure,
  sayLength,
  type TypedCorner,
} from "./cornerCells.ts";

/** What is known of everything around a corner. */
export interface AroundCorner {
  readonly car: Pick<Car, "width">;
  /** Number of sectors of the layout. */
  readonly sectors?: number | undefined;
  /** Lowest speeds seen with this car, m/s, by corner. */
  readonly speeds: ReadonlyMap<number, number>;
}

/** What a typed corner means. */
export interface CornerReading {
  readonly edit: CornerEdit;
  /** What each typed cell was read as. */
  readonly said: TypedCorner;
  readonly problems: { readonly [C in CornerCell]?: FieldProblem };
}

const turns: Choices<"left" | "right"> = { name: "Turns", words: [{ value: "left" }, { value: "right" }] };
const kinds: Choices<(typeof bends)[number]> = {
  name: "Kind of bend",
  words: bends.map((value) => (value === "middling" ? { value, also: ["medium", "middle"] } : { value })),
};
const following: Choices<Straight> = {
  name: "What follows",
  words: [
    { value: "none", also: ["at once"] },
    { value: "short" },
    { value: "middling", also: ["medium", "middle"] },
    { value: "long" },
  ],
  or: "its length in metres, such as 250",
};

type Kerb = keyof NonNullable<Corner["kerbs"]>;
const kerbs = { kerbEntry: "entry", kerbApex: "apex", kerbExit: "exit" } as const satisfies Partial<
  Record<CornerCell, Kerb>
>;

/**
 * Reads what is typed of a corner. Only what is typed is changed; an empty cell makes it unknown.
 * @param corner as it is stored, or what a new one begins as
 */
export function readCorner(typed: TypedCorner, corner: Corner, around: AroundCorner): CornerReading {
  const problems: { [C in CornerCell]?: FieldProblem } = {};
  const said: { [C in CornerCell]?: string } = {};
  const patch: { -readonly [K in keyof CornerPatch]: CornerPatch[K] } = {};
  let { number } = corner;
  const speed: { lowestSpeed?: number | undefined } = {};

  /** Takes what a cell was read as, or notes what is wrong with it. */
  const take = <V>(
    cell: CornerCell,
    reading: Reading<{ readonly value: V | undefined }>,
    put: (value: V | undefined) => void,
    say: (value: V) => string = String,
    refuse: (value: V) => FieldProblem | undefined = () => undefined,
  ) => {
    const { value } = reading.ok ? reading : {};
    const problem = reading.ok ? value !== undefined && refuse(value) : reading.problem;
    if (problem) problems[cell] = problem;
    else {
      put(value);
      if (value !== undefined) said[cell] = say(value);
    }
  };
  const measured = (
    cell: MeasuredCell,
    put: (value: number | undefined) => void,
    refuse?: (value: number) => FieldProblem | undefined,
  ) => {
    const say = (value: number) => sayFigure(cell, value);
    take(cell, readMeasure(typed[cell] ?? "", cornerMeasures[cell]), put, say, refuse);
  };

  const readers: { readonly [C in CornerCell]: () => void } = {
    number: () =>
      measured("number", (value) => {
        if (value === undefined)
          problems.number = { wrong: "A corner needs a number.", right: "Write one, such as 5." };
        else number = value;
      }),
    name: () => take("name", readName(typed.name ?? ""), (value) => (patch.name = value)),
    direction: () =>
      take("direction", readChoice(typed.direction ?? "", turns), (value) => (patch.direction = value)),
    bend: () => take("bend", readChoice(typed.bend ?? "", kinds), (value) => (patch.bend = value)),
    after: () =>
      take(
        "after",
        readAfter(typed.after ?? ""),
        (value) => {
          patch.after = value?.after;
          patch.afterLength = value?.afterLength;
        },
        ({ after, afterLength }) => after ?? sayLength(afterLength ?? 0),
      ),
    sector: () =>
      measured(
        "sector",
        (value) => (patch.sector = value),
        (value) =>
          around.sectors !== undefined && value > around.sectors
            ? {
                wrong: `Sector: ${value} is more than there are.`,
                right: `This layout has ${around.sectors}.`,
              }
            : undefined,
      ),
    speed: () => measured("speed", (value) => (speed.lowestSpeed = value)),
    radius: () => measured("radius", (value) => (patch.radius = value)),
    width: () =>
      measured(
        "width",
        (value) => (patch.width = value),
        (value) => narrowRoad(value, around.car),
      ),
    angle: () => measured("angle", (value) => (patch.angle = value)),
    kerbEntry: () => measured("kerbEntry", (value) => kerb("kerbEntry", value)),
    kerbApex: () => measured("kerbApex", (value) => kerb("kerbApex", value)),
    kerbExit: () => measured("kerbExit", (value) => kerb("kerbExit", value)),
  };
  const kerb = (cell: keyof typeof kerbs, value: number | undefined) => {
    patch.kerbs = { ...patch.kerbs, [kerbs[cell]]: value };
  };
  for (const cell of cornerCells) if (typed[cell] !== undefined) readers[cell]();
  const tooWide = wideKerb(patch, corner);
  if (tooWide !== undefined) {
    const cell = typed.kerbApex === undefined ? "radius" : "kerbApex";
    problems[cell] ??= tooWide;
    delete said[cell];
  }
  return { edit: { number, patch, ...speed }, said, problems };
}

function readName(text: string): Reading<{ readonly value: string | undefined }> {
  const name = text.trim();
  if (name.length <= longestName) return { ok: true, value: name === "" ? undefined : name };
  return {
    ok: false,
    problem: {
      at: longestName,
      length: name.length - longestName,
      wrong: `Name: ${name.length} signs are too many.`,
      right: `At most ${longestName} are kept; take off ${name.length - longestName}.`,
    },
  };
}

/** What follows a corner: a word, or the length of it; nothing at all is none. */
function readAfter(
  text: string,
): Reading<{ readonly value: Pick<Corner, "after" | "afterLength"> | undefined }> {
  if (!/^\s*[+\-−–]?[\d.,]/.test(text)) {
    const word = readChoice(text, following);
    return word.ok ? { ok: true, value: word.value && { after: word.value } } : word;
  }
  const length = readMeasure(text, cornerMeasures.after);
  if (!length.ok) return length;
  const { value } = length;
  if (value === undefined) return { ok: true, value: undefined };
  return { ok: true, value: value === 0 ? { after: "none" } : { afterLength: value } };
}

/** Why no road can be as narrow as this; undefined where the car, as known or assumed, has room on it. */
function narrowRoad(road: number, { width }: Pick<Car, "width">): FieldProblem | undefined {
  const car = width ?? assumedCar.width;
  if (road > car) return undefined;
  return {
    wrong: `Width: ${road} m is no wider than the car.`,
    right: `The car is ${width === undefined ? "taken to be " : ""}${car} m wide. Write more than that, or put the car right.`,
  };
}

/** Why the kerb at the apex cannot be as wide as this; undefined where it fits inside the bend, or was there already. */
function wideKerb(patch: CornerPatch, corner: Corner): FieldProblem | undefined {
  const radius = "radius" in patch ? patch.radius : corner.radius;
  const kerb = patch.kerbs && "apex" in patch.kerbs ? patch.kerbs.apex : corner.kerbs?.apex;
  const isAsStored = radius === corner.radius && kerb === corner.kerbs?.apex;
  if (isAsStored || radius === undefined || kerb === undefined || kerb < radius) return undefined;
  return {
    wrong: `Kerb at apex: ${kerb} m is no narrower than the inner radius of ${radius} m.`,
    right: "Write less, or put the radius right.",
  };
}
