import { type Horizon, horizons, type Outcome, type Told } from "./simulate.ts";

/** Share of true values; NaN of none. */
export function shareOf(flags: readonly boolean[]): number {
  return flags.filter(Boolean).length / flags.length;
}

/** Whether medians of sessions up to a horizon, but beyond the one before it, lay in the 90 % band. */
export function inBand(told: readonly Told[], within: Horizon): boolean[] {
  const before = horizons[horizons.indexOf(within) - 1] ?? 0;
  return told.flatMap(({ isInBand }) => isInBand.slice(before, within));
}

/** Forecasts of targets within a horizon. */
export function outcomesOf(told: readonly Told[], within: Horizon): Outcome[] {
  return told.flatMap(({ outcomes }) => outcomes.filter((outcome) => outcome.within === within));
}

export interface SaidAndCame {
  readonly count: number;
  /** Mean chance said, and share that came true. */
  readonly said: number;
  readonly came: number;
}

/** Forecasts with a chance from one value to under another. */
function saidBetween(outcomes: readonly Outcome[], from: number, to: number): SaidAndCame {
  const these = outcomes.filter(({ chance }) => chance >= from && chance < to);
  return {
    count: these.length,
    said: these.reduce((sum, { chance }) => sum + chance, 0) / these.length,
    came: shareOf(these.map(({ reached }) => reached)),
  };
}

/** Forecasts sorted by what was said, in fifths. */
export function fifths(outcomes: readonly Outcome[]): SaidAndCame[] {
  return [0, 0.2, 0.4, 0.6, 0.8].map((from) =>
    saidBetween(outcomes, from, from === 0.8 ? Infinity : from + 0.2),
  );
}

/** Forecasts that said about one half. */
export function saidHalf(outcomes: readonly Outcome[]): SaidAndCame {
  return saidBetween(outcomes, 0.4, 0.6);
}

/** Brier score as a share of that of always saying the base rate. */
export function brierShare(outcomes: readonly Outcome[]): number {
  const base = shareOf(outcomes.map(({ reached }) => reached));
  const score = outcomes.reduce((sum, { chance, reached }) => sum + (chance - Number(reached)) ** 2, 0);
  return score / outcomes.length / (base * (1 - base));
}

const JACKKNIFE_GROUPS = 20;

/** Standard error of a figure of many drivers, from what it is without each twentieth of them (Quenouille's jackknife). */
export function standardErrorOf(told: readonly Told[], figure: (told: readonly Told[]) => number): number {
  const without = Array.from({ length: JACKKNIFE_GROUPS }, (_, group) =>
    figure(told.filter((_, n) => n % JACKKNIFE_GROUPS !== group)),
  );
  const mean = without.reduce((sum, value) => sum + value, 0) / JACKKNIFE_GROUPS;
  const squares = without.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return Math.sqrt(((JACKKNIFE_GROUPS - 1) / JACKKNIFE_GROUPS) * squares);
}
