import { median, type Numbers, normalCdf, normalQuantile, requireFinite, requireFraction } from "#numbers";
import { ranks } from "../sample/ranks.ts";
import { tieSizes } from "../sample/tieSizes.ts";
import { exactRankInterval, twoSidedChance } from "./exactRankInterval.ts";
import type { RankTest } from "./findings.ts";
import { distinctSorted, shiftWhere } from "./shiftWhere.ts";

/** From here on, in either sample, the normal approximation is used. */
const EXACT_BELOW = 50;

/**
 * Wilcoxon's rank-sum test (Mann & Whitney 1947) for the shift a − b, with the Hodges–Lehmann estimate: the median of
 * all differences a − b. Exact where both samples hold fewer than fifty values and none are tied, else normal with the
 * corrections for ties and continuity; probability and interval as R's wilcox.test.
 * @param a values of the first sample
 * @param b values of the second
 * @param confidence fraction, as 0.9
 * @returns undefined where a sample is empty or all values are equal
 * @throws RangeError for a value that is not finite or a confidence outside 0 to 1
 * @example rankSumTest([1, 2, 3], [4, 5, 6], 0.9)?.p // 0.1
 */
export function rankSumTest(a: Numbers, b: Numbers, confidence: number): RankTest | undefined {
  requireFinite(a, "a");
  requireFinite(b, "b");
  requireFraction(confidence, "confidence");
  const all = together(a, b, 0);
  const ties = tieSizes(all);
  if (a.length === 0 || b.length === 0 || ties[0] === all.length) return undefined;
  const statistic = pairsAbove(all, a.length);
  const differences = allDifferences(a, b);
  const estimate = median(differences) as number;
  if (a.length >= EXACT_BELOW || b.length >= EXACT_BELOW || ties.length > 0) {
    const scoreAt = (shift: number) => score(together(a, b, shift), a.length);
    const candidates = distinctSorted(differences);
    const z = normalQuantile((1 + confidence) / 2);
    return {
      estimate,
      low: shiftWhere(candidates, scoreAt, z),
      high: shiftWhere(candidates, scoreAt, -z),
      achievedConfidence: confidence,
      p: Math.min(1, 2 * normalCdf(-Math.abs(scoreAt(0)))),
      statistic,
      exact: false,
    };
  }
  const chances = nullChances(a.length, b.length);
  const { place, achievedConfidence } = exactRankInterval(chances, confidence);
  differences.sort();
  return {
    estimate,
    low: differences[place - 1] as number,
    high: differences[differences.length - place] as number,
    achievedConfidence,
    p: twoSidedChance(chances, statistic),
    statistic,
    exact: true,
  };
}

function together(a: Numbers, b: Numbers, shift: number): Float64Array {
  const all = new Float64Array(a.length + b.length);
  for (let i = 0; i < a.length; i++) all[i] = (a[i] as number) - shift;
  all.set(Float64Array.from(b), a.length);
  return all;
}

/** Pairs in which the first sample lies above, ties counting one half: the rank sum less its least value. */
function pairsAbove(all: Float64Array, first: number): number {
  const sum = ranks(all)
    .subarray(0, first)
    .reduce((total, rank) => total + rank, 0);
  return sum - (first * (first + 1)) / 2;
}

function allDifferences(a: Numbers, b: Numbers): Float64Array {
  const differences = new Float64Array(a.length * b.length);
  for (let i = 0; i < a.length; i++) {
    for (let j = 0; j < b.length; j++) differences[i * b.length + j] = (a[i] as number) - (b[j] as number);
  }
  return differences;
}

/** Chances of each number of pairs 0 … m·n when all orders are as likely: choices of m places by their rank sum. */
function nullChances(m: number, n: number): Float64Array {
  const most = m * n;
  const counts = Array.from({ length: m + 1 }, () => new Float64Array(most + 1));
  (counts[0] as Float64Array)[0] = 1;
  for (let place = 1; place <= m + n; place++) {
    for (let chosen = Math.min(m, place); chosen >= 1; chosen--) {
      const from = counts[chosen - 1] as Float64Array;
      const to = counts[chosen] as Float64Array;
      const gain = place - chosen;
      for (let pairs = gain; pairs <= most; pairs++) {
        to[pairs] = (to[pairs] as number) + (from[pairs - gain] as number);
      }
    }
  }
  const wanted = counts[m] as Float64Array;
  const total = wanted.reduce((sum, count) => sum + count, 0);
  return wanted.map((count) => count / total);
}

/** Normal score of the number of pairs, corrected for ties and continuity. */
function score(all: Float64Array, first: number): number {
  const n = all.length;
  const second = n - first;
  const above = pairsAbove(all, first) - (first * second) / 2;
  const tied = tieSizes(all).reduce((sum, size) => sum + size ** 3 - size, 0);
  const variance = ((first * second) / 12) * (n + 1 - tied / (n * (n - 1)));
  return variance === 0 ? 0 : (above - Math.sign(above) / 2) / Math.sqrt(variance);
}
