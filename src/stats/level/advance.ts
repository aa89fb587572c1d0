import type { LevelSeries } from "./levelSeries.ts";
import type { Motion } from "./motion.ts";

/**
 * The state of one cell's filter, one number a place: level, trend and what a break still costs (b as share of the lap
 * a session), their covariances, then Σ e²/S, a running product of S/σ² and the logarithms taken out of it.
 */
export const at = {
  l: 0,
  b: 1,
  o: 2,
  ll: 3,
  lb: 4,
  bb: 5,
  lo: 6,
  bo: 7,
  oo: 8,
  squares: 9,
  product: 10,
  logs: 11,
};
export const STATE = 12;

/** What a smoother needs of one step, one number a place: state and covariances of the level after it, gain, error, S. */
export const kept = { l: 0, ll: 1, lb: 2, lo: 3, gainL: 4, gainB: 5, gainO: 6, error: 7, variance: 8 };
export const TRAIL = 9;

const STEP_VARIANCE = 4 ** 2;
const BREAK_VARIANCE = 1.25 ** 2;
export const BREAK_MEAN = 0.005;
/** A product beyond this goes into the logarithms. */
const LARGE = 1e200;

/** Variance of the steps and of the breaks before a session, in units of σ². */
export const stepVariance = (steps: number) => STEP_VARIANCE * steps;
export const breakVariance = (onsetSquares: number) => BREAK_VARIANCE * onsetSquares;

/** The state after the first session: level = first median with variance σ², trend as given. */
export function begin(state: Float64Array, series: LevelSeries, variance: number, trend: Trend): void {
  const o = BREAK_MEAN * (series.onset[0] as number);
  const oo = variance * breakVariance(series.onsetSquares[0] as number);
  state.fill(0);
  state[at.l] = (series.y[0] as number) - o;
  state[at.o] = o;
  state[at.ll] = variance + oo;
  state[at.lo] = -oo;
  state[at.oo] = oo;
  state[at.product] = 1;
  setTrend(state, trend);
}

/** A trend as it begins: prior mean and variance. */
export interface Trend {
  readonly mean: number;
  readonly variance: number;
}

export const noTrend: Trend = { mean: 0, variance: 0 };

/** Lets a trend begin, independent of all else; `noTrend` ends one. */
export function setTrend(state: Float64Array, { mean, variance }: Trend): void {
  state[at.b] = mean;
  state[at.bb] = variance;
  state[at.lb] = 0;
  state[at.bo] = 0;
}

/**
 * Carries a filter on through the sessions `from` to `to` − 1 (Kalman 1960), exactly.
 * @param variance σ²
 * @param noise variance of the level's own noise a session
 * @param motion undefined while the driver is still
 * @param trail where each step is noted for the smoother, `TRAIL` numbers a session
 */
export function advance(
  state: Float64Array,
  series: LevelSeries,
  from: number,
  to: number,
  variance: number,
  noise: number,
  motion: Motion | undefined,
  trail?: Float64Array,
): void {
  const { y, w, steps, hasBreaks, fade, onset, onsetSquares } = series;
  let l = state[at.l] as number;
  let b = state[at.b] as number;
  let o = state[at.o] as number;
  let ll = state[at.ll] as number;
  let lb = state[at.lb] as number;
  let bb = state[at.bb] as number;
  let lo = state[at.lo] as number;
  let bo = state[at.bo] as number;
  let oo = state[at.oo] as number;
  let squares = state[at.squares] as number;
  let product = state[at.product] as number;
  let logs = state[at.logs] as number;
  const precision = 1 / variance;
  for (let i = from; i < to; i++) {
    if (motion !== undefined) {
      const reach = motion.reach[i] as number;
      const decay = motion.decay[i] as number;
      l += reach * b;
      ll += reach * (2 * lb + reach * bb);
      lb = decay * (lb + reach * bb);
      lo += reach * bo;
      b *= decay;
      bb *= decay * decay;
      bo *= decay;
    }
    ll += noise * (w[i] as number) + variance * STEP_VARIANCE * (steps[i] as number);
    if (hasBreaks) {
      const left = fade[i] as number;
      o = o * left + BREAK_MEAN * (onset[i] as number);
      lo *= left;
      bo *= left;
      oo = oo * left * left + variance * BREAK_VARIANCE * (onsetSquares[i] as number);
    }
    const error = (y[i] as number) - l - o;
    const cl = ll + lo;
    const cb = lb + bo;
    const co = lo + oo;
    const total = cl + co + variance;
    const gainL = cl / total;
    const gainB = cb / total;
    const gainO = co / total;
    l += gainL * error;
    b += gainB * error;
    o += gainO * error;
    ll -= gainL * cl;
    lb -= gainL * cb;
    bb -= gainB * cb;
    lo -= gainL * co;
    bo -= gainB * co;
    oo -= gainO * co;
    squares += (error * error) / total;
    product *= total * precision;
    if (product > LARGE) {
      logs += Math.log(product);
      product = 1;
    }
    if (trail !== undefined) {
      const p = TRAIL * i;
      trail[p + kept.l] = l;
      trail[p + kept.ll] = ll;
      trail[p + kept.lb] = lb;
      trail[p + kept.lo] = lo;
      trail[p + kept.gainL] = gainL;
      trail[p + kept.gainB] = gainB;
      trail[p + kept.gainO] = gainO;
      trail[p + kept.error] = error;
      trail[p + kept.variance] = total;
    }
  }
  state[at.l] = l;
  state[at.b] = b;
  state[at.o] = o;
  state[at.ll] = ll;
  state[at.lb] = lb;
  state[at.bb] = bb;
  state[at.lo] = lo;
  state[at.bo] = bo;
  state[at.oo] = oo;
  state[at.squares] = squares;
  state[at.product] = product;
  state[at.logs] = logs;
}

/** Logarithm of the evidence of sessions `1` to `count` − 1, up to a constant that all cells share. */
export function logEvidence(state: Float64Array, count: number, variance: number): number {
  const logs = (state[at.logs] as number) + Math.log(state[at.product] as number);
  return -((state[at.squares] as number) + logs + (count - 1) * Math.log(variance)) / 2;
}
