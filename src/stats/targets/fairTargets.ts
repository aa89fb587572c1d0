import { type Figure, known, unknown } from "#domain";
import type { PracticeQuestion } from "../weeks/history.ts";
import { type ForecastKind, futureFigures } from "./futureFigures.ts";
import { reachedBy } from "./reachedBy.ts";

/** Targets worth setting, in whole ms. */
export interface FairTargets {
  /** Reached in 10 of 20 futures. */
  readonly fair: number;
  /** Reached in 4 of 20. */
  readonly stretch: number;
}

const FAIR = 0.5;
const STRETCH = 0.2;

/**
 * Targets worth setting for a date, read off the best figure of each drawn future (our methods, §6). Where a driver has
 * gone flat they may be slower than the personal best.
 * @returns a reason with fewer than 2 past sessions or without a session to come
 * @throws RangeError for a value that is not finite, naming it
 */
export function fairTargets(
  question: PracticeQuestion & { readonly kind: ForecastKind },
): Figure<FairTargets> {
  const figures = futureFigures(question, question.kind);
  if (!figures.known) return figures;
  if (figures.value.length === 0) return unknown({ needs: 1, of: "session to come", has: 0 });
  return known(fairTargetsOf(figures.value));
}

/**
 * The same read off drawn futures, for those who ask about more than targets.
 * @param figures draws of the target's figure, at least one array, one for each session to come
 */
export function fairTargetsOf(figures: readonly Float64Array[]): FairTargets {
  return {
    fair: Math.round(reachedBy(figures, FAIR)),
    stretch: Math.round(reachedBy(figures, STRETCH)),
  };
}
