/** Places in the sorted shifts that hold an exact interval, and the confidence it has. */
export interface RankInterval {
  /** Counted from 1, from below and from above alike. */
  readonly place: number;
  readonly achievedConfidence: number;
}

/**
 * The exact interval of a rank test, as in R's wilcox.test: the k-th shift from below and from above, k the quantile
 * of the null distribution at half the level, at least 1.
 * @param chances null distribution of the statistic, from 0 up, adding up to 1
 * @param confidence fraction asked for
 */
export function exactRankInterval(chances: Float64Array, confidence: number): RankInterval {
  const half = (1 - confidence) / 2 - 10 * Number.EPSILON;
  let place = 0;
  let below = 0;
  while (below + (chances[place] as number) < half) below += chances[place++] as number;
  if (place > 0) return { place, achievedConfidence: 1 - 2 * below };
  return { place: 1, achievedConfidence: 1 - 2 * (chances[0] as number) };
}

/**
 * Two-sided probability of a statistic under a symmetric null distribution.
 * @param chances null distribution of the statistic, from 0 up, adding up to 1
 */
export function twoSidedChance(chances: Float64Array, statistic: number): number {
  const nearer = Math.min(statistic, chances.length - 1 - statistic);
  let tail = 0;
  for (let i = 0; i <= nearer; i++) tail += chances[i] as number;
  return Math.min(1, 2 * tail);
}
