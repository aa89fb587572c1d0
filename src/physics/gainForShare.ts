import { type Figure, known, type Unknown, unknown } from "#domain";
import { normalQuantile } from "#numbers";
import { mustBeFinite, notAboveZero } from "./finite.ts";

/** A range of gains in percent. */
export interface GainRange {
  readonly low: number;
  readonly high: number;
}

/** Share of time at the limit from which on nothing is known of the forces above it. */
export const mostShare = 0.3;

/**
 * Typical range of gains that brings the share of time at the limit down (or up) to a wanted one. One end assumes
 * that strong forces thin out exponentially, gain·ln(c)/ln(c′), the other that they do so like a half-normal
 * distribution, gain·z(1 − c/2)/z(1 − c′/2). It is no bound (a log-normal tail lies outside): approach it in
 * steps. Our methods, §8.
 * @param wheel gain in percent now; share of time at the limit, as a fraction; wanted share (0.01 unless said)
 * @returns the range, as `value` and beside it; a reason where a share is 0 or less, or 0.3 or more
 * @throws RangeError for a NaN or an infinite value
 * @example gainForShare({ gain: 100, share: 0.1 }) // 50 to 63.9
 */
export function gainForShare(wheel: {
  readonly gain: number;
  readonly share: number;
  readonly wanted?: number;
}): Unknown | (Figure<GainRange> & { known: true } & GainRange) {
  const { gain, share, wanted = 0.01 } = wheel;
  mustBeFinite({ share, wanted });
  const wrong = notAboveZero({ gain });
  if (wrong !== undefined) return unknown(wrong);
  for (const [measure, value] of [
    ["share", share],
    ["wanted share", wanted],
  ] as const) {
    if (value <= 0 || value >= mostShare)
      return unknown({ because: "out of range", measure, from: 0, to: mostShare, value });
  }
  const exponential = gain * (Math.log(share) / Math.log(wanted));
  const halfNormal = gain * (normalQuantile(share / 2) / normalQuantile(wanted / 2));
  const range = { low: Math.min(exponential, halfNormal), high: Math.max(exponential, halfNormal) };
  return { ...known(range), ...range };
}
