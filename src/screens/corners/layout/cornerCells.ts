import { type Corner, cornerRanges, type Range } from "#domain";
import { type Measure, writeMeasure } from "#entry";
import { turningRange } from "#physics";

/** The cells of a corner, in the order of the table. */
export const cornerCells = [
  "number",
  "name",
  "direction",
  "bend",
  "after",
  "sector",
  "speed",
  "radius",
  "width",
  "angle",
  "kerbEntry",
  "kerbApex",
  "kerbExit",
] as const;
export type CornerCell = (typeof cornerCells)[number];
/** Those that are shown without being asked for; the rest is measured. */
export const plainCells: readonly CornerCell[] = ["number", "name", "direction", "bend", "after", "sector"];

/** What is typed of a corner, cell by cell; a cell left out stands as it is stored. */
export type TypedCorner = { readonly [C in CornerCell]?: string };

export const metres = (name: string, range: Range): Measure => ({ name, unit: "m", ...range });
const perHour = 1 / 3.6;

/** A speed typed in km/h and stored in m/s. */
export const kmh = (name: string, { least, most }: Range): Measure => ({
  name,
  unit: "km/h",
  stored: perHour,
  least: Number((least / perHour).toFixed(1)),
  most: Number((most / perHour).toFixed(1)),
});

export const cornerMeasures = {
  number: { name: "Number", unit: "", ...cornerRanges.number, isWhole: true },
  sector: { name: "Sector", unit: "", ...cornerRanges.sector, isWhole: true },
  speed: kmh("Lowest speed", cornerRanges.lowestSpeed),
  radius: metres("Radius", cornerRanges.radius),
  width: metres("Width", cornerRanges.width),
  angle: { name: "Angle", unit: "°", ...turningRange },
  kerbEntry: metres("Kerb at entry", cornerRanges.kerb),
  kerbApex: metres("Kerb at apex", cornerRanges.kerb),
  kerbExit: metres("Kerb at exit", cornerRanges.kerb),
  after: metres("What follows", cornerRanges.afterLength),
} as const satisfies Readonly<Partial<Record<CornerCell, Measure>>>;
export type MeasuredCell = keyof typeof cornerMeasures;

/** The unit of a cell's figures; undefined where it holds none. */
export const unitOf = (cell: CornerCell): string | undefined =>
  cell in cornerMeasures ? cornerMeasures[cell as MeasuredCell].unit : undefined;

/** A corner as its cells show it; what is not known is empty. */
export function cellsOf(corner: Corner, speed: number | undefined): Readonly<Record<CornerCell, string>> {
  const { afterLength, after } = corner;
  return {
    number: String(corner.number),
    name: corner.name ?? "",
    direction: corner.direction ?? "",
    bend: corner.bend ?? "",
    after: afterLength === undefined || after === "none" ? (after ?? "") : sayLength(afterLength),
    sector: corner.sector === undefined ? "" : String(corner.sector),
    speed: sayFigure("speed", speed),
    radius: sayFigure("radius", corner.radius),
    width: sayFigure("width", corner.width),
    angle: sayFigure("angle", corner.angle),
    kerbEntry: sayFigure("kerbEntry", corner.kerbs?.entry),
    kerbApex: sayFigure("kerbApex", corner.kerbs?.apex),
    kerbExit: sayFigure("kerbExit", corner.kerbs?.exit),
  };
}

/** A stored figure as its cell shows it, in the unit of its column. */
export function sayFigure(cell: MeasuredCell, value: number | undefined): string {
  const measure: Measure = cornerMeasures[cell];
  // A speed typed in another unit has a tail of digits nobody saw.
  return value !== undefined && cell === "speed"
    ? String(Number((value / perHour).toFixed(1)))
    : writeMeasure(value, measure);
}

/** "250 m" */
export const sayLength = (length: number) => `${sayFigure("after", length)} m`;
