import type { Reading } from "#domain";

/** What a field for one figure with a unit wants to know. */
export interface Measure {
  /** The field's label, for the message: "Eye distance". */
  readonly name: string;
  /** The unit it is typed in; "" for a bare number. */
  readonly unit: string;
  /** What is stored for each unit typed: 0.01 where centimetres are typed and metres stored. Default 1. */
  readonly stored?: number;
  /** Least and most, in the unit typed. */
  readonly least: number;
  readonly most: number;
  readonly isWhole?: true;
}

const inch = 0.0254;

/**
 * Units that may stand behind a figure instead of the field's own, each with what it is in metres, m/s or m/s². A knot is
 * 1852 m an hour, a mile 1609.344 m, an inch 2.54 cm, g 9.80665 m/s² (BIPM, The International System of Units, 9th edition,
 * table 8 of the 8th for the knot; 3rd CGPM for g; international yard and pound agreement of 1959 for mile and inch).
 */
const quantities: readonly Readonly<Record<string, number>>[] = [
  { mm: 0.001, cm: 0.01, m: 1, km: 1000, in: inch, inch, inches: inch, "″": inch, '"': inch, "”": inch },
  {
    "m/s": 1,
    "km/h": 1 / 3.6,
    kmh: 1 / 3.6,
    kph: 1 / 3.6,
    mph: 1609.344 / 3600,
    "mi/h": 1609.344 / 3600,
    kn: 1852 / 3600,
    kt: 1852 / 3600,
  },
  { "m/s²": 1, "m/s2": 1, "m/s^2": 1, g: 9.80665 },
];
const shape = /^([+-]?)(\d*)(?:[.,](\d*))?\s*(\D*|m\/s\^?2)$/i;
/** Three digits after a comma may be thousands or thousandths. */
const unclear = /^[+-]?\d{1,3},\d{3}(?!\d)/;

/**
 * Reads one figure typed into a field: point or comma, with or without its unit; a length, a speed and an acceleration
 * may name another unit of theirs. Empty is "not known".
 * @returns the value as stored, or what is wrong and what would be right
 * @example readMeasure("62,5", { name: "Eye distance", unit: "cm", stored: 0.01, least: 20, most: 500 }) // 0.625
 */
export function readMeasure(text: string, measure: Measure): Reading<{ readonly value: number | undefined }> {
  const { name, unit, stored = 1, least, most, isWhole } = measure;
  const typed = text.trim();
  // The sign of degrees stands at its figure (ISO 80000-1, 7.1.4), any other unit apart from it.
  const behind = unit === "" || unit === "°" ? unit : ` ${unit}`;
  const right = `Write a ${isWhole ? "whole " : ""}number from ${least} to ${most}${behind}.`;
  const refuse = (wrong: string, instead = right) =>
    ({
      ok: false,
      problem: { at: 0, length: text.length, wrong: `${name}: ${wrong}`, right: instead },
    }) as const;
  if (typed === "") return { ok: true, value: undefined };

  const plain = typed.replace(/[−–]/g, "-");
  const [, sign = "", whole = "", decimals = "", suffix = ""] = shape.exec(plain) ?? [];
  if (whole === "" && decimals === "") return refuse(`“${shortened(typed)}” is not a number.`);
  if (unclear.test(plain))
    return refuse(
      `“${shortened(typed)}” can be read in two ways.`,
      `Write ${plain.replace(/,.*/, "")}${decimals} or ${whole}.${decimals}, without the comma.`,
    );
  const factor = factorOf(suffix.trim(), unit, stored);
  if (factor === undefined) return refuse(`“${shortened(suffix.trim())}” is not a unit of this field.`);
  const value =
    rounded((Number(`${whole || 0}.${decimals || 0}`) * factor) / stored) * (sign === "-" ? -1 : 1);
  if (value < least || value > most) return refuse(`${shortened(typed)} is out of range.`);
  if (isWhole && !Number.isInteger(value)) return refuse(`${shortened(typed)} is not a whole number.`);
  return { ok: true, value: rounded(value * stored) + 0 };
}

/** A stored figure as the field shows it: the same text is read back as the same figure. */
export function writeMeasure(value: number | undefined, { stored = 1 }: Pick<Measure, "stored">): string {
  if (value === undefined) return "";
  // Divided by a unit that is no power of ten, 57 km/h would come back as 56.9999999999.
  const short = Number((value / stored).toPrecision(9));
  return String(rounded(short * stored) === value ? short : rounded(value / stored));
}

function factorOf(suffix: string, unit: string, stored: number): number | undefined {
  const plain = suffix.toLowerCase().replace(/[·. ]/g, "");
  if (plain === "" || plain === unit.toLowerCase().replace(/[·. ]/g, "")) return stored;
  return quantities.find((units) => unit in units)?.[plain];
}

/** Takes off what floating point adds: 62.5 · 0.01 is 0.625. */
function rounded(value: number): number {
  return Number(value.toPrecision(12));
}

function shortened(text: string): string {
  const signs = [...text];
  return signs.length <= 30 ? text : `${signs.slice(0, 30).join("")}…`;
}
