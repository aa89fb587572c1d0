import { requireNumber } from "#numbers";

/** The best laps that follow each other, and where they stand. */
export interface BestInARow {
  readonly meanMs: number;
  /** Index of the run. */
  readonly run: number;
  /** Index of the first of them within its run. */
  readonly lap: number;
}

/**
 * Best mean of a number of consecutive clean laps of one run.
 * @param runs for each run its laps in order: the time in ms, undefined for a lap that is not clean
 * @param count laps in a row, whole, from 1
 * @returns undefined where no run has as many clean laps in a row
 * @throws RangeError for a time that is not finite or a count that is not a whole number from 1
 * @example bestInARow([[84000, 84300, 84600, undefined]], 3)?.meanMs // 84300
 */
export function bestInARow(
  runs: readonly (readonly (number | undefined)[])[],
  count: number,
): BestInARow | undefined {
  if (!Number.isInteger(count) || count < 1) {
    throw new RangeError(`count is ${count}: a whole number from 1 is needed`);
  }
  let best: BestInARow | undefined;
  runs.forEach((laps, run) => {
    let sum = 0;
    let row = 0;
    laps.forEach((ms, lap) => {
      if (ms === undefined) {
        sum = 0;
        row = 0;
        return;
      }
      if (!Number.isFinite(ms)) requireNumber(ms, `runs[${run}][${lap}]`);
      sum += ms - (row >= count ? (laps[lap - count] as number) : 0);
      row++;
      if (row >= count && (best === undefined || sum / count < best.meanMs)) {
        best = { meanMs: sum / count, run, lap: lap - count + 1 };
      }
    });
  });
  return best;
}

/**
 * Three in a row: the best mean of three consecutive clean laps of one run.
 * @param runs as for `bestInARow`
 */
export function threeInARow(runs: readonly (readonly (number | undefined)[])[]): BestInARow | undefined {
  return bestInARow(runs, 3);
}
