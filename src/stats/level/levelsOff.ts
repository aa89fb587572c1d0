import { stream } from "../random/stream.ts";
import { type Range, rangeOf } from "../weeks/bands.ts";
import { changeOfLevel } from "./changeOfLevel.ts";
import { cellsByShare, drawEnd, isMoving, sessionsUntilStop } from "./futureLevels.ts";
import type { LevelModel } from "./levelModel.ts";
import { levelNow } from "./levelNow.ts";
import { reachOf } from "./motion.ts";

/** Where a level ends up with endless practice, as far as that can be told. */
export type LevelsOff =
  /** It is where it stays: it no longer moves. */
  | { readonly kind: "already" }
  /** Whole tenths of a second in ms, with the 90 % interval. */
  | { readonly kind: "at"; readonly ms: Range }
  /** Times rise, and no end of that is in sight. */
  | { readonly kind: "rising" }
  | { readonly kind: "untold" };

const DRAWS = 1000;
/** Keeps these random numbers apart from those of the sessions to come. */
const KEY = -2;
const TENTH = 100;
/** The interval of the end level is narrower than this part of the gain so far, or nothing is said. */
const OF_GAIN = 0.5;

/**
 * Where the level will end: the end level of futures that still move, where their 90 % interval is narrower than half of
 * the gain so far, to tenths. Our methods, §5.
 * @param seed whole number
 */
export function levelsOff(model: LevelModel, seed: number): LevelsOff {
  const { posterior } = model;
  if (levelNow(posterior).isLevel) return { kind: "already" };
  const moving = posterior.weights.map((weight, cell) => (isMoving(posterior, cell) ? weight : 0));
  const total = moving.reduce((sum, weight) => sum + weight, 0);
  const cellAt = cellsByShare(moving.map((weight) => weight / total));
  let faster = 0;
  const ends = Float64Array.from({ length: DRAWS }, (_, draw) => {
    const source = stream(seed, KEY, draw);
    const cell = cellAt((draw + 0.5) / DRAWS);
    const [l, b] = drawEnd(posterior, cell, source);
    if (b < 0) faster++;
    const phi = posterior.grid.motions[posterior.motions[cell] as number]?.phi ?? 1;
    return l + b * reachOf(phi, sessionsUntilStop(source, posterior.grid.stopping));
  });
  if (faster < DRAWS / 2) return { kind: "rising" };
  const { low, mid, high } = rangeOf(ends);
  const { usual } = posterior.series;
  const gain = -changeOfLevel(model, 0).change;
  if (usual * (high - low) >= OF_GAIN * gain) return { kind: "untold" };
  const tenths = (share: number) => TENTH * Math.round((usual * (1 + share)) / TENTH);
  return { kind: "at", ms: { low: tenths(low), mid: tenths(mid), high: tenths(high) } };
}
