import { requireNumber } from "../sample/numbers.ts";

/** The best three laps that follow each other, and where they stand. */
export interface ThreeInARow {
  readonly meanMs: number;
  /** Index of the run. */
  readonly run: number;
  /** Index of the first of the three within its run. */
  readonly lap: number;
}

/**
 * Best mean of three consecutive clean laps of one run.
 * @param runs for each run its laps in order: the time in ms, undefined for a lap that is not clean
 * @returns undefined where no run has three clean laps in a row
 * @throws RangeError for a time that is not finite
 * @example threeInARow([[84000, 84300, 84600, undefined]])?.meanMs // 84300
 */
export function threeInARow(runs: readonly (readonly (number | undefined)[])[]): ThreeInARow | undefined {
  let best: ThreeInARow | undefined;
  runs.forEach((laps, run) => {
    let sum = 0;
    let row = 0;
    laps.forEach((ms, lap) => {
      if (ms === undefined) {
        sum = 0;
        row = 0;
        return;
      }
      requireNumber(ms, `runs[${run}][${lap}]`);
      sum += ms - (row >= 3 ? (laps[lap - 3] as number) : 0);
      row++;
      if (row >= 3 && (best === undefined || sum / 3 < best.meanMs)) {
        best = { meanMs: sum / 3, run, lap: lap - 2 };
      }
    });
  });
  return best;
}
