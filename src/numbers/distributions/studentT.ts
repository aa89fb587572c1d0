import { requireFraction } from "../numbers.ts";
import { incompleteBeta } from "./incompleteBeta.ts";
import { invertTail } from "./invert.ts";
import { logGamma } from "./logGamma.ts";
import { normalQuantile } from "./normalQuantile.ts";

/**
 * Share of Student's t distribution below t, to 1e-13; small tails keep their digits
 * (Abramowitz & Stegun 26.7.1).
 * @param degreesOfFreedom above 0, need not be whole
 * @throws RangeError for degrees of freedom that are not above 0
 * @example studentTCdf(0, 5) // 0.5
 */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  requireDegrees(degreesOfFreedom);
  const tail = upperTail(Math.abs(t), degreesOfFreedom);
  return t <= 0 ? tail : 1 - tail;
}

/**
 * Quantile of Student's t distribution, to 1e-12.
 * @param p share below, above 0 and below 1
 * @param degreesOfFreedom above 0, need not be whole
 * @throws RangeError for a share or degrees of freedom out of range
 * @example studentTQuantile(0.975, 9) // 2.262157…
 */
export function studentTQuantile(p: number, degreesOfFreedom: number): number {
  requireFraction(p, "p");
  requireDegrees(degreesOfFreedom);
  if (p === 0.5) return 0;
  const tail = Math.min(p, 1 - p);
  const t = invertTail(
    (x) => upperTail(x, degreesOfFreedom),
    (x) => density(x, degreesOfFreedom),
    tail,
    Math.max(1e-8, -normalQuantile(tail)),
  );
  return p < 0.5 ? -t : t;
}

function upperTail(t: number, degrees: number): number {
  const square = t * t;
  return incompleteBeta(degrees / 2, 0.5, degrees / (degrees + square), square / (degrees + square)) / 2;
}

function density(t: number, degrees: number): number {
  const front = logGamma((degrees + 1) / 2) - logGamma(degrees / 2) - 0.5 * Math.log(degrees * Math.PI);
  return Math.exp(front - ((degrees + 1) / 2) * Math.log1p((t * t) / degrees));
}

function requireDegrees(degrees: number): void {
  if (!(degrees > 0 && degrees < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`degreesOfFreedom is ${degrees}: a number above 0 is needed`);
  }
}
