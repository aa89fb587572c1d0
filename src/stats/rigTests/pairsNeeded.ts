import { normalQuantile, requireFraction } from "#numbers";

/** Fraction of tests without any difference that claim one, where nothing else is said. */
export const testLevel = 0.1;

/** Asymptotic efficiency of the signed-rank test against the t test on normal differences, 3/π. */
const EFFICIENCY = 3 / Math.PI;

/**
 * Pairs of runs that a rig test needs: ((z₁₋α⁄₂ + z₁₋β)·σ/δ)²/0.955 + z²₁₋α⁄₂/2 + ½, rounded up (Lehmann 1975,
 * "Nonparametrics", with the two last terms for small numbers), and at least as many as can decide at all.
 * @param difference smallest difference worth finding, ms
 * @param standardDeviation of the difference of two neighbouring runs, drift included, ms
 * @param power wanted chance to find it, a fraction
 * @param level two-sided level of the test, a fraction
 * @throws RangeError for a difference of 0, a spread that is not above 0, or fractions outside 0 to 1
 * @example pairsNeeded({ difference: 150, standardDeviation: 250, power: 0.8, level: 0.1 }) // 20
 */
export function pairsNeeded(plan: {
  readonly difference: number;
  readonly standardDeviation: number;
  readonly power: number;
  readonly level: number;
}): number {
  const { difference, standardDeviation, power, level } = plan;
  requireFraction(power, "power");
  requireFraction(level, "level");
  if (!(Math.abs(difference) > 0 && Number.isFinite(difference))) {
    throw new RangeError(`difference is ${difference}: a number other than 0 is needed`);
  }
  if (!(standardDeviation > 0 && Number.isFinite(standardDeviation))) {
    throw new RangeError(`standardDeviation is ${standardDeviation}: a number above 0 is needed`);
  }
  const ratio = (reachOf(plan) * standardDeviation) / difference;
  return Math.max(leastPairs(level), Math.ceil(ratio ** 2 / EFFICIENCY + forFewPairs(level)));
}

/**
 * The smallest difference that so many pairs find, ms: `pairsNeeded` the other way round.
 * @returns undefined for fewer pairs than can decide at all
 * @example differenceFound({ pairs: 20, standardDeviation: 250, power: 0.8, level: 0.1 }) // 149.3…
 */
export function differenceFound(plan: {
  readonly pairs: number;
  readonly standardDeviation: number;
  readonly power: number;
  readonly level: number;
}): number | undefined {
  const { pairs, standardDeviation, level } = plan;
  if (pairs < leastPairs(level)) return undefined;
  return (reachOf(plan) * standardDeviation) / Math.sqrt((pairs - forFewPairs(level)) * EFFICIENCY);
}

/** Standard errors between no difference and one that is found with the wanted chance. */
function reachOf({ power, level }: { readonly power: number; readonly level: number }): number {
  return normalQuantile(1 - level / 2) + normalQuantile(power);
}

/** Pairs more than the normal distribution asks for. */
function forFewPairs(level: number): number {
  return normalQuantile(1 - level / 2) ** 2 / 2 + 0.5;
}

/** One pair more than the exact test needs to reach the level at all: 6 at 0.1, 7 at 0.05, 9 at 0.01. */
export function leastPairs(level: number): number {
  return Math.ceil(Math.log2(2 / level)) + 1;
}
