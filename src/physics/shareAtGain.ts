import { normalCdf, normalQuantile } from "#numbers";
import { mustBeAboveZero } from "./finite.ts";

/** A range of shares, as fractions. */
export interface ShareRange {
  readonly low: number;
  readonly high: number;
}

/**
 * Share of time at the limit that is typical at another gain: the way back of `gainForShare`, with the same two tails. One
 * end assumes that strong forces thin out exponentially, c^(gain/next), the other that they do so like a half-normal
 * distribution, 2·Φ(z(c/2)·gain/next). It is no bound. Our methods, §8.
 * @param wheel gain in percent now; share of time at the limit at it, as a fraction between 0 and 1; the other gain, in
 * percent
 * @throws RangeError for anything that is not a finite number above zero, and for a share of 1 and more
 * @example shareAtGain({ gain: 100, share: 0.1, next: 50 }) // 0.001 to 0.01
 */
export function shareAtGain(wheel: {
  readonly gain: number;
  readonly share: number;
  readonly next: number;
}): ShareRange {
  const { gain, share, next } = wheel;
  mustBeAboveZero({ gain, share, next });
  const exponential = share ** (gain / next);
  const halfNormal = 2 * normalCdf((normalQuantile(share / 2) * gain) / next);
  return { low: Math.min(exponential, halfNormal), high: Math.max(exponential, halfNormal) };
}
