import { type Numbers, quantileWithin } from "#numbers";

/** A median with the range that holds nine in ten. */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** A range with the one that holds half of the draws inside it. */
export interface Band extends Range {
  readonly lowHalf: number;
  readonly highHalf: number;
}

/** The 5, 50 and 95 % quantiles of at least one draw. */
export function rangeOf(draws: Numbers): Range {
  const copy = Float64Array.from(draws);
  return {
    low: quantileWithin(copy, 0.05),
    mid: quantileWithin(copy, 0.5),
    high: quantileWithin(copy, 0.95),
  };
}

/** The 5, 25, 50, 75 and 95 % quantiles of at least one draw. */
export function bandOf(draws: Numbers): Band {
  const copy = Float64Array.from(draws);
  return {
    low: quantileWithin(copy, 0.05),
    lowHalf: quantileWithin(copy, 0.25),
    mid: quantileWithin(copy, 0.5),
    highHalf: quantileWithin(copy, 0.75),
    high: quantileWithin(copy, 0.95),
  };
}
