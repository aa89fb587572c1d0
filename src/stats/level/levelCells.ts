import type { Trend } from "./advance.ts";
import type { LevelSeries } from "./levelSeries.ts";
import type { LevelSettings } from "./levelSettings.ts";
import { type Motion, motionOf } from "./motion.ts";

/** What a driver may be doing: the four kinds of the level model. */
export const kinds = { still: 0, moving: 1, stopped: 2, started: 3 } as const;

/** The values a cell is put together from, each with the logarithm of its prior weight. */
export interface LevelGrid {
  /** σ and σ² as shares of the lap. */
  readonly spreads: readonly { readonly sigma: number; readonly variance: number; readonly log: number }[];
  /** Variance of the level's noise a session, in units of σ². */
  readonly noises: readonly { readonly squared: number; readonly log: number }[];
  readonly motions: readonly (Motion & { readonly phi: number; readonly log: number })[];
  readonly trends: readonly (Trend & { readonly log: number })[];
  /** Sessions at which a second phase may begin. */
  readonly places: readonly number[];
  /** Logarithms of the prior weights of a cell of each kind, φ and trend not yet counted; with two phases, one a place. */
  readonly stillLog: number;
  readonly movingLog: number;
  readonly stoppedLogs: readonly number[];
  readonly startedLogs: readonly number[];
  /** Chance a session that a driver who moves stops. */
  readonly stopping: number;
}

/** The grid for a series: priors normalised one by one; kinds with two phases need room for both. Our methods, §5. */
export function levelGrid(series: LevelSeries, settings: LevelSettings): LevelGrid {
  const { sigmas, sNu, sScale, qls, qlw, phis, phiw, trends } = settings;
  const ofSigma = shares(
    sigmas.map((sigma) => sigma ** -sNu * Math.exp((-sNu * sScale ** 2) / (2 * sigma ** 2))),
  );
  const ofNoise = shares(qlw);
  const ofPhi = shares(phiw);
  const ofTrend = shares(trends.map(([, , weight]) => weight));
  return {
    spreads: sigmas.map((sigma, i) => ({ sigma, variance: sigma ** 2, log: logOf(ofSigma, i) })),
    noises: qls.map((q, i) => ({ squared: q ** 2, log: logOf(ofNoise, i) })),
    motions: phis.map((phi, i) => ({ phi, ...motionOf(phi, series), log: logOf(ofPhi, i) })),
    trends: trends.map(([mean, deviation], i) => ({
      mean,
      variance: deviation ** 2,
      log: logOf(ofTrend, i),
    })),
    ...phasePriors(series.count, settings),
    stopping: settings.stopping,
  };
}

/**
 * Where a second phase may begin, and how likely the kinds are. All sessions with enough on either side, or some that crowd
 * towards the last, each for the stretch of sessions around it: how long ago a driver stopped matters most where it is not long.
 * A driver who moves stops with the same small chance before each session, so the longer the history, the fewer still move.
 */
function phasePriors(
  count: number,
  { least, mostC, crowding, stopping, pStill, pMove, pStop, pStart }: LevelSettings,
): Pick<LevelGrid, "places" | "stillLog" | "movingLog" | "stoppedLogs" | "startedLogs"> {
  const all = Math.max(0, count - 2 * least + 1);
  const some = Math.min(all, mostC);
  // No more than lets the last two places be neighbours.
  const power = all > mostC ? Math.min(crowding, Math.log(all - 1) / Math.log(mostC - 1)) : 1;
  const upTo = (share: number) => 1 - (1 - share) ** power;
  const places = Array.from({ length: some }, (_, i) =>
    Math.round(least + (some > 1 ? (all - 1) * upTo(i / (some - 1)) : 0)),
  );
  const stretches = places.map((_, i) => ({ from: all * upTo(i / some), to: all * upTo((i + 1) / some) }));
  const goesOn = (sessions: number) => (1 - stopping) ** sessions;
  const total = pStill + pMove + (some > 0 ? pStop + pStart : 0);
  const log = (weight: number) => Math.log(weight / total);
  return {
    places,
    stillLog: log(pStill),
    movingLog: log(pMove * goesOn(all)),
    stoppedLogs: stretches.map(({ from, to }) =>
      log((pStop * (to - from)) / all + pMove * (goesOn(from) - goesOn(to))),
    ),
    startedLogs: stretches.map(({ from, to }) => log((pStart * (to - from)) / all)),
  };
}

function shares(weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

function logOf(weights: readonly number[], i: number): number {
  return Math.log(weights[i] ?? 0);
}
