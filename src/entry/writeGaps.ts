import { type GapScale, gapPlaces } from "#domain";
import { readGaps, type SeenCorner } from "./readGaps.ts";
import { writeMeasure } from "./readMeasure.ts";
import { seenSigns } from "./seenWords.ts";

/** More decimals than this are no figure that a driver would type. */
const mostDecimals = 3;

/**
 * What was seen at a corner as the line that would give it again. A gap is written in the unit chosen where that needs few
 * decimals, else in metres with their unit, so that nothing is rounded.
 * @example writeGaps({ entry: 0.9, apex: 0, exit: -0.2, braking: "late" }, { unit: "cars", carWidth: 1.8 }) // "h . -0.2m bl"
 */
export function writeGaps(seen: SeenCorner, scale: GapScale): string {
  const last = gapPlaces.findLastIndex((place) => seen[place] !== undefined);
  const gaps = gapPlaces.slice(0, last + 1).map((place) => gapText(seen[place], scale));
  const words = seenSigns
    .filter(({ says }) => Object.entries(says).every(([of, value]) => seen[of as keyof SeenCorner] === value))
    .map(({ letters }) => letters);
  const head = [...gaps, ...words].join(" ");
  return seen.note === undefined ? head : `${head} / ${seen.note}`.trimStart();
}

function gapText(metres: number | undefined, scale: GapScale): string {
  if (metres === undefined) return "?";
  if (metres === 0) return ".";
  const isRead = (text: string) => {
    const reading = readGaps(text, scale);
    return reading.ok && reading.seen.entry === metres;
  };
  const half = metres < 0 ? "-h" : "h";
  if (isRead(half)) return half;
  const inMetres = plainDecimal(metres);
  if (scale.unit === "metres") return inMetres;
  const inCars = writeMeasure(metres, { stored: scale.carWidth });
  const isShort = (inCars.split(".")[1]?.length ?? 0) <= mostDecimals && !inCars.includes("e");
  return isShort && isRead(inCars) ? inCars : `${inMetres}m`;
}

/** Never with an exponent, which a driver would not type. */
function plainDecimal(value: number): string {
  const text = String(value);
  return text.includes("e") ? value.toFixed(12).replace(/0+$/, "") : text;
}
