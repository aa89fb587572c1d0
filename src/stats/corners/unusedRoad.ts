import { type CalendarDate, type Figure, type Id, known, unknown } from "#domain";
import { type AssumedFact, cornerCost, type SeenGaps, type Span } from "#physics";
import { type CornersOfCombo, cornerFacts, gapsIn } from "./cornerFacts.ts";
import { inMs, spanOf } from "./spans.ts";

/** What the road left unused at a corner costs, judged from a replay: an estimate, ms a lap where nothing else is said. */
export interface UnusedRoad {
  readonly reviewId: Id;
  readonly on: CalendarDate;
  /** Metres left unused; below zero over the edge; absent where nobody looked. */
  readonly gaps: SeenGaps;
  readonly ms: Span;
  /** Speed given away at the exit, km/h. */
  readonly speed: Span;
  /** The gap that is largest, and in car widths. */
  readonly largest: {
    readonly at: "entry" | "apex" | "exit";
    readonly metres: number;
    readonly cars: number;
  };
  /** The shorter way beats the wider arc here, or all of the road is used. */
  readonly nothingToGain: boolean;
  readonly assumed: readonly AssumedFact[];
  /** The lowest speed does not fit the bend: it is too low for it. */
  readonly isTooSlow: boolean;
}

/**
 * What is left unused at a corner by the newest review that looked at its gaps. `physics/cornerCost` has the sums.
 * @returns a reason where no review did, or where the corner's geometry is wrong
 */
export function unusedRoad(number: number, combo: CornersOfCombo): Figure<UnusedRoad> {
  const review = combo.reviews.find((one) => gapsIn(one, number) !== undefined);
  const gaps = review && gapsIn(review, number);
  if (review === undefined || gaps === undefined) return unknown({ because: "not seen in a replay" });
  const cost = cornerCost(cornerFacts(number, combo), gaps);
  if (!cost.known) return cost;
  const { seconds, exitSpeed, corner, nothingToGain, assumed, isTooSlow } = cost.value;
  return known({
    reviewId: review.id,
    on: review.on,
    gaps,
    ms: inMs(seconds),
    speed: spanOf(exitSpeed, (metresASecond) => metresASecond * 3.6),
    largest: largestOf(gaps, corner.carWidth),
    nothingToGain,
    assumed,
    isTooSlow,
  });
}

function largestOf(gaps: SeenGaps, carWidth: number): UnusedRoad["largest"] {
  const [first, ...rest] = (["exit", "apex", "entry"] as const).flatMap((at) => {
    const metres = gaps[at];
    return metres === undefined ? [] : [{ at, metres, cars: metres / carWidth }];
  });
  return rest.reduce((most, gap) => (gap.metres > most.metres ? gap : most), first as UnusedRoad["largest"]);
}
