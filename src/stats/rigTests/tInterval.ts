import { studentTCdf, studentTQuantile } from "#numbers";
import type { TTest } from "./findings.ts";

/** The t test and interval of an estimate with a known standard error. */
export function tInterval(
  estimate: number,
  standardError: number,
  degreesOfFreedom: number,
  confidence: number,
): TTest {
  const t = estimate / standardError;
  const reach = standardError * studentTQuantile((1 + confidence) / 2, degreesOfFreedom);
  return {
    estimate,
    low: estimate - reach,
    high: estimate + reach,
    p: Math.min(1, 2 * studentTCdf(-Math.abs(t), degreesOfFreedom)),
    t,
    degreesOfFreedom,
  };
}
