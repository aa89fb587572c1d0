/** The figures made from laps, in the order of the chapters; the faces of the rooms say who may use them. */

// Plain samples
export { lag1Autocorrelation } from "./sample/lag1Autocorrelation.ts";
export { mean } from "./sample/mean.ts";
export { median } from "./sample/median.ts";
export { medianAbsoluteDeviation } from "./sample/medianAbsoluteDeviation.ts";
export type { Numbers } from "./sample/numbers.ts";
export { quantile } from "./sample/quantile.ts";
export { standardDeviation } from "./sample/standardDeviation.ts";
export { type Summary, summary } from "./sample/summary.ts";

// Pace and spread

// The time account

// Inside a run
export { type KnownBest, type LapDifferences, lapDifferences } from "./run/lapDifferences.ts";

// Over weeks

// Targets

// Rig tests

// Race distance

// Reports
