import type { Fields } from "#db";
import { longestName, type RigSettings, type RigTest, sayDate } from "#domain";
import { writeMeasure } from "#entry";
import { isAsked, type RigField, rigFields } from "./rigFields.ts";
import { storedIn, textKey } from "./rigTexts.ts";

type Record = Fields<RigSettings>;
const longest = 60;
const back = "Back to ";
const kindBehind = { flat: " screen", curved: " screen", three: " screens", headset: "" } as const;

/** The value of a field with its unit: "62.5 cm", "three"; undefined when it is not known. */
export function saidOf(row: Record, field: RigField): string | undefined {
  const stored = storedIn(row, field);
  if (stored === undefined || stored === "" || !isAsked(field, row.screen.kind)) return undefined;
  if (field.kind === "choice")
    return field.options.find(({ value }) => value === stored)?.label ?? String(stored);
  if (field.kind === "words" || typeof stored === "string") return String(stored);
  const { unit } = field.measure;
  const space = unit === "" || unit === "°" ? "" : " ";
  return `${writeMeasure(stored, field.measure).replace("-", "−")}${space}${unit}`;
}

/** What is in force, in a few short texts for one line; what is not written down is left out. */
export function inForceParts(row: Record): string[] {
  const said = (key: string) => {
    const field = rigFields.find((one) => textKey(one) === key);
    return field && saidOf(row, field);
  };
  const part = (words: string, value: string | undefined, behind = "") =>
    value === undefined ? undefined : `${words}${value}${behind}`;
  const [width, height] = [said("screen.width"), said("screen.height")];
  const size = width !== undefined && height !== undefined ? `${width} × ${height}` : width;
  return [
    part("", said("screen.kind"), kindBehind[row.screen.kind ?? "flat"]),
    size,
    part("eye at ", said("screen.eyeDistance")),
    part("field of view ", said("view.degrees"), said("view.axis") && ` ${said("view.axis")}`),
    part("gain ", said("wheel.gainPercent")),
    part("full brake at ", said("pedals.brakeForceKg")),
  ].filter((one) => one !== undefined);
}

/** A note is rewritten, which is no change of the rig itself. */
export const isNote = (field: RigField) => field.kind === "words" && field.isLong === true;

/** What differs between two records, one short text a field: "gain 62 % to 55 %". */
export function rigChanges(before: Record, after: Record, notes?: "without notes"): string[] {
  return rigFields.flatMap((field) => {
    if (notes === "without notes" && isNote(field)) return [];
    const [old, now] = [saidOf(before, field), saidOf(after, field)];
    if (old === now) return [];
    const { name } = field;
    if (isNote(field)) return [`${name} ${now === undefined ? "taken out" : "changed"}`];
    const isTyped = field.kind === "words";
    const say = (value: string) => (isTyped ? isolated(value) : value);
    if (now === undefined) return [`${name} no longer said`];
    return [old === undefined ? `${name} ${say(now)}` : `${name} ${say(old)} to ${say(now)}`];
  });
}

/** What a record that is being typed changes. */
export function sayChanges(changes: readonly string[]): string {
  return changes.length === 0 ? "Nothing is different yet." : `Changed: ${changes.join(" · ")}`;
}

/**
 * The name of a record that goes back to an older one.
 * @example nameOfReturn({ name: "As it was", from: "2026-08-31" }) // "Back to As it was"
 */
export function nameOfReturn({ name, from }: Pick<RigSettings, "name" | "from">): string {
  if (name === "") return `Back to the settings of ${sayDate(from)}`;
  return (name.startsWith(back) ? name : `${back}${name}`).slice(0, longestName);
}

/**
 * What a rig test compared: "gain 54 % against 72 %". Old tests do not say it: the one value in which their records differ
 * does, else the question.
 */
export function saidOfTest(test: RigTest, records: readonly RigSettings[]): string {
  const { sayA, sayB, question } = test;
  if (sayA !== undefined && sayB !== undefined) return against(sayB, sayA);
  const [a, b] = [test.rigA, test.rigB].map((id) => records.find((rig) => rig.id === id));
  const different =
    a && b ? rigFields.filter((field) => saidOf(a, field) !== saidOf(b, field) && !isNote(field)) : [];
  const [field] = different;
  const [old, now] = [a, b].map((rig) => rig && field && saidOf(rig, field));
  if (different.length !== 1 || field === undefined || old === undefined || now === undefined)
    return question;
  return `${field.name} ${now} against ${old}`;
}

/** What both begin with is said once: "gain 54 % against 72 %". */
function against(one: string, other: string): string {
  const [ones, others] = [one.split(" "), other.split(" ")];
  const first = others.findIndex((word, index) => word !== ones[index]);
  return `${one} against ${first < 1 ? other : others.slice(first).join(" ")}`;
}

/** A typed name inside a sentence: shortened, and set apart so that its writing direction moves nothing around it. */
function isolated(text: string): string {
  const signs = [...text];
  return `“\u2068${signs.length > longest ? `${signs.slice(0, longest).join("")}…` : text}\u2069”`;
}
