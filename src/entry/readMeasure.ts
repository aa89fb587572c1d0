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

/** Other units a driver may write behind a length instead of the field's own, in metres. */
const lengths: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1, km: 1000 };
const shape = /^([+-]?)(\d*)(?:[.,](\d*))?\s*(\D*)$/;
/** Three digits after a comma may be thousands or thousandths. */
const unclear = /^[+-]?\d{1,3},\d{3}(?!\d)/;

/**
 * Reads one figure typed into a field: point or comma, with or without its unit; a length may name another unit of
 * length. Empty is "not known".
 * @returns the value as stored, or what is wrong and what would be right
 * @example readMeasure("62,5", { name: "Eye distance", unit: "cm", stored: 0.01, least: 20, most: 500 }) // 0.625
 */
export function readMeasure(text: string, measure: Measure): Reading<{ readonly value: number | undefined }> {
  const { name, unit, stored = 1, least, most, isWhole } = measure;
  const typed = text.trim();
  const behind = unit === "" ? "" : ` ${unit}`;
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
  return value === undefined ? "" : String(rounded(value / stored));
}

function factorOf(suffix: string, unit: string, stored: number): number | undefined {
  const plain = suffix.toLowerCase().replace(/[·. ]/g, "");
  if (plain === "" || plain === unit.toLowerCase().replace(/[·. ]/g, "")) return stored;
  return unit in lengths ? lengths[plain] : undefined;
}

/** Takes off what floating point adds: 62.5 · 0.01 is 0.625. */
function rounded(value: number): number {
  return Number(value.toPrecision(12));
}

function shortened(text: string): string {
  const signs = [...text];
  return signs.length <= 30 ? text : `${signs.slice(0, 30).join("")}…`;
}
