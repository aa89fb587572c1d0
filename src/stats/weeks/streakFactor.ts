import { ranks } from "../sample/ranks.ts";

/** Correlations inside what chance alone gives in 19 of 20 series are taken for none. */
const Z_OF_CHANCE = 1.96;

/**
 * By how much the variance of Mann–Kendall's S grows where good and bad values come in streaks: the correction of Hamed &
 * Rao (1998, "A modified Mann–Kendall trend test for autocorrelated data", formula from memory), by the autocorrelations of
 * the ranks of the values freed of their straight line. Only what streaks add is counted, so a test is never made surer.
 * @param values in time order, their straight line taken out
 * @returns 1 where nothing comes in streaks, or with fewer than four values
 */
export function streakFactor(values: readonly number[]): number {
  const n = values.length;
  if (n < 4) return 1;
  const places = ranks(values);
  const middle = (n + 1) / 2;
  const squares = places.reduce((sum, rank) => sum + (rank - middle) ** 2, 0);
  if (squares === 0) return 1;
  let sum = 0;
  for (let lag = 1; lag < n - 2; lag++) {
    let products = 0;
    for (let i = lag; i < n; i++)
      products += ((places[i] as number) - middle) * ((places[i - lag] as number) - middle);
    const correlation = products / squares;
    if (Math.abs(correlation) < Z_OF_CHANCE / Math.sqrt(n)) continue;
    sum += (n - lag) * (n - lag - 1) * (n - lag - 2) * correlation;
  }
  return Math.max(1, 1 + (2 * sum) / (n * (n - 1) * (n - 2)));
}
