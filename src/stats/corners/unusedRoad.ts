import { type CalendarDate, type Figure, type Id, known, unknown } from "#domain";
import { type AssumedFact, cornerChange, cornerCost, type SeenGaps, type Span } from "#physics";
import { type CornersOfCombo, cornerFacts, gapsIn } from "./cornerFacts.ts";

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

/** How what is unused at a corner has changed from one review to the next, ms a lap; below zero less is given away. */
export interface CornerChange {
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly ms: Span;
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

/**
 * The change at a corner from the review before to the newest that looked at its gaps; undefined where there are not two
 * that looked at one gap in common, or where the geometry is wrong.
 */
export function latestChange(number: number, combo: CornersOfCombo): CornerChange | undefined {
  const [newest, ...older] = combo.reviews.filter((review) => gapsIn(review, number) !== undefined);
  if (newest === undefined) return undefined;
  for (const before of older) {
    const ms = changeBetween(number, combo, before, newest);
    if (ms !== undefined) return { from: before.on, to: newest.on, ms };
  }
  return undefined;
}

/** The change of several corners together. */
export interface ChangeInSum extends CornerChange {
  /** The corners that both reviews saw a gap of in common. */
  readonly corners: readonly number[];
}

/**
 * All changes between the two last reviews that share corners, added up: least and most are those of every corner together.
 * @param numbers of all corners there are
 */
export function changeInSum(numbers: readonly number[], combo: CornersOfCombo): ChangeInSum | undefined {
  for (const [index, newest] of combo.reviews.entries())
    for (const before of combo.reviews.slice(index + 1)) {
      const changes = numbers.flatMap((number) => {
        const ms = changeBetween(number, combo, before, newest);
        return ms === undefined ? [] : [{ number, ms }];
      });
      if (changes.length > 0)
        return {
          from: before.on,
          to: newest.on,
          corners: changes.map(({ number }) => number),
          ms: sumOf(changes.map(({ ms }) => ms)),
        };
    }
  return undefined;
}

/** All of them added up, end by end. */
export function sumOf(spans: readonly Span[]): Span {
  const sum = (end: keyof Span) => spans.reduce((total, span) => total + span[end], 0);
  return { low: sum("low"), mid: sum("mid"), high: sum("high") };
}

type Review = CornersOfCombo["reviews"][number];

function changeBetween(number: number, combo: CornersOfCombo, before: Review, now: Review): Span | undefined {
  const [then, today] = [gapsIn(before, number), gapsIn(now, number)];
  if (then === undefined || today === undefined) return undefined;
  const change = cornerChange(cornerFacts(number, combo), then, today);
  return change?.known ? inMs(change.value) : undefined;
}

const spanOf = ({ low, mid, high }: Span, of: (value: number) => number): Span => ({
  low: of(low),
  mid: of(mid),
  high: of(high),
});

const inMs = (seconds: Span) => spanOf(seconds, (value) => Math.round(value * 1000));

function largestOf(gaps: SeenGaps, carWidth: number): UnusedRoad["largest"] {
  const [first, ...rest] = (["exit", "apex", "entry"] as const).flatMap((at) => {
    const metres = gaps[at];
    return metres === undefined ? [] : [{ at, metres, cars: metres / carWidth }];
  });
  return rest.reduce((most, gap) => (gap.metres > most.metres ? gap : most), first as UnusedRoad["largest"]);
}
