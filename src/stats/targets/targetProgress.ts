import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";

/** How far a target is reached. */
export interface TargetProgress {
  /** (start − now)/(start − target): 0 at the start, 1 at the target; not clamped. */
  readonly progress: number;
  /** Now, rounded as it is shown, less the target, in the target's unit. */
  readonly left: number;
}

/**
 * Progress towards a target from the figure on the day it was set.
 * @param target wanted figure: ms, or thousandths for a share of clean laps
 * @param now the figure now, in the same unit
 * @param start the figure on the day it was set
 * @returns a reason where one of the figures is not known, or the start was the target already
 * @throws RangeError for a figure that is not finite
 * @example targetProgress(84000, 84250, 85000) // progress 0.75, left 250
 */
export function targetProgress(
  target: number,
  now: number | undefined,
  start: number | undefined,
): Figure<TargetProgress> {
  requireNumber(target, "target");
  if (now === undefined) return unknown({ because: "no figure yet" });
  requireNumber(now, "now");
  if (start === undefined) return unknown({ because: "no figure at the setting" });
  requireNumber(start, "start");
  if (start === target) return unknown({ because: "reached at the setting" });
  return known({ progress: (start - now) / (start - target), left: Math.round(now) - target });
}
