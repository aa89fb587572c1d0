import type { CalendarDate, CornerReview } from "#domain";
import { type CornerChange as ChangeOfCost, cornerChange, type Span, spanOfChanges } from "#physics";
import { type CornersOfCombo, cornerFacts, gapsIn } from "./cornerFacts.ts";
import { inMs } from "./spans.ts";

/** How what is unused at a corner has changed from one review to the next, ms a lap; below zero less is given away. */
export interface CornerChange {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly ms: Span;
}

/** The change of several corners together. */
export interface ChangeInSum extends CornerChange {
  /** The corners that both reviews saw a gap of in common. */
  readonly corners: readonly number[];
}

/** By how much the cost of a corner changed between two reviews; undefined where they saw no gap in common. */
type Between = (number: number, before: CornerReview, now: CornerReview) => ChangeOfCost | undefined;

/** What has become of the corners of a combo from review to review. */
export interface CornerChanges {
  /** Of each corner from the review before to the newest that looked at its gaps; no entry without two such. */
  readonly latest: ReadonlyMap<number, CornerChange>;
  readonly inSum: ChangeInSum | undefined;
}

/**
 * What has become of the corners: of each by itself, and all changes between the two last reviews that share corners
 * together (`spanOfChanges`). Reviews that looked at no gap in common are not compared, nor
 * corners whose geometry is wrong.
 * @param numbers of all corners there are
 */
export function cornerChanges(numbers: readonly number[], combo: CornersOfCombo): CornerChanges {
  const known = new Map<string, ChangeOfCost | undefined>();
  const between: Between = (number, before, now) => {
    const key = `${number} ${before.id} ${now.id}`;
    if (!known.has(key)) known.set(key, changeBetween(number, combo, before, now));
    return known.get(key);
  };
  const latest = numbers.flatMap((number) => {
    const [newest, ...older] = combo.reviews.filter((review) => gapsIn(review, number) !== undefined);
    const change = newest && latestOf(older, newest, (before) => between(number, before, newest));
    return change === undefined ? [] : [[number, change] as const];
  });
  return { latest: new Map(latest), inSum: inSumOf(numbers, combo.reviews, between) };
}

function latestOf(
  older: readonly CornerReview[],
  newest: CornerReview,
  since: (before: CornerReview) => ChangeOfCost | undefined,
): CornerChange | undefined {
  for (const before of older) {
    const change = since(before);
    if (change !== undefined) return { from: before.on, to: newest.on, ms: inMs(spanOfChanges([change])) };
  }
  return undefined;
}

function inSumOf(
  numbers: readonly number[],
  reviews: readonly CornerReview[],
  between: Between,
): ChangeInSum | undefined {
  for (const [index, newest] of reviews.entries())
    for (const before of reviews.slice(index + 1)) {
      const changes = numbers.flatMap((number) => {
        const change = between(number, before, newest);
        return change === undefined ? [] : [{ number, change }];
      });
      if (changes.length > 0)
        return {
          from: before.on,
          to: newest.on,
          corners: changes.map(({ number }) => number),
          ms: inMs(spanOfChanges(changes.map(({ change }) => change))),
        };
    }
  return undefined;
}

function changeBetween(
  number: number,
  combo: CornersOfCombo,
  before: CornerReview,
  now: CornerReview,
): ChangeOfCost | undefined {
  const [then, today] = [gapsIn(before, number), gapsIn(now, number)];
  if (then === undefined || today === undefined) return undefined;
  const change = cornerChange(cornerFacts(number, combo), then, today);
  return change?.known ? change.value : undefined;
}
