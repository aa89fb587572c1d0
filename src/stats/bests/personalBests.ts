import { latestMs, mayBeBest, type Remark } from "#domain";
import { requireNumber } from "#numbers";

/** A lap as the personal-best line needs it. */
export interface LapForBest {
  readonly id: string;
  /** When it was driven, epoch ms; only the order matters. */
  readonly at: number;
  /** Absent for a lap without a time. */
  readonly ms?: number;
  readonly remarks: readonly Remark[];
  /** Known decimals of a second, 0 to 3; absent means all three. */
  readonly decimals?: number;
  /** The driver said: not my PB. */
  readonly isNotBest?: boolean;
}

/** One step of the personal-best line. */
export interface BestStep {
  readonly lapId: string;
  readonly at: number;
  readonly ms: number;
  /** Known decimals of a second, 0 to 3. */
  readonly decimals: number;
}

/**
 * The personal-best line: the running best of clean laps in time order. A time known to fewer decimals takes the line
 * only if its latest possible value is faster ("1:23.4" may have been 1:23.499); a lap level with the best does not.
 * @param laps in any order; laps at the same instant keep theirs
 * @returns the steps in time order
 * @throws RangeError for a time or an instant that is not finite
 * @example laps of 84.2, 84.5 and 83.9 s give two steps, 84.2 and 83.9
 */
export function personalBests(laps: readonly LapForBest[]): BestStep[] {
  for (const lap of laps) {
    if (!Number.isFinite(lap.at)) requireNumber(lap.at, `at of lap ${lap.id}`);
    if (lap.ms !== undefined && !Number.isFinite(lap.ms)) requireNumber(lap.ms, `ms of lap ${lap.id}`);
  }
  const steps: BestStep[] = [];
  for (const lap of laps.toSorted((a, b) => a.at - b.at)) {
    if (!mayBeBest(lap)) continue;
    const best = steps.at(-1);
    if (best !== undefined && latestMs(lap) >= best.ms) continue;
    steps.push({ lapId: lap.id, at: lap.at, ms: lap.ms, decimals: lap.decimals ?? 3 });
  }
  return steps;
}
