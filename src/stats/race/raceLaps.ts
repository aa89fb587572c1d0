import { isMistake, type Remark } from "#domain";
import { requireNumber } from "#numbers";

/** A timed lap of a race run; a plain number is the time of a lap without a remark. */
export type RaceLap =
  | number
  | {
      /** Missing where the lap has no time: a mistake of unknown cost. */
      readonly ms?: number;
      readonly remarks?: readonly Remark[];
      /** What tells the runs apart; laps without it are one run. */
      readonly run?: string | number;
    };

/** Laps sorted for drawing: times centred on the mean of their run, and the runs' means. */
export interface CentredRuns {
  /** Lap times of each run less its mean, in ms. */
  readonly residuals: readonly (readonly number[])[];
  readonly means: readonly number[];
  readonly timed: number;
  /** Laps with an own mistake or without a time, among all. */
  readonly mistakes: number;
  readonly all: number;
}

/**
 * Sorts laps by run and centres each run on its mean.
 * @throws RangeError for a time that is not a finite number above 0, naming it
 */
export function centreRuns(laps: readonly RaceLap[]): CentredRuns {
  const runs = new Map<string | number, number[]>();
  let mistakes = 0;
  laps.forEach((given, i) => {
    const lap = typeof given === "number" ? { ms: given } : given;
    const { ms, remarks = [], run = "" } = lap;
    if (isMistake(ms === undefined ? { remarks } : { ms, remarks })) mistakes++;
    if (ms === undefined) return;
    requireNumber(ms, `laps[${i}].ms`);
    if (ms <= 0) throw new RangeError(`laps[${i}].ms is ${ms}: a lap time is needed`);
    runs.set(run, [...(runs.get(run) ?? []), ms]);
  });
  const times = [...runs.values()];
  const means = times.map((run) => run.reduce((sum, ms) => sum + ms, 0) / run.length);
  return {
    residuals: times.map((run, i) => run.map((ms) => ms - (means[i] ?? 0))),
    means,
    timed: times.reduce((sum, run) => sum + run.length, 0),
    mistakes,
    all: laps.length,
  };
}
