import { advance, begin, kept, noTrend, STATE, setTrend, TRAIL } from "./advance.ts";
import { kinds } from "./levelCells.ts";
import type { LevelPosterior } from "./levelPosterior.ts";
import type { Motion } from "./motion.ts";

/**
 * Levels of all sessions in the light of all of them, one number a session and cell (`session · cells + cell`), as shares
 * of the lap: mean, variance, and covariance with the level after the last session.
 */
export interface SmoothLevels {
  readonly means: Float64Array;
  readonly variances: Float64Array;
  readonly withLast: Float64Array;
  /** Mean and variance of the first step of the series' events, a cell; empty without one. */
  readonly stepMeans: Float64Array;
  readonly stepVariances: Float64Array;
}

/**
 * Smooths the levels of the sessions, cell by cell (modified Bryson–Frazier smoother: Bierman 1973, "Fixed interval
 * smoothing with discrete measurements"; no matrix is inverted, so a trend that has died out does no harm).
 * @param step session before which a step lies whose size is asked for, with its prior variance in units of σ²
 */
export function smoothLevels(
  posterior: LevelPosterior,
  step?: { readonly before: number; readonly variance: number },
): SmoothLevels {
  const { series, grid, weights } = posterior;
  const { count, hasBreaks, fade } = series;
  const cells = weights.length;
  const means = new Float64Array(cells * count);
  const variances = new Float64Array(cells * count);
  const withLast = new Float64Array(cells * count);
  const stepMeans = new Float64Array(step === undefined ? 0 : cells);
  const stepVariances = new Float64Array(step === undefined ? 0 : cells);
  const trail = new Float64Array(TRAIL * count);
  const state = new Float64Array(STATE);
  for (let cell = 0; cell < cells; cell++) {
    const kind = posterior.kinds[cell] as number;
    const since = posterior.since[cell] as number;
    const variance = grid.spreads[posterior.spreads[cell] as number]?.variance ?? 0;
    const noise = variance * (grid.noises[posterior.noises[cell] as number]?.squared ?? 0);
    const motion = grid.motions[posterior.motions[cell] as number];
    const trend = grid.trends[posterior.trends[cell] as number] ?? noTrend;
    const first = kind === kinds.moving || kind === kinds.stopped ? motion : undefined;
    const second = kind === kinds.moving || kind === kinds.started ? motion : undefined;
    const turn = kind === kinds.stopped || kind === kinds.started ? since : count;

    begin(state, series, variance, first === undefined ? noTrend : trend);
    noteBeginning(trail, state);
    advance(state, series, 1, turn, variance, noise, first, trail);
    if (turn < count) {
      setTrend(state, second === undefined ? noTrend : trend);
      advance(state, series, turn, count, variance, noise, second, trail);
    }

    // Adjoint of the state (a, b, c for level, trend and break) and its information, then the last level's row.
    let al = 0;
    let ab = 0;
    let ao = 0;
    let ill = 0;
    let ilb = 0;
    let ibb = 0;
    let ilo = 0;
    let ibo = 0;
    let ioo = 0;
    let rl = 1;
    let rb = 0;
    let ro = 0;
    for (let i = count - 1; ; i--) {
      const p = TRAIL * i;
      const ll = trail[p + kept.ll] as number;
      const lb = trail[p + kept.lb] as number;
      const lo = trail[p + kept.lo] as number;
      const place = cells * i + cell;
      means[place] = (trail[p + kept.l] as number) - (ll * al + lb * ab + lo * ao);
      variances[place] =
        ll - (ll * (ll * ill + 2 * (lb * ilb + lo * ilo)) + lb * (lb * ibb + 2 * lo * ibo) + lo * lo * ioo);
      withLast[place] = ll * rl + lb * rb + lo * ro;
      if (i === 0) break;

      // Back over the median of this session …
      const gl = trail[p + kept.gainL] as number;
      const gb = trail[p + kept.gainB] as number;
      const go = trail[p + kept.gainO] as number;
      const total = trail[p + kept.variance] as number;
      const adjoint = gl * al + gb * ab + go * ao + (trail[p + kept.error] as number) / total;
      al -= adjoint;
      ao -= adjoint;
      const ul = ill * gl + ilb * gb + ilo * go;
      const ub = ilb * gl + ibb * gb + ibo * go;
      const uo = ilo * gl + ibo * gb + ioo * go;
      const s = ul * gl + ub * gb + uo * go + 1 / total;
      ill += s - 2 * ul;
      ilb -= ub;
      ilo += s - ul - uo;
      ibo -= ub;
      ioo += s - 2 * uo;
      const row = gl * rl + gb * rb + go * ro;
      rl -= row;
      ro -= row;
      if (step?.before === i) {
        const prior = step.variance * variance;
        stepMeans[cell] = -prior * al;
        stepVariances[cell] = prior * (1 - prior * ill);
      }
      // … and over the practice before it.
      const going: Motion | undefined = i === turn ? undefined : i < turn ? first : second;
      const reach = going === undefined ? 0 : (going.reach[i] as number);
      const decay = going === undefined ? 0 : (going.decay[i] as number);
      const left = hasBreaks ? (fade[i] as number) : 0;
      ab = reach * al + decay * ab;
      ao *= left;
      ibb = reach * (reach * ill + 2 * decay * ilb) + decay * decay * ibb;
      ibo = left * (reach * ilo + decay * ibo);
      ilb = reach * ill + decay * ilb;
      ilo *= left;
      ioo *= left * left;
      rb = reach * rl + decay * rb;
      ro *= left;
    }
  }
  return { means, variances, withLast, stepMeans, stepVariances };
}

function noteBeginning(trail: Float64Array, state: Float64Array): void {
  trail[kept.l] = state[0] as number;
  trail[kept.ll] = state[3] as number;
  trail[kept.lb] = state[4] as number;
  trail[kept.lo] = state[6] as number;
}
