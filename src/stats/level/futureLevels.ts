import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { nextNormal, nextUniform } from "../random/draws.ts";
import { stream } from "../random/stream.ts";
import type { FutureSession } from "../weeks/history.ts";
import { BREAK_MEAN, breakVariance, stepVariance } from "./advance.ts";
import { kinds } from "./levelCells.ts";
import { endOf, type LevelPosterior } from "./levelPosterior.ts";
import { breakLeft, practiceOf } from "./levelSeries.ts";
import { decayOf, reachOf } from "./motion.ts";

/** Draws of what is to come, one array a session, one number a draw, in ms. */
export interface FutureLevels {
  readonly levels: readonly Float64Array[];
  /** Medians of the sessions: the level, what a break still costs, and how one session differs from the next. */
  readonly medians: readonly Float64Array[];
}

/** Draws used wherever nothing else is said. */
export const usualDraws = 2000;

/**
 * Draws the sessions to come: a cell by its weight, its state after the last session, carried on by the planned practice;
 * a driver who moves stops with the chance of the settings a session. Our methods, §5.
 *
 * Each draw has its own stream of random numbers, used in the order of the sessions, so a session added at the end changes
 * nothing before it. The cells are drawn in strata, one a draw, so that few draws do them justice.
 * @param seed whole number
 */
export function futureLevels(
  posterior: LevelPosterior,
  future: readonly FutureSession[],
  seed: number,
  draws = usualDraws,
): FutureLevels {
  const { series, grid } = posterior;
  const { usual } = series;
  const practice = future.map(({ laps }) => practiceOf(laps, series.meanLaps));
  const fades = future.map(({ laps }, k) => {
    const before = future[k - 1];
    return breakLeft(laps / 2) * (before === undefined ? series.fadeToEnd : breakLeft(before.laps / 2));
  });
  const motions = grid.motions.map(({ phi }) => ({
    reach: practice.map((w) => reachOf(phi, w)),
    decay: practice.map((w) => decayOf(phi, w)),
  }));
  const levels = future.map(() => new Float64Array(draws));
  const medians = future.map(() => new Float64Array(draws));
  const cellAt = cellsByShare(posterior.weights);
  for (let draw = 0; draw < draws; draw++) {
    const source = stream(seed, draw);
    const cell = cellAt((draw + nextUniform(source)) / draws);
    const sigma = grid.spreads[posterior.spreads[cell] as number]?.sigma ?? 0;
    const noise = grid.noises[posterior.noises[cell] as number]?.squared ?? 0;
    let [l, b, o] = drawEnd(posterior, cell, source);
    const motion = isMoving(posterior, cell) ? motions[posterior.motions[cell] as number] : undefined;
    const stops = sessionsUntilStop(source, grid.stopping);
    for (let k = 0; k < future.length; k++) {
      if (motion !== undefined && k < stops) {
        l += (motion.reach[k] as number) * b;
        b *= motion.decay[k] as number;
      }
      if (noise > 0) l += sigma * Math.sqrt(noise * (practice[k] as number)) * nextNormal(source);
      o *= fades[k] as number;
      if (k === 0) {
        const left = breakLeft((future[0]?.laps ?? 0) / 2);
        l += drawn(source, sigma, stepVariance(series.stepsAhead));
        o += drawn(source, sigma, breakVariance(left ** 2 * series.breaksAhead));
        o += BREAK_MEAN * left * series.breaksAhead;
      }
      (levels[k] as Float64Array)[draw] = usual * (1 + l);
      (medians[k] as Float64Array)[draw] = usual * (1 + l + o + sigma * nextNormal(source));
    }
  }
  return { levels, medians };
}

/** Whether a driver of this cell moves after the last session. */
export function isMoving({ kinds: of }: LevelPosterior, cell: number): boolean {
  return of[cell] === kinds.moving || of[cell] === kinds.started;
}

/** How many sessions a moving driver goes on moving. */
export function sessionsUntilStop(source: RandomGenerator, stopping: number): number {
  return Math.floor(Math.log(nextUniform(source)) / Math.log(1 - stopping));
}

/** Level, trend and cost of a break after the last session, drawn from the cell's normal distribution. */
export function drawEnd(
  posterior: LevelPosterior,
  cell: number,
  source: RandomGenerator,
): [l: number, b: number, o: number] {
  const end = (part: Parameters<typeof endOf>[2]) => endOf(posterior, cell, part);
  const toL = Math.sqrt(end("ll"));
  const z = nextNormal(source);
  const l = end("l") + toL * z;
  const lToB = toL > 0 ? end("lb") / toL : 0;
  const ownB = Math.sqrt(Math.max(0, end("bb") - lToB ** 2));
  const zb = nextNormal(source);
  const b = end("b") + lToB * z + ownB * zb;
  if (!posterior.series.hasBreaks) return [l, b, 0];
  const lToO = toL > 0 ? end("lo") / toL : 0;
  const bToO = ownB > 0 ? (end("bo") - lToB * lToO) / ownB : 0;
  const ownO = Math.sqrt(Math.max(0, end("oo") - lToO ** 2 - bToO ** 2));
  return [l, b, end("o") + lToO * z + bToO * zb + ownO * nextNormal(source)];
}

function drawn(source: RandomGenerator, sigma: number, variance: number): number {
  return variance > 0 ? sigma * Math.sqrt(variance) * nextNormal(source) : 0;
}

/** Finds the cell at which the weights up to it reach a share. */
export function cellsByShare(weights: Float64Array): (share: number) => number {
  let sum = 0;
  const upTo = weights.map((weight) => {
    sum += weight;
    return sum;
  });
  return (share) => {
    let low = 0;
    let high = upTo.length - 1;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((upTo[middle] as number) < share) low = middle + 1;
      else high = middle;
    }
    return low;
  };
}
