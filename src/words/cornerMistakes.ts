import type { RemarkKind } from "#domain";
import { listed } from "./counted.ts";

/** A corner and how often each kind of remark named it. */
export interface CornerCounts {
  readonly number: number;
  readonly counts: readonly { readonly kind: RemarkKind; readonly count: number }[];
}

/**
 * At which corner most mistakes were noted.
 * @param corners those with a mistake or a cut, the one with most first; at least one
 * @example "Most at corner 5: 4 of 9 mistakes and cuts"
 * @example "Most at corners 5 and 7: 3 each, of 9 mistakes and cuts"
 */
export function mostMistakesAt(corners: readonly CornerCounts[]): string {
  const all = corners.reduce((sum, corner) => sum + allOf(corner), 0);
  const most = Math.max(0, ...corners.map(allOf));
  const first = corners.filter((corner) => allOf(corner) === most).map(({ number }) => String(number));
  const of = `of ${all} ${all === 1 ? "mistake or cut" : "mistakes and cuts"}`;
  if (first.length === corners.length && first.length > 1)
    return `As many at each: corners ${listed(first)}, ${most} each`;
  return first.length === 1
    ? `Most at corner ${first[0]}: ${most} ${of}`
    : `Most at corners ${listed(first)}: ${most} each, ${of}`;
}

function allOf({ counts }: CornerCounts): number {
  return counts.reduce((sum, { count }) => sum + count, 0);
}
