import {
  type Braking,
  brakings,
  type CornerReview,
  type ReviewedCorner,
  type Throttle,
  throttles,
} from "#domain";

/** What was said of the pedals and the line at a corner, over all reviews of the page. */
export interface CornerHabits {
  /** Reviews that hold the corner. */
  readonly reviews: number;
  /** The word said most often first; of words said equally often the one listed first in the row's type. */
  readonly braking: readonly { readonly what: Braking; readonly count: number }[];
  readonly throttle: readonly { readonly what: Throttle; readonly count: number }[];
  readonly offLine: number;
}

/** Counts the words said of one corner. */
export function cornerHabits(number: number, reviews: readonly CornerReview[]): CornerHabits {
  const seen = reviews.flatMap(({ corners }) => corners.filter((corner) => corner.number === number));
  return {
    reviews: seen.length,
    braking: counted(brakings, seen, ({ braking }) => braking),
    throttle: counted(throttles, seen, ({ throttle }) => throttle),
    offLine: seen.filter(({ isOffLine }) => isOffLine === true).length,
  };
}

function counted<W extends string>(
  words: readonly W[],
  seen: readonly ReviewedCorner[],
  wordOf: (corner: ReviewedCorner) => W | undefined,
) {
  return words
    .map((what) => ({ what, count: seen.filter((corner) => wordOf(corner) === what).length }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count);
}
