import type { Patch } from "#db";
import { type Corner, cornerRanges, type FieldProblem, type FormReading, longestName } from "#domain";
import { type Measure, readMeasure, writeMeasure } from "#entry";

export type CornerMeasure = "radius" | "width" | "angle";

/** The figures of a corner, in the order of the table. */
export const cornerMeasures: Readonly<Record<CornerMeasure, Measure>> = {
  radius: { name: "Radius", unit: "m", ...cornerRanges.radius },
  width: { name: "Width", unit: "m", ...cornerRanges.width },
  angle: { name: "Angle", unit: "°", ...cornerRanges.angle },
};

/** A corner as it is typed. */
export interface CornerTexts extends Readonly<Record<CornerMeasure, string>> {
  readonly name: string;
  readonly direction: "left" | "right" | "";
}

/** A corner as texts, to be changed. */
export function textsOf(corner: Corner): CornerTexts {
  const { name = "", direction = "", radius, width, angle } = corner;
  return {
    name,
    direction,
    radius: writeMeasure(radius, cornerMeasures.radius),
    width: writeMeasure(width, cornerMeasures.width),
    angle: writeMeasure(angle, cornerMeasures.angle),
  };
}

type CornerReading = FormReading<Patch<Omit<Corner, "number">>, keyof CornerTexts>;

/** Reads the texts of a corner; an empty one is not known. */
export function readCorner(texts: CornerTexts): CornerReading {
  const problems: Partial<Record<keyof CornerTexts, FieldProblem>> = {};
  const measured = (key: CornerMeasure) => {
    const reading = readMeasure(texts[key], cornerMeasures[key]);
    if (reading.ok) return reading.value;
    problems[key] = reading.problem;
    return undefined;
  };
  const name = texts.name.trim();
  if (name.length > longestName)
    problems.name = {
      wrong: `Name: ${name.length} signs are too many.`,
      right: `At most ${longestName} are kept; take off ${name.length - longestName}.`,
    };
  const value = {
    name: name || undefined,
    direction: texts.direction || undefined,
    radius: measured("radius"),
    width: measured("width"),
    angle: measured("angle"),
  };
  return Object.keys(problems).length > 0 ? { ok: false, problems } : { ok: true, value };
}
