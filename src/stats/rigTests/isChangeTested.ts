import { type RigSettings, type RigTest, rigValue } from "#domain";

/**
 * Whether a test tried the change that a record of its setting B made: what was in force before must be the test's A, by
 * its record or by the value that differs. Kept after another setting came in between, B answers for itself alone.
 * @param before the record in force until then
 */
export function isChangeTested(
  { rigA, field, valueA }: Pick<RigTest, "rigA" | "field" | "valueA">,
  before: RigSettings,
): boolean {
  if (before.id === rigA) return true;
  return field !== undefined && valueA !== undefined && rigValue(before, field) === valueA;
}
