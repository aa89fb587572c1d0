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
  /** Sessions at which a second phase may begin, all equally likely. */
  readonly places: readonly number[];
  /** Logarithm of the prior weight of a cell of each kind, by its number, φ and trend not yet counted. */
  readonly kindLogs: readonly number[];
}

/** The grid for a series: priors normalised one by one; kinds with two phases need room for both. Our methods, §5. */
export function levelGrid(series: LevelSeries, settings: LevelSettings): LevelGrid {
  const { sigmas, sNu, sScale, qls, qlw, phis, phiw, trends } = settings;
  const { pStill, pMove, pStop, pStart } = settings;
  const places = phaseStarts(series.count, settings);
  const ofSigma = shares(
    sigmas.map((sigma) => sigma ** -sNu * Math.exp((-sNu * sScale ** 2) / (2 * sigma ** 2))),
  );
  const ofNoise = shares(qlw);
  const ofPhi = shares(phiw);
  const ofTrend = shares(trends.map(([, , weight]) => weight));
  const hasTwoPhases = places.length > 0;
  const ofKind = shares([pStill, pMove, hasTwoPhases ? pStop : 0, hasTwoPhases ? pStart : 0]);
  return {
    spreads: sigmas.map((sigma, i) => ({ sigma, variance: sigma ** 2, log: logOf(ofSigma, i) })),
    noises: qls.map((q, i) => ({ squared: q ** 2, log: logOf(ofNoise, i) })),
    motions: phis.map((phi, i) => ({ phi, ...motionOf(phi, series), log: logOf(ofPhi, i) })),
    trends: trends.map(([mean, deviation], i) => ({
      mean,
      variance: deviation ** 2,
      log: logOf(ofTrend, i),
    })),
    places,
    kindLogs: ofKind.map((share, i) =>
      Math.log(i < kinds.stopped ? share : share / Math.max(1, places.length)),
    ),
  };
}

/** First sessions a second phase may have: all with enough sessions on either side, or some evenly spaced. */
function phaseStarts(count: number, { least, mostC }: LevelSettings): number[] {
  const all = Math.max(0, count - 2 * least + 1);
  if (all <= mostC) return Array.from({ length: all }, (_, i) => least + i);
  return Array.from({ length: mostC }, (_, i) => Math.round(least + (i * (all - 1)) / (mostC - 1)));
}

function shares(weights: readonly number[]): number[] {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

function logOf(weights: readonly number[], i: number): number {
  return Math.log(weights[i] ?? 0);
}
