import { requireFraction } from "../numbers.ts";
import { incompleteGamma } from "./incompleteGamma.ts";
import { invertTail } from "./invert.ts";
import { logGamma } from "./logGamma.ts";
import { normalQuantile } from "./normalQuantile.ts";

/**
 * Share of the chi-squared distribution below x, to 1e-13 (Abramowitz & Stegun 26.4.19).
 * @param degreesOfFreedom above 0, need not be whole
 * @throws RangeError for degrees of freedom that are not above 0
 * @example chiSquaredCdf(2 * Math.LN2, 2) // 0.5
 */
export function chiSquaredCdf(x: number, degreesOfFreedom: number): number {
  requireDegrees(degreesOfFreedom);
  return incompleteGamma(degreesOfFreedom / 2, x / 2).lower;
}

/**
 * Quantile of the chi-squared distribution, to 1e-12.
 * @param p share below, above 0 and below 1
 * @param degreesOfFreedom above 0, need not be whole
 * @throws RangeError for a share or degrees of freedom out of range
 * @example chiSquaredQuantile(0.95, 3) // 7.814727…
 */
export function chiSquaredQuantile(p: number, degreesOfFreedom: number): number {
  requireFraction(p, "p");
  requireDegrees(degreesOfFreedom);
  const a = degreesOfFreedom / 2;
  const density = (x: number) => Math.exp((a - 1) * Math.log(x / 2) - x / 2 - logGamma(a)) / 2;
  const start = guess(p, degreesOfFreedom);
  if (p > 0.5) return invertTail((x) => incompleteGamma(a, x / 2).upper, density, 1 - p, start);
  // The lower tail falls in 1/x, so that a share next to 0 keeps its digits.
  const turned = invertTail(
    (y) => incompleteGamma(a, 1 / (2 * y)).lower,
    (y) => density(1 / y) / (y * y),
    p,
    1 / start,
  );
  return 1 / turned;
}

/** Wilson & Hilferty 1931, and the first term of the series where that falls to nothing. */
function guess(p: number, degrees: number): number {
  const ninth = 2 / (9 * degrees);
  const cubed = degrees * (1 - ninth + normalQuantile(p) * Math.sqrt(ninth)) ** 3;
  if (cubed > 0.01 * degrees) return cubed;
  const a = degrees / 2;
  return 2 * Math.exp((Math.log(p) + Math.log(a) + logGamma(a)) / a);
}

function requireDegrees(degrees: number): void {
  if (!(degrees > 0 && degrees < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`degreesOfFreedom is ${degrees}: a number above 0 is needed`);
  }
}
