import { median, type Numbers, normalCdf, normalQuantile, requireFinite, requireFraction } from "#numbers";
import { ranks } from "../sample/ranks.ts";
import { tieSizes } from "../sample/tieSizes.ts";
import { exactRankInterval, twoSidedChance } from "./exactRankInterval.ts";
import type { RankTest } from "./findings.ts";
import { distinctSorted, shiftWhere } from "./shiftWhere.ts";

/** From here on the normal approximation is used. */
const EXACT_BELOW = 50;

/**
 * Wilcoxon's signed-rank test of paired differences against no shift (Wilcoxon 1945), with the Hodges–Lehmann
 * estimate: the median of all pair means. Zeros are left out first. Exact below fifty differences without ties and
 * zeros, else normal with the corrections for ties and continuity; probability and interval as R's wilcox.test.
 * @param differences of each pair, ms
 * @param confidence fraction, as 0.9
 * @returns undefined where no difference is other than zero; with few, `achievedConfidence` may stay under the one
 * asked for (under five at 0.9)
 * @throws RangeError for a value that is not finite or a confidence outside 0 to 1
 * @example signedRankTest([1, 2, 3, 4, 5], 0.9)?.p // 0.0625
 */
export function signedRankTest(differences: Numbers, confidence: number): RankTest | undefined {
  requireFinite(differences, "differences");
  requireFraction(confidence, "confidence");
  const shifts = Float64Array.from(differences).filter((difference) => difference !== 0);
  const n = shifts.length;
  if (n === 0) return undefined;
  const sizes = shifts.map(Math.abs);
  const statistic = rankSumAbove(shifts, sizes);
  const pairMeans = meansOfPairs(shifts);
  const estimate = median(pairMeans) as number;
  if (n >= EXACT_BELOW || n < differences.length || tieSizes(sizes).length > 0) {
    const p = Math.min(1, 2 * normalCdf(-Math.abs(score(shifts))));
    return { estimate, ...normalInterval(pairMeans, shifts, confidence), p, statistic, exact: false };
  }
  const chances = nullChances(n);
  const { place, achievedConfidence } = exactRankInterval(chances, confidence);
  pairMeans.sort();
  return {
    estimate,
    low: pairMeans[place - 1] as number,
    high: pairMeans[pairMeans.length - place] as number,
    achievedConfidence,
    p: twoSidedChance(chances, statistic),
    statistic,
    exact: true,
  };
}

function rankSumAbove(shifts: Float64Array, sizes: Float64Array): number {
  return ranks(sizes).reduce((sum, rank, index) => ((shifts[index] as number) > 0 ? sum + rank : sum), 0);
}

function meansOfPairs(values: Float64Array): Float64Array {
  const means = new Float64Array((values.length * (values.length + 1)) / 2);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    for (let j = 0; j <= i; j++) means[count++] = ((values[i] as number) + (values[j] as number)) / 2;
  }
  return means;
}

/** Chances of each rank sum 0 … n(n + 1)/2 when every sign is as likely as its opposite. */
function nullChances(n: number): Float64Array {
  const most = (n * (n + 1)) / 2;
  const chances = new Float64Array(most + 1);
  chances[0] = 0.5 ** n;
  for (let rank = 1; rank <= n; rank++) {
    for (let sum = most; sum >= rank; sum--) {
      chances[sum] = (chances[sum] as number) + (chances[sum - rank] as number);
    }
  }
  return chances;
}

/** Normal score of the rank sum, corrected for ties and continuity; 0 where nothing is left to rank. */
function score(shifts: Float64Array): number {
  const left = shifts.filter((shift) => shift !== 0);
  const n = left.length;
  const sizes = left.map(Math.abs);
  const above = rankSumAbove(left, sizes) - (n * (n + 1)) / 4;
  const tied = tieSizes(sizes).reduce((sum, size) => sum + size ** 3 - size, 0);
  const variance = (n * (n + 1) * (2 * n + 1)) / 24 - tied / 48;
  return variance === 0 ? 0 : (above - Math.sign(above) / 2) / Math.sqrt(variance);
}

/** As R: the test turned round; where the level cannot be reached, it is doubled until it can. */
function normalInterval(pairMeans: Float64Array, shifts: Float64Array, confidence: number) {
  const candidates = distinctSorted(pairMeans);
  const scoreAt = (shift: number) => score(shifts.map((value) => value - shift));
  const first = candidates[0] as number;
  const last = candidates.at(-1) as number;
  const reach = Math.min(scoreAt(first), -scoreAt(last));
  let level = 1 - confidence;
  while (level < 1 && reach < normalQuantile(1 - level / 2)) level *= 2;
  if (level >= 1) return { low: first, high: last, achievedConfidence: 0 };
  const z = normalQuantile(1 - level / 2);
  return {
    low: shiftWhere(candidates, scoreAt, z),
    high: shiftWhere(candidates, scoreAt, -z),
    achievedConfidence: 1 - level,
  };
}
