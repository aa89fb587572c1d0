import type { SessionEvent } from "../weeks/sessionEvents.ts";
import { advance, at, begin, logEvidence, noTrend, STATE, setTrend } from "./advance.ts";
import { kinds, type LevelGrid, levelGrid } from "./levelCells.ts";
import { type LevelSeries, type LevelSession, levelSeries } from "./levelSeries.ts";
import { type LevelSettings, levelSettings } from "./levelSettings.ts";

/**
 * What the level may be after the last session: cells of the grid that are worth keeping, one entry of each list a cell.
 * Read it by the functions beside this one.
 */
export interface LevelPosterior {
  readonly series: LevelSeries;
  readonly grid: LevelGrid;
  /** Add up to 1. */
  readonly weights: Float64Array;
  /** Number of σ, of the noise, of φ and of the trend in the grid; the last two mean nothing for a still driver. */
  readonly spreads: Uint8Array;
  readonly noises: Uint8Array;
  readonly motions: Uint8Array;
  readonly trends: Uint8Array;
  readonly kinds: Uint8Array;
  /** First session of the second phase, for the kinds that have one; else 0. */
  readonly since: Uint8Array;
  /** Filter states after the last session, `STATE` numbers each. */
  readonly ends: Float64Array;
}

/** What a level is worked out from. */
export interface LevelQuestion {
  /** Sessions of one page with a median, oldest first; at least one. */
  readonly sessions: readonly LevelSession[];
  readonly events?: readonly SessionEvent[] | undefined;
  readonly settings?: LevelSettings | undefined;
}

/** Cells of less weight are left out. */
const LEAST_WEIGHT = 1e-6;
/** Numbers that say which cell of the grid it is. */
const CODES = 6;

/**
 * The level model: a level that is still, moves with a trend that shrinks, stops or starts moving, seen through medians
 * that scatter about it. An exact Kalman filter a cell (Kalman 1960; Harvey, Forecasting, Structural Time Series Models
 * and the Kalman Filter, 1989, from memory); cells weighed by prior and evidence. Our methods, §5.
 *
 * Cells share their first phase: a stopped driver was a moving one before, so each is filtered once.
 * @throws RangeError for a value that is not finite or out of its range, naming it
 */
export function levelPosterior({
  sessions,
  events = [],
  settings = levelSettings,
}: LevelQuestion): LevelPosterior {
  const series = levelSeries(sessions, events);
  const grid = levelGrid(series, settings);
  const { count } = series;
  const { spreads, noises, motions, trends, places, stillLog, movingLog, stoppedLogs, startedLogs } = grid;
  const cells = new CellList(
    spreads.length * noises.length * (1 + motions.length * trends.length * (1 + 2 * places.length)),
  );
  const still = new Float64Array(STATE);
  const stills = new Float64Array(STATE * places.length);
  const moving = new Float64Array(STATE);
  const second = new Float64Array(STATE);
  spreads.forEach(({ variance, log: spreadLog }, spread) => {
    noises.forEach(({ squared, log: noiseLog }, noiseAt) => {
      const noise = squared * variance;
      const shared = spreadLog + noiseLog;
      const add = (
        state: Float64Array,
        log: number,
        motion: number,
        trend: number,
        kind: number,
        since: number,
      ) =>
        cells.add(
          state,
          log + logEvidence(state, count, variance),
          spread,
          noiseAt,
          motion,
          trend,
          kind,
          since,
        );

      begin(still, series, variance, noTrend);
      let from = 1;
      places.forEach((place, p) => {
        advance(still, series, from, place, variance, noise, undefined);
        stills.set(still, STATE * p);
        from = place;
      });
      advance(still, series, from, count, variance, noise, undefined);
      add(still, shared + stillLog, 0, 0, kinds.still, 0);

      motions.forEach((motion, m) => {
        trends.forEach((trend, t) => {
          const own = shared + motion.log + trend.log;
          begin(moving, series, variance, trend);
          let from = 1;
          places.forEach((place, p) => {
            advance(moving, series, from, place, variance, noise, motion);
            from = place;
            second.set(moving);
            setTrend(second, noTrend);
            advance(second, series, place, count, variance, noise, undefined);
            add(second, own + (stoppedLogs[p] as number), m, t, kinds.stopped, place);
            for (let i = 0; i < STATE; i++) second[i] = stills[STATE * p + i] as number;
            setTrend(second, trend);
            advance(second, series, place, count, variance, noise, motion);
            add(second, own + (startedLogs[p] as number), m, t, kinds.started, place);
          });
          advance(moving, series, from, count, variance, noise, motion);
          add(moving, own + movingLog, m, t, kinds.moving, 0);
        });
      });
    });
  });
  return { series, grid, ...cells.worthKeeping() };
}

/** The cells as they are worked out, each list filled from its beginning. */
class CellList {
  private size = 0;
  private readonly logs: Float64Array;
  private readonly codes: Uint8Array;
  private readonly ends: Float64Array;

  constructor(most: number) {
    this.logs = new Float64Array(most);
    this.codes = new Uint8Array(CODES * most);
    this.ends = new Float64Array(STATE * most);
  }

  add(
    state: Float64Array,
    log: number,
    spread: number,
    noise: number,
    motion: number,
    trend: number,
    kind: number,
    since: number,
  ): void {
    this.logs[this.size] = log;
    const code = CODES * this.size;
    this.codes[code] = spread;
    this.codes[code + 1] = noise;
    this.codes[code + 2] = motion;
    this.codes[code + 3] = trend;
    this.codes[code + 4] = kind;
    this.codes[code + 5] = since;
    const end = STATE * this.size;
    for (let i = 0; i < STATE; i++) this.ends[end + i] = state[i] as number;
    this.size++;
  }

  /** Weights that add up to 1, without the cells that weigh next to nothing. */
  worthKeeping(): Omit<LevelPosterior, "series" | "grid"> {
    const { logs, codes, size } = this;
    let top = Number.NEGATIVE_INFINITY;
    for (let cell = 0; cell < size; cell++) top = Math.max(top, logs[cell] as number);
    let total = 0;
    for (let cell = 0; cell < size; cell++) total += Math.exp((logs[cell] as number) - top);
    const least = top + Math.log(LEAST_WEIGHT * total);
    const chosen: number[] = [];
    let left = 0;
    for (let cell = 0; cell < size; cell++) {
      if ((logs[cell] as number) <= least) continue;
      chosen.push(cell);
      left += Math.exp((logs[cell] as number) - top);
    }
    const part = (code: number) => Uint8Array.from(chosen, (cell) => codes[CODES * cell + code] as number);
    const ends = new Float64Array(STATE * chosen.length);
    chosen.forEach((cell, place) => {
      ends.set(this.ends.subarray(STATE * cell, STATE * (cell + 1)), STATE * place);
    });
    return {
      weights: Float64Array.from(chosen, (cell) => Math.exp((logs[cell] as number) - top) / left),
      spreads: part(0),
      noises: part(1),
      motions: part(2),
      trends: part(3),
      kinds: part(4),
      since: part(5),
      ends,
    };
  }
}

/** One number of a cell's state after the last session. */
export function endOf({ ends }: LevelPosterior, cell: number, part: keyof typeof at): number {
  return ends[STATE * cell + at[part]] as number;
}
