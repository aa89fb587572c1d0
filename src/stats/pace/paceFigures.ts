import { type Figure, leastForSpread, unknown } from "#domain";
import { CONFIDENCE } from "#numbers";
import type { PlacedLap } from "../laps/sessionLaps.ts";
import { summary } from "../sample/summary.ts";
import { bestOfK } from "./bestOfK.ts";
import { type Consistency, consistency } from "./consistency.ts";
import { medianForTrend } from "./medianForTrend.ts";
import { usualDecimals } from "./usualDecimals.ts";

const BEST_OF = 10;

/** The figures of a set of pace laps, ms; what needs more laps than there are is undefined. */
export interface PaceFigures {
  readonly laps: number;
  /** Those of them that may enter a spread. */
  readonly exactLaps: number;
  /** Fastest pace lap that the driver lets stand as a best. */
  readonly best: number | undefined;
  /** To how many decimals of a second it is known; three where there is none. */
  readonly bestDecimals: number;
  readonly mean: number | undefined;
  readonly median: number | undefined;
  /** To how many decimals of a second the median is known. */
  readonly medianDecimals: number;
  /** Quartiles of all pace laps, from five up. */
  readonly lowerQuartile: number | undefined;
  readonly upperQuartile: number | undefined;
  /** Standard deviation and scaled median absolute deviation of the exact laps, from five up. */
  readonly standardDeviation: number | undefined;
  readonly medianAbsoluteDeviation: number | undefined;
  /** Mean best of ten of the laps that may be a best, of which there are ten or more. */
  readonly bestOfTen: number | undefined;
  /** Median without the first three pace laps where there are ten or more; from five laps up. */
  readonly medianForTrend: number | undefined;
  readonly consistency: Figure<Consistency>;
}

/**
 * Figures of pace laps in the order in which they were driven.
 * @param laps all laps of the session or run in order; those that are not pace laps only break chains
 */
export function paceFigures(laps: readonly PlacedLap[]): PaceFigures {
  const pace = laps.filter((placed) => placed.place === "pace");
  const times = timesOf(pace);
  const mayBeBest = pace.filter((placed) => placed.mayBeBest);
  const maybeBests = timesOf(mayBeBest);
  const best = fastest(maybeBests);
  const all = summary(times);
  const chains = exactChains(laps);
  const exact = summary(chains.flat());
  const enough = times.length >= leastForSpread;
  const exactEnough = exact !== undefined && exact.count >= leastForSpread;
  return {
    laps: times.length,
    exactLaps: exact?.count ?? 0,
    best,
    bestDecimals: decimalsOf(mayBeBest.filter(({ lap }) => lap.ms === best)),
    mean: all?.mean,
    median: all?.median,
    medianDecimals: usualDecimals(pace.map(({ lap }) => lap)),
    lowerQuartile: enough ? all?.lowerQuartile : undefined,
    upperQuartile: enough ? all?.upperQuartile : undefined,
    standardDeviation: exactEnough ? exact.standardDeviation : undefined,
    medianAbsoluteDeviation: exactEnough ? exact.medianAbsoluteDeviation : undefined,
    bestOfTen: bestOfK(maybeBests, BEST_OF),
    medianForTrend: medianForTrend(times),
    consistency: spreadOf(chains, times.length),
  };
}

/** Where some pace laps are not exact, and with them there are too few, the reason says so. */
function spreadOf(chains: readonly number[][], paceLaps: number): Figure<Consistency> {
  const exact = chains.flat().length;
  if (exact >= leastForSpread || exact === paceLaps) return consistency(chains, CONFIDENCE);
  return unknown({ needs: leastForSpread, of: "exact pace lap", has: exact, rough: paceLaps - exact });
}

function timesOf(laps: readonly PlacedLap[]): number[] {
  return laps.map((placed) => placed.lap.ms as number);
}

function fastest(times: readonly number[]): number | undefined {
  return times.length === 0 ? undefined : times.reduce((best, ms) => Math.min(best, ms));
}

/** Decimals of the most exactly known of equally fast laps: that one was driven, whatever the others were. */
function decimalsOf(laps: readonly PlacedLap[]): number {
  return laps.length === 0 ? 3 : Math.max(...laps.map(({ lap }) => lap.decimals ?? 3));
}

/** Exact pace laps in chains: a new run begins a new chain, and a lap without a time ends one. */
export function exactChains(laps: readonly PlacedLap[]): number[][] {
  const chains: number[][] = [];
  let run = -1;
  let isBroken = true;
  for (const placed of laps) {
    if (placed.lap.ms === undefined || placed.run !== run) isBroken = true;
    run = placed.run;
    if (placed.place !== "pace" || !placed.isExact || placed.lap.ms === undefined) continue;
    if (isBroken) chains.push([]);
    isBroken = false;
    chains.at(-1)?.push(placed.lap.ms);
  }
  return chains;
}
