import { type Unknown, unknown } from "#domain";
import { mustBeFinite, notAboveZero } from "./finite.ts";

/**
 * Force-feedback gain that puts the observed peak just under the limit: gain·(1 − reserve)·100/peak.
 * Our methods, §8. Not held down to 100: the slider's end is the reader's business.
 * @param wheel gain in percent now; peak force seen, in percent of the limit; reserve to keep, as a fraction
 * (0.1 = a tenth)
 * @returns the new gain in percent; a reason where the peak is cut off (100 % and more), since the true one is
 * then unknown, or a value is out of range
 * @throws RangeError for a NaN or an infinite value
 * @example gainForPeak({ gain: 60, peak: 90, reserve: 0.1 }) // 60
 */
export function gainForPeak(wheel: {
  readonly gain: number;
  readonly peak: number;
  readonly reserve: number;
}): number | Unknown {
  const { gain, peak, reserve } = wheel;
  mustBeFinite({ reserve });
  const wrong = notAboveZero({ gain, peak });
  if (wrong !== undefined) return unknown(wrong);
  if (reserve < 0 || reserve >= 1)
    return unknown({ because: "out of range", measure: "reserve", from: 0, to: 1, value: reserve });
  if (peak >= 100) {
    return unknown({ because: "peak cut off" });
  }
  return (gain * (1 - reserve) * 100) / peak;
}
