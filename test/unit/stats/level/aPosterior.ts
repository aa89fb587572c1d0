import { at, STATE } from "../../../../src/stats/level/advance.ts";
import { kinds } from "../../../../src/stats/level/levelCells.ts";
import type { LevelModel } from "../../../../src/stats/level/levelModel.ts";
import type { LevelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import type { LevelSeries } from "../../../../src/stats/level/levelSeries.ts";

/** One cell as it ends, in shares of the lap; what is not said is 0, of σ and the weight 1, and the driver is still. */
export interface ToldCell {
  readonly weight?: number;
  readonly kind?: keyof typeof kinds;
  readonly since?: number;
  readonly sigma?: number;
  readonly noise?: number;
  readonly phi?: number;
  readonly end?: Partial<Record<keyof typeof at, number>>;
  /** Mean, variance and covariance with the last level, session by session. */
  readonly levels?: readonly (readonly [mean: number, variance: number, withLast: number])[];
}

/** Three sessions of 20 laps about 1:30. */
export const threeSessions: LevelSeries = {
  from: 0,
  count: 3,
  usual: 90_000,
  meanLaps: 20,
  y: new Float64Array(3),
  w: Float64Array.of(0.05, 1, 1),
  steps: new Uint8Array(3),
  hasBreaks: false,
  fade: Float64Array.of(1, 0.5, 0.5),
  onset: new Float64Array(3),
  onsetSquares: new Float64Array(3),
  stepsAhead: 0,
  breaksAhead: 0,
  fadeToEnd: 2 ** -0.5,
};

/** What is known of a level, cell by cell as told; each cell has a σ, a noise and a φ of its own in the grid. */
export function aPosterior(
  told: readonly ToldCell[],
  series: Partial<LevelSeries> = {},
  stopping = 1e-9,
): LevelPosterior {
  const numbers = Uint8Array.from(told.keys());
  const ends = new Float64Array(STATE * told.length);
  told.forEach(({ end = {} }, cell) => {
    for (const [part, value] of Object.entries(end)) ends[STATE * cell + at[part as keyof typeof at]] = value;
  });
  const all = { ...threeSessions, ...series };
  return {
    series: all,
    grid: {
      spreads: told.map(({ sigma = 0 }) => ({ sigma, variance: sigma ** 2, log: 0 })),
      noises: told.map(({ noise = 0 }) => ({ squared: noise, log: 0 })),
      motions: told.map(({ phi = 1 }) => ({
        phi,
        reach: new Float64Array(all.count),
        decay: new Float64Array(all.count),
        log: 0,
      })),
      trends: [],
      places: [],
      stillLog: 0,
      movingLog: 0,
      stoppedLogs: [],
      startedLogs: [],
      stopping,
    },
    weights: Float64Array.from(told, ({ weight = 1 }) => weight),
    spreads: numbers,
    noises: numbers,
    motions: numbers,
    trends: numbers,
    kinds: Uint8Array.from(told, ({ kind = "still" }) => kinds[kind]),
    since: Uint8Array.from(told, ({ since = 0 }) => since),
    ends,
  };
}

/** The same with the levels of all sessions. */
export function aModel(told: readonly ToldCell[], series: Partial<LevelSeries> = {}): LevelModel {
  const posterior = aPosterior(told, series);
  const of = (part: number) =>
    Float64Array.from({ length: posterior.series.count * told.length }, (_, place) => {
      const [session, cell] = [Math.floor(place / told.length), place % told.length];
      return told[cell]?.levels?.[session]?.[part] ?? 0;
    });
  const none = new Float64Array(0);
  return {
    posterior,
    levels: { means: of(0), variances: of(1), withLast: of(2), stepMeans: none, stepVariances: none },
    isMostlyAssumption: false,
  };
}
