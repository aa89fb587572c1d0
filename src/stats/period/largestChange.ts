import type { ComboReview } from "./comboReviewFigures.ts";
import { isClearShift } from "./shift.ts";

/** A question of the review beside the first. */
export type ChangedQuestion = "steadier" | "time" | "different";

type Reviewed = Pick<
  ComboReview,
  "steadiness" | "scatterShift" | "accountChange" | "shift" | "thirds" | "points"
>;

const WEEK = 7 * 86_400_000;

/**
 * The question whose answer changed most, told in ms a lap; only changes clear of chance count, at a tie the question
 * asked first.
 * @returns undefined where nothing changed clearly
 */
export function largestChange(review: Reviewed): ChangedQuestion | undefined {
  const sizes: readonly (readonly [ChangedQuestion, number])[] = [
    ["steadier", steadierBy(review)],
    ["time", timeBy(review)],
    ["different", differentBy(review)],
  ];
  const [question, size] = sizes.reduce((most, one) => (one[1] > most[1] ? one : most));
  return size > 0 ? question : undefined;
}

/** Change of the scatter over the period, or against the one before, ms. */
function steadierBy({ steadiness, scatterShift, points }: Reviewed): number {
  const present = points.filter((point) => point.isPresentPage && point.median !== undefined);
  const [first, last] = [present[0], present.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const weeks = (last.startedAt - first.startedAt) / WEEK;
  const isClear = steadiness.known && steadiness.value.finding !== "no clear change";
  const within = isClear ? Math.abs(steadiness.value.perWeek.slope) * weeks : 0;
  const against = scatterShift.known && isClearShift(scatterShift.value) ? scatterShift.value.estimate : 0;
  return (Math.max(within, Math.abs(against)) / 100) * (last.median ?? 0);
}

function timeBy({ accountChange }: Reviewed): number {
  if (!accountChange.known) return 0;
  const clear = accountChange.value.lines.filter(
    ({ ms, shift }) => shift.known && isClearShift(shift.value) && shift.value.estimate * ms > 0,
  );
  return Math.max(0, ...clear.map(({ ms }) => Math.abs(ms)));
}

function differentBy({ shift, thirds }: Reviewed): number {
  const sizes = [shift, thirds].map((one) =>
    one.known && isClearShift(one.value) ? Math.abs(one.value.estimate) : 0,
  );
  return Math.max(...sizes);
}
