import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import type { Range } from "../weeks/bands.ts";

/** What milestones are worked out from; times in ms. */
export interface MilestoneQuestion {
  /** The figure now: the personal best for a best-lap target, the usual lap for a median target. */
  readonly nowMs: number;
  readonly targetMs: number;
  /** The floor of the session median with its 90 % interval, where a practice curve is known. */
  readonly floor?: Range;
  /** Mean of (best less median), which moves the floor for a best-lap target; 0 for a median target. */
  readonly meanGapMs?: number;
  /** How many steps, the target being the last; 4 unless said. */
  readonly steps?: number;
}

/**
 * Milestones from now to a target, each faster than the one before, the target last, in whole ms. Steps are equal in
 * the logarithm of the gap to the floor, since each gain is harder than the one before; equal in time where no floor
 * is known, where it lies at or above the target, or where its 90 % interval is wider than the way to go. Our
 * methods, §6. Steps that would round to the same millisecond are one.
 * @returns a reason where the target is reached already
 * @throws RangeError for a value that is not finite, naming it
 */
export function milestones(question: MilestoneQuestion): Figure<number[]> {
  const { nowMs, targetMs, floor, meanGapMs = 0, steps = 4 } = question;
  for (const [name, value] of Object.entries({ nowMs, targetMs, meanGapMs, steps, ...floor })) {
    requireNumber(value, name);
  }
  if (!Number.isInteger(steps) || steps < 1)
    throw new RangeError(`steps is ${steps}: a whole number from 1 is needed`);
  if (nowMs <= targetMs) return unknown("already reached");
  const bottom = (floor?.mid ?? targetMs) + meanGapMs;
  const isFloorOfUse = floor !== undefined && bottom < targetMs && floor.high - floor.low <= nowMs - targetMs;
  const at = (share: number) =>
    isFloorOfUse
      ? bottom + (nowMs - bottom) * ((targetMs - bottom) / (nowMs - bottom)) ** share
      : nowMs + (targetMs - nowMs) * share;
  const between = Array.from({ length: steps - 1 }, (_, i) => Math.round(at((i + 1) / steps)));
  const inside = between.filter((ms) => ms < nowMs && ms > targetMs);
  return known([...new Set(inside), targetMs]);
}
