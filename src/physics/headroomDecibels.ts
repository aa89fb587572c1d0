import { mustBeAboveZero } from "./finite.ts";

/**
 * Room between the strongest force seen and the limit, in decibels: 20·log₁₀(limit/peak). Negative where the
 * peak lies above the limit. Definition of the level of a field quantity (ISO 80000-3); our methods, §8.
 * @throws RangeError for anything that is not a finite number above zero
 * @example headroomDecibels({ peak: 50, limit: 100 }) // 6.02
 */
export function headroomDecibels(force: { readonly peak: number; readonly limit: number }): number {
  const { peak, limit } = force;
  mustBeAboveZero({ peak, limit });
  return 20 * Math.log10(limit / peak);
}
