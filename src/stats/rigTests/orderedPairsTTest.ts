import { mean, requireFinite, requireFraction, squaredDeviations } from "#numbers";
import type { TTest } from "./findings.ts";
import { tInterval } from "./tInterval.ts";

/** A pair of runs: the difference of their medians, always taken the same way round, and which was driven first. */
export interface OrderedPair {
  readonly difference: number;
  readonly first: "A" | "B";
}

/** A t test with the effect of the order beside it. */
export interface OrderedTTest extends TTest {
  /** Half the difference between the mean of the pairs with A first and the mean of those with B first. */
  readonly orderEffect: number;
}

/**
 * Paired t test with the order taken out: the mean of the two orders' mean differences, its error from the scatter
 * inside the orders, n − 2 degrees of freedom (the analysis of a two-period crossover; Hills & Armitage 1979, from
 * memory). Learning or track drift inside the pairs then neither moves nor widens it.
 * @param pairs difference in ms and which setting came first
 * @param confidence fraction, as 0.9
 * @returns undefined for fewer than three pairs, for pairs of one order only, or without any scatter
 * @throws RangeError for a difference that is not finite or a confidence outside 0 to 1
 * @example two AB pairs of 1 and 3 and two BA pairs of 5 and 7: estimate 4, order effect −2
 */
export function orderedPairsTTest(
  pairs: readonly OrderedPair[],
  confidence: number,
): OrderedTTest | undefined {
  requireFraction(confidence, "confidence");
  const differencesOf = (first: "A" | "B") =>
    pairs.filter((pair) => pair.first === first).map((pair) => pair.difference);
  const ab = differencesOf("A");
  const ba = differencesOf("B");
  requireFinite(
    pairs.map((pair) => pair.difference),
    "differences",
  );
  const meanAB = mean(ab);
  const meanBA = mean(ba);
  const degrees = ab.length + ba.length - 2;
  if (meanAB === undefined || meanBA === undefined || degrees < 1) return undefined;
  const variance = (squaredDeviations(ab, meanAB) + squaredDeviations(ba, meanBA)) / degrees;
  if (variance === 0) return undefined;
  const standardError = Math.sqrt(variance * (1 / ab.length + 1 / ba.length)) / 2;
  return {
    ...tInterval((meanAB + meanBA) / 2, standardError, degrees, confidence),
    orderEffect: (meanAB - meanBA) / 2,
  };
}
