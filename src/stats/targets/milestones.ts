import { type Figure, known, unknown } from "#domain";
import { requireNumber } from "#numbers";
import { firstReached } from "./firstReached.ts";
import { chanceOf } from "./forecastTarget.ts";
import { reachedBy } from "./reachedBy.ts";

/** What milestones are worked out from; times in ms. */
export interface MilestoneQuestion {
  /** The figure now: the personal best for a best-lap target, the level for a median target. */
  readonly nowMs: number;
  readonly targetMs: number;
  /** Draws of the target's figure, one array for each session to come; none where nothing can be forecast. */
  readonly figures: readonly Float64Array[];
  /** How many steps, the target being the last; 4 unless said. */
  readonly steps?: number;
}

const LEAST_CHANCE = 0.25;
const MIDDLE = 0.5;

/**
 * Milestones from now to a target, each faster than the one before, the target last, in whole ms: what the middle of the
 * futures has reached after a quarter, a half and three quarters of the sessions it takes to the target, so that early
 * steps are longer where gains shrink. Equal steps in seconds where fewer than one future in four gets there. Our
 * methods, §6. Where fewer than half do, the middle is the futures as good as the slowest of those. Steps that would
 * round to the same millisecond are one, and what is no step forward is none.
 * @returns a reason where the target is reached already
 * @throws RangeError for a value that is not finite, naming it
 */
export function milestones({ nowMs, targetMs, figures, steps = 4 }: MilestoneQuestion): Figure<number[]> {
  for (const [name, value] of Object.entries({ nowMs, targetMs, steps })) requireNumber(value, name);
  if (!Number.isInteger(steps) || steps < 1)
    throw new RangeError(`steps is ${steps}: a whole number from 1 is needed`);
  if (nowMs <= targetMs) return unknown({ because: "already reached" });
  const { chance } = chanceOf(figures, targetMs);
  const at =
    chance < LEAST_CHANCE
      ? equalSteps(nowMs, targetMs)
      : alongTheWay(figures, targetMs, Math.min(MIDDLE, chance));
  const between = Array.from({ length: steps - 1 }, (_, i) => Math.round(at((i + 1) / steps)));
  const inside = between.filter((ms) => ms < nowMs && ms > targetMs);
  return known([...new Set(inside), targetMs]);
}

function equalSteps(nowMs: number, targetMs: number): (share: number) => number {
  return (share) => nowMs + (targetMs - nowMs) * share;
}

/** What so many of the futures have reached after a share of the sessions in which they reach the target. */
function alongTheWay(
  figures: readonly Float64Array[],
  targetMs: number,
  middle: number,
): (share: number) => number {
  const first = firstReached(figures, targetMs).toSorted();
  const sessions = first[Math.ceil(middle * first.length) - 1] ?? 0;
  return (share) => {
    const count = Math.floor(share * sessions);
    return count === 0 ? Infinity : reachedBy(figures.slice(0, count), middle);
  };
}
