import type { ComboReview } from "#stats";
import { shiftTitle } from "./periodShift.ts";
import { isClear } from "./shift.ts";
import { thirdsTitle } from "./thirds.ts";

/**
 * The short answer to "what was different": what is clear first, then what was looked at.
 * @param before the period before in words; undefined where there is none
 */
export function answerOfDifferent(
  review: Pick<ComboReview, "shift" | "thirds">,
  before: string | undefined,
): string {
  const { shift, thirds } = review;
  if (before !== undefined && shift.known && (isClear(shift.value) || !thirds.known))
    return shiftTitle(review, before);
  if (thirds.known && isClear(thirds.value)) return thirdsTitle(review);
  if (before !== undefined && shift.known) return shiftTitle(review, before);
  return thirds.known || before === undefined ? thirdsTitle(review) : shiftTitle(review, before);
}
