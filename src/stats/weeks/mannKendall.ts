import { type Numbers, normalCdf, requireFinite } from "#numbers";
import { tieSizes } from "../sample/tieSizes.ts";
import { countInversions } from "./countInversions.ts";

/** Up to here, and without ties, the probability is counted exactly. */
const EXACT_UP_TO = 10;

/** A test for a trend: pairs rising minus pairs falling, tau-b, normal score and two-sided probability. */
export interface MannKendall {
  readonly s: number;
  readonly tau: number;
  readonly z: number;
  readonly p: number;
  readonly exact: boolean;
}

/**
 * Mann–Kendall test for a trend in values that stand in time order (Mann 1945; Kendall 1975): exact for up to ten
 * values without ties, else normal with the corrections for ties and continuity.
 * @returns undefined for fewer than two values; tau is 0 when all are equal
 * @throws RangeError for a value that is not finite
 * @example mannKendall([5, 4, 3, 2, 1])?.p // 2/120
 */
export function mannKendall(values: Numbers): MannKendall | undefined {
  requireFinite(values);
  const n = values.length;
  if (n < 2) return undefined;
  const pairs = (n * (n - 1)) / 2;
  const ties = tieSizes(values);
  const tied = ties.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
  const s = pairs - tied - 2 * countInversions(values);
  const variance = (pairTerm(n) - ties.reduce((sum, size) => sum + pairTerm(size), 0)) / 18;
  const z = variance === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const exact = n <= EXACT_UP_TO && ties.length === 0;
  return {
    s,
    tau: tied === pairs ? 0 : s / Math.sqrt((pairs - tied) * pairs),
    z,
    p: Math.min(1, exact ? 2 * exactTail(n, Math.abs(s)) : 2 * normalCdf(-Math.abs(z))),
    exact,
  };
}

function pairTerm(size: number): number {
  return size * (size - 1) * (2 * size + 5);
}

/** Share of all orders of n values whose S is `s` or more, by the recursion for the number of inversions. */
function exactTail(n: number, s: number): number {
  let counts = [1];
  for (let size = 2; size <= n; size++) {
    const next = new Array<number>(counts.length + size - 1).fill(0);
    counts.forEach((count, inversions) => {
      for (let more = 0; more < size; more++)
        next[inversions + more] = (next[inversions + more] ?? 0) + count;
    });
    counts = next;
  }
  const most = ((n * (n - 1)) / 2 - s) / 2;
  const total = counts.reduce((sum, count) => sum + count, 0);
  return counts.slice(0, most + 1).reduce((sum, count) => sum + count, 0) / total;
}
