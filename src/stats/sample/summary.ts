import { MAD_SCALE, mean, medianDistance, type Numbers, quantileWithin, squaredDeviations } from "#numbers";

/** The usual figures of one column of values. */
export interface Summary {
  readonly count: number;
  readonly mean: number;
  /** With n − 1; absent for a single value. */
  readonly standardDeviation: number | undefined;
  readonly lowerQuartile: number;
  readonly median: number;
  readonly upperQuartile: number;
  /** Scaled by 1.4826. */
  readonly medianAbsoluteDeviation: number;
}

/**
 * Mean, standard deviation, quartiles (type 7) and scaled median absolute deviation in one go; each is the same
 * figure as the function of that name gives, but the values are copied once and never sorted.
 * @returns undefined for no values
 * @throws RangeError for a value that is not finite
 * @example summary([1, 2, 3])?.upperQuartile // 2.5
 */
export function summary(values: Numbers): Summary | undefined {
  const centre = mean(values);
  if (centre === undefined) return undefined;
  const count = values.length;
  const copy = Float64Array.from(values);
  const lowerQuartile = quantileWithin(copy, 0.25);
  const median = quantileWithin(copy, 0.5, Math.floor((count - 1) * 0.25));
  const upperQuartile = quantileWithin(copy, 0.75, Math.floor((count - 1) * 0.5));
  return {
    count,
    mean: centre,
    standardDeviation: count < 2 ? undefined : Math.sqrt(squaredDeviations(values, centre) / (count - 1)),
    lowerQuartile,
    median,
    upperQuartile,
    medianAbsoluteDeviation: MAD_SCALE * medianDistance(copy, median),
  };
}
