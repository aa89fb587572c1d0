import { normalQuantile, requireFinite, requireFraction } from "#numbers";

/** Asymptotic efficiency of the Theil–Sen slope against least squares on normal values, 3/π (Sen 1968). */
const EFFICIENCY = 3 / Math.PI;
/** Further than this nobody plans. */
const MOST = 500;

/**
 * How many more sessions like these would show a steady change of a given size over all of them: the least number n at
 * which change/(n − 1) is (z₁₋α⁄₂ + z₁₋β) times the standard error of the slope over n sessions in a row,
 * σ/√(0.955·n(n² − 1)/12); σ is the scatter of the session medians from one to the next, so that a trend in them does
 * not count as scatter. Sessions in a row are alike, so the number is somewhat too small.
 * @param medians median of each session in time order, ms
 * @param change smallest change worth showing, from the first of the sessions to the last, ms, above 0
 * @param power wanted chance to show it, a fraction
 * @param level two-sided level, a fraction
 * @returns 0 when these sessions are enough; undefined for fewer than three sessions, or for more than 500
 * @throws RangeError for a median that is not finite, a change that is not above 0, or fractions outside 0 to 1
 * @example medians that do not scatter at all need none
 */
export function sessionsNeededForChange(
  medians: readonly number[],
  change: number,
  power = 0.8,
  level = 0.1,
): number | undefined {
  requireFinite(medians, "medians");
  requireFraction(power, "power");
  requireFraction(level, "level");
  if (!(change > 0)) throw new RangeError(`change is ${change}: a number above 0 is needed`);
  const has = medians.length;
  if (has < 3) return undefined;
  const squares = medians.reduce(
    (sum, median, index) => sum + (index === 0 ? 0 : (median - (medians[index - 1] as number)) ** 2),
    0,
  );
  const variance = squares / (has - 1) / 2;
  const z = normalQuantile(1 - level / 2) + normalQuantile(power);
  for (let n = has; n <= has + MOST; n++) {
    const slopeVariance = variance / ((EFFICIENCY * n * (n * n - 1)) / 12);
    if ((change / (n - 1)) ** 2 >= z * z * slopeVariance) return n - has;
  }
  return undefined;
}
