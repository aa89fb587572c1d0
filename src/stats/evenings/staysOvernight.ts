import { type Figure, known, leastForSpread, unknown } from "#domain";
import { CONFIDENCE, median } from "#numbers";
import { signedRankTest } from "../rigTests/signedRankTest.ts";

const LEAST_PAIRS = 6;

/** How the first laps of an evening differ from the last ones of the evening before, ms; above 0 slower. */
export interface Overnight {
  readonly estimate: number;
  readonly low: number;
  readonly high: number;
  /** Pairs of evenings behind it. */
  readonly pairs: number;
}

/**
 * What stays overnight: the median of an evening's first five pace laps less that of the last five of the evening before, over
 * all pairs of evenings in a row, with Wilcoxon's interval. Performance while practising is no reliable sign of what was
 * learnt (Soderstrom & Bjork 2015, "Learning versus performance: an integrative review"). Our methods, §5.
 * @param pairs pace laps in ms of an evening and of the next one, as driven; evenings with fewer than five are left out
 * @returns a reason with fewer than six pairs, or where none differ
 * @throws RangeError for a time that is not finite
 */
export function staysOvernight(
  pairs: readonly (readonly [before: readonly number[], after: readonly number[]])[],
): Figure<Overnight> {
  const whole = pairs.filter((pair) => pair.every((laps) => laps.length >= leastForSpread));
  if (whole.length < LEAST_PAIRS)
    return unknown({
      needs: LEAST_PAIRS,
      of: "pair of evenings in a row",
      each: { needs: leastForSpread, of: "pace lap" },
      has: whole.length,
    });
  const differences = whole.map(
    ([before, after]) =>
      (median(after.slice(0, leastForSpread)) as number) - (median(before.slice(-leastForSpread)) as number),
  );
  const test = signedRankTest(differences, CONFIDENCE);
  if (test === undefined) return unknown({ because: "sessions that do not differ" });
  return known({ estimate: test.estimate, low: test.low, high: test.high, pairs: whole.length });
}
