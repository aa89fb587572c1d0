import type { GainRange } from "./gainForShare.ts";

/** Where most sliders of the gain end, in percent. Common practice, no source. */
export const usualSliderEnd = 100;

/**
 * How far a gain is raised at once at most, in percentage points: a twentieth of what the wheel can give. Our own caution, no
 * source.
 */
export const mostPointsUp = 5;

/**
 * The part of a range that a slider reaches: all of it where the gain now shows that it goes past the usual end, else held
 * down to that.
 * @param now gain in percent
 */
export function withinSlider(now: number, { low, high }: GainRange): GainRange {
  if (now > usualSliderEnd) return { low, high };
  return { low: Math.min(low, usualSliderEnd), high: Math.min(high, usualSliderEnd) };
}

/**
 * The gain to begin with on the way to a range: its near end, going down at once, going up in a small step.
 * @param now gain in percent
 * @example firstGain(70, { low: 89, high: 100 }) // 75
 */
export function firstGain(now: number, { low, high }: GainRange): number {
  const near = Math.abs(low - now) < Math.abs(high - now) ? low : high;
  return Math.min(near, now + mostPointsUp);
}
