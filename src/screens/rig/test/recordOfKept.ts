import type { NewRow } from "#db";
import type { CalendarDate, RigSettings, RigTest } from "#domain";
import type { SaidSides } from "#words";
import { recordFrom } from "../recordFrom.ts";
import { rigFields } from "../rigFields.ts";
import { storedIn, textKey } from "../rigTexts.ts";

interface Kept {
  readonly test: Pick<RigTest, "field" | "valueA" | "valueB">;
  readonly side: "A" | "B";
  readonly sides: SaidSides;
  /** The record in force; undefined where nothing was written down yet. */
  readonly inForce: RigSettings | undefined;
  readonly today: CalendarDate;
  /** What the record notes of the test. */
  readonly note: string;
}

/**
 * The record that begins when a setting is kept: the one in force with the value of that side, or, where the test differs in
 * words, with its name. Undefined where the one in force is driven with it already.
 */
export function recordOfKept({ test, side, sides, inForce, today, note }: Kept): NewRow<"rigs"> | undefined {
  const field = rigFields.find((one) => textKey(one) === test.field);
  const value = side === "A" ? test.valueA : test.valueB;
  const name = side === "A" ? sides.sayA : sides.sayB;
  const record = recordFrom(inForce, { from: today, name, note });
  // In words, A is what was there before.
  if (field === undefined || value === undefined) return side === "A" ? undefined : record;
  if (inForce !== undefined && storedIn(inForce, field) === value) return undefined;
  return { ...record, [field.part]: { ...record[field.part], [field.key]: value } };
}
