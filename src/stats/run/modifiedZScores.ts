import { mean, median, medianDistance, type Numbers, requireFinite } from "#numbers";

/** Beyond this a lap is pointed at: 5, not the usual 3.5, because lap times are skewed. */
export const FAR_OUT = 5;

/**
 * Modified z-scores, 0.6745·(x − median)/MAD (Iglewicz & Hoaglin 1993; NIST/SEMATECH e-Handbook 1.3.5.17). Where more
 * than half of the values are equal, so that the MAD is 0, the mean distance from the median stands in, times 1.2533
 * (from memory: the same book); all equal gives zeros.
 * @returns one score a value, none for no values
 * @throws RangeError for a value that is not finite
 * @example modifiedZScores([1, 2, 3])[2] // 0.6745
 */
export function modifiedZScores(values: Numbers): number[] {
  requireFinite(values);
  const centre = median(values);
  if (centre === undefined) return [];
  const copy = Float64Array.from(values);
  const middle = medianDistance(copy, centre);
  const scale = middle > 0 ? middle / 0.6745 : 1.2533141373155 * (mean(copy) as number);
  return Array.from(values, (value) => (scale === 0 ? 0 : (value - centre) / scale));
}
