import { quickNormalCdf, VERY_LIKELY } from "#numbers";
import { kinds } from "./levelCells.ts";
import { endOf, type LevelPosterior } from "./levelPosterior.ts";
import { reachOf } from "./motion.ts";

/** Whether a level still moves. */
export interface LevelNow {
  /** Probability that the next four sessions move it by less than 0.1 % of the lap in the mean. */
  readonly chanceLevel: number;
  /** Whether that may be said: the chance is over 0.8, and times do not very likely rise. */
  readonly isLevel: boolean;
  /** Number of the first session since when it no longer moves, where that may be said; undefined for one that never moved. */
  readonly levelSince: number | undefined;
  /** Number of the first session since when it moves again, where that is as likely; else undefined. */
  readonly movingSince: number | undefined;
}

const SESSIONS_AHEAD = 4;
const SMALL_CHANGE = 0.001;
const SAID_FROM = 0.8;
/** Who moved in the first two sessions only cannot be told from one who never did. */
const NO_PHASE = 2;
/** A trend that has died out still has a spread to divide by. */
const NO_DEVIATION = 1e-12;

/** Whether the level still moves, and since when it does not or does again. Our methods, §5. */
export function levelNow(posterior: LevelPosterior): LevelNow {
  const { weights, series, grid } = posterior;
  let chanceLevel = 0;
  let moving = 0;
  let rising = 0;
  let chanceAgain = 0;
  const quietSince = new Float64Array(series.count);
  const againSince = new Float64Array(series.count);
  weights.forEach((weight, cell) => {
    const kind = posterior.kinds[cell] as number;
    const since = posterior.since[cell] as number;
    if (kind === kinds.still || kind === kinds.stopped) {
      chanceLevel += weight;
      quietSince[since] = (quietSince[since] as number) + weight;
      return;
    }
    const reach = reachOf(grid.motions[posterior.motions[cell] as number]?.phi ?? 1, SESSIONS_AHEAD);
    const mean = reach * endOf(posterior, cell, "b");
    const deviation = Math.max(NO_DEVIATION, reach * Math.sqrt(endOf(posterior, cell, "bb")));
    const below = (change: number) => quickNormalCdf((change - mean) / deviation);
    const small = below(SMALL_CHANGE) - below(-SMALL_CHANGE);
    chanceLevel += weight * small;
    moving += weight;
    rising += weight * (1 - below(0));
    if (kind !== kinds.started) return;
    chanceAgain += weight * (1 - small);
    againSince[since] = (againSince[since] as number) + weight * (1 - small);
  });
  // That a driver stopped a moment ago can never be ruled out: what counts is where one goes who has not.
  const isRising = moving > 0.5 && rising > VERY_LIKELY * moving;
  const isLevel = chanceLevel > SAID_FROM && !isRising;
  const since = (of: Float64Array) => series.from + firstPastHalf(of);
  const quiet = since(quietSince);
  return {
    chanceLevel: Math.min(1, chanceLevel),
    isLevel,
    levelSince: isLevel && quiet > series.from + NO_PHASE ? quiet : undefined,
    movingSince: chanceAgain > SAID_FROM ? since(againSince) : undefined,
  };
}

/** The first place at which the weights up to it pass half of all. */
function firstPastHalf(weights: Float64Array): number {
  const half = weights.reduce((sum, weight) => sum + weight, 0) / 2;
  let sum = 0;
  return Math.max(
    0,
    weights.findIndex((weight) => {
      sum += weight;
      return sum > half;
    }),
  );
}
