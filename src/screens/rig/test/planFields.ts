import type { RigSettings } from "#domain";
import { isAsked, type RigField, rigFields } from "../rigFields.ts";
import { textKey } from "../rigTexts.ts";
import { saidOf } from "../rigWords.ts";

/** A value of the rig that a test can be about, and what it is now. */
export interface PlanField {
  readonly key: string;
  readonly field: RigField;
  /** "72 %"; undefined where no record says it. */
  readonly said: string | undefined;
}

/**
 * The values of the rig that can differ in a test: those that have changed before first, then those that a record says,
 * then the rest. Notes differ in nothing.
 * @param records from the oldest to the newest
 * @param inForce the record that holds now
 */
export function planFields(records: readonly RigSettings[], inForce: RigSettings | undefined): PlanField[] {
  const hasChanged = (field: RigField) =>
    records.some((rig, index) => {
      const before = records[index - 1];
      return before !== undefined && saidOf(before, field) !== saidOf(rig, field);
    });
  const rank = (field: RigField, said: string | undefined) =>
    said === undefined ? 2 : hasChanged(field) ? 0 : 1;
  return rigFields
    .filter((field) => isAsked(field, inForce?.screen.kind) && !(field.kind === "words" && field.isLong))
    .map((field) => ({ key: textKey(field), field, said: inForce && saidOf(inForce, field) }))
    .map((one) => ({ one, rank: rank(one.field, one.said) }))
    .sort((a, b) => a.rank - b.rank)
    .map(({ one }) => one);
}
