import type { Fields } from "#db";
import {
  type CalendarDate,
  type FieldProblem,
  type FormReading,
  longestName,
  longestText,
  type RigSettings,
  readDate,
  rigValue,
  sayDate,
} from "#domain";
import { readMeasure, writeMeasure } from "#entry";
import { isAsked, type RigField, type RigPart, rigFields, rigParts } from "./rigFields.ts";

/** A record as it is typed: the text of each field, "from", "name" and "note" among them. */
export type RigTexts = Readonly<Record<string, string>>;

/** The name of a field among the texts: "screen.width". */
export function textKey({ part, key }: Pick<RigField, "part" | "key">): string {
  return `${part}.${key}`;
}

/** The stored value of a field; undefined when it is not known. */
export function storedIn(row: Pick<RigSettings, RigPart>, field: RigField): string | number | undefined {
  return rigValue(row, textKey(field));
}

/** A record as texts, to be changed. */
export function textsOf(row: RigSettings): RigTexts {
  const fields = rigFields.map((field): [string, string] => {
    const stored = storedIn(row, field);
    const isMeasure = field.kind === "measure" && typeof stored === "number";
    return [textKey(field), isMeasure ? writeMeasure(stored, field.measure) : String(stored ?? "")];
  });
  return { ...Object.fromEntries(fields), from: sayDate(row.from), name: row.name, note: row.note };
}

/** The texts of a new record: what is in force, from today, without its name and note. */
export function textsFrom(inForce: RigSettings | undefined, today: CalendarDate): RigTexts {
  return { ...(inForce && textsOf(inForce)), from: sayDate(today), name: "", note: "" };
}

/**
 * Reads the texts of a record. Fields that make no sense for the kind of screen are left out.
 * @param old the record that is put right; what the form does not know of it is kept
 */
export function readRig(texts: RigTexts, old?: RigSettings): FormReading<Fields<RigSettings>, string> {
  const problems: Record<string, FieldProblem> = {};
  const parts = Object.fromEntries(
    Object.keys(rigParts).map((part) => [part, { ...old?.[part as RigPart] } as Record<string, unknown>]),
  ) as Record<RigPart, Record<string, unknown>>;
  for (const field of rigFields) {
    const value = readField(field, texts, problems);
    if (value === undefined) delete parts[field.part][field.key];
    else parts[field.part][field.key] = value;
  }
  const from = dateOf(texts["from"] ?? "", problems);
  const name = wordsOf("name", "Name", texts, longestName, problems);
  const note = wordsOf("note", "Note", texts, longestText, problems);
  if (from === undefined || Object.keys(problems).length > 0) return { ok: false, problems };
  return { ok: true, value: { ...(parts as Pick<RigSettings, RigPart>), from, name, note } };
}

function readField(field: RigField, texts: RigTexts, problems: Record<string, FieldProblem>) {
  const key = textKey(field);
  if (!isAsked(field, texts["screen.kind"] || undefined)) return undefined;
  if (field.kind === "choice") return texts[key] || undefined;
  if (field.kind === "words") return wordsOf(key, field.label, texts, field.most, problems) || undefined;
  const reading = readMeasure(texts[key] ?? "", field.measure);
  if (reading.ok) return reading.value;
  problems[key] = reading.problem;
  return undefined;
}

function wordsOf(
  key: string,
  label: string,
  texts: RigTexts,
  most: number,
  problems: Record<string, FieldProblem>,
): string {
  const text = (texts[key] ?? "").trim();
  if (text.length > most)
    problems[key] = {
      wrong: `${label}: ${text.length} signs are too many.`,
      right: `At most ${most} are kept; take off ${text.length - most}.`,
    };
  return text;
}

function dateOf(text: string, problems: Record<string, FieldProblem>): CalendarDate | undefined {
  const reading = readDate(text);
  if (reading.ok) return reading.date;
  problems["from"] = reading.problem;
  return undefined;
}
