import { mean, type Numbers, requireFinite, requireFraction, standardDeviation } from "#numbers";
import type { TTest } from "./findings.ts";
import { tInterval } from "./tInterval.ts";

/**
 * Student's paired t test: the mean difference with its interval (Student 1908, "The probable error of a mean").
 * @param differences of each pair, ms
 * @param confidence fraction, as 0.9
 * @returns undefined for fewer than two differences or when all are equal
 * @throws RangeError for a value that is not finite or a confidence outside 0 to 1
 * @example pairedTTest([1, 2, 3], 0.9)?.t // 2·√3
 */
export function pairedTTest(differences: Numbers, confidence: number): TTest | undefined {
  requireFinite(differences, "differences");
  requireFraction(confidence, "confidence");
  const estimate = mean(differences);
  const spread = standardDeviation(differences);
  if (estimate === undefined || spread === undefined || spread === 0) return undefined;
  return tInterval(estimate, spread / Math.sqrt(differences.length), differences.length - 1, confidence);
}
