import { incompleteGamma } from "./incompleteGamma.ts";

/**
 * Share of the standard normal distribution below z, to 1e-14; small tails keep their digits.
 *
 * Φ(−z) = Q(½, z²/2)/2 (Abramowitz & Stegun 26.2.30 with 6.5).
 * @example normalCdf(1.959963984540054) // 0.975
 */
export function normalCdf(z: number): number {
  const { lower, upper } = incompleteGamma(0.5, (z * z) / 2);
  return z <= 0 ? upper / 2 : 0.5 + lower / 2;
}
