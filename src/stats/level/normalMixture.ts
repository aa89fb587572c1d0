import { quickNormalCdf } from "#numbers";

/** A mixture of normal distributions about differences, one entry of each list a component. */
export interface NormalMixture {
  /** Add up to 1. */
  readonly weights: Float64Array;
  /** Where a deviation is 0, the component is a point, and its mean is 0. */
  readonly means: Float64Array;
  readonly deviations: Float64Array;
}

const ROOT = 1 / Math.sqrt(2 * Math.PI);
/** No quantile asked for lies further out than so many deviations of its component. */
const REACH = 6;
const MOST_TURNS = 60;

/**
 * Share of the mixture below a value.
 * @param ofPoints share of the points at 0 that counts as below 0 where the value is 0
 */
export function mixtureBelow(
  { weights, means, deviations }: NormalMixture,
  value: number,
  ofPoints: number,
): number {
  const point = value > 0 ? 1 : value < 0 ? 0 : ofPoints;
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const deviation = deviations[i] as number;
    const below = deviation > 0 ? quickNormalCdf((value - (means[i] as number)) / deviation) : point;
    sum += (weights[i] as number) * below;
  }
  return Math.min(1, sum);
}

/**
 * The smallest value at or below which a share of the mixture lies, by Newton's method between bounds.
 * @param share above 0 and below 1
 * @param precision to which the share below the value is right
 */
export function mixtureQuantile(mixture: NormalMixture, share: number, precision = 1e-8): number {
  const { weights, means, deviations } = mixture;
  let low = 0;
  let high = 0;
  let value = 0;
  for (let i = 0; i < weights.length; i++) {
    const mean = means[i] as number;
    const reach = REACH * (deviations[i] as number);
    low = Math.min(low, mean - reach);
    high = Math.max(high, mean + reach);
    value += (weights[i] as number) * mean;
  }
  if (mixtureBelow(mixture, 0, 1) < share) low = 0;
  else if (mixtureBelow(mixture, 0, 0) < share) return 0;
  else high = 0;
  if (value <= low || value >= high) value = (low + high) / 2;
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const off = mixtureBelow(mixture, value, 0) - share;
    if (Math.abs(off) < precision) return value;
    if (off < 0) low = value;
    else high = value;
    const next = value - off / density(mixture, value);
    value = next > low && next < high ? next : (low + high) / 2;
  }
  return value;
}

function density({ weights, means, deviations }: NormalMixture, value: number): number {
  let sum = 0;
  for (let i = 0; i < weights.length; i++) {
    const deviation = deviations[i] as number;
    if (deviation === 0) continue;
    const z = (value - (means[i] as number)) / deviation;
    sum += (((weights[i] as number) * ROOT) / deviation) * Math.exp((-z * z) / 2);
  }
  return sum;
}
