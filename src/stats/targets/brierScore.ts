import { requireNumber } from "#numbers";

/** A forecast whose date has come. */
export interface ScoredForecast {
  /** The chance that was given, 0 to 1. */
  readonly chance: number;
  readonly reached: boolean;
}

/**
 * Brier score: the mean squared difference of what was said and what came (0 or 1). Brier 1950, "Verification of
 * forecasts expressed in terms of probability", in its one-class form. 0 is perfect; always saying ½ gives 0.25.
 * @returns undefined for no forecasts
 * @throws RangeError for a chance that is not a number from 0 to 1, naming it
 * @example brierScore([{ chance: 0.7, reached: true }]) // 0.09
 */
export function brierScore(forecasts: readonly ScoredForecast[]): number | undefined {
  if (forecasts.length === 0) return undefined;
  const sum = forecasts.reduce((total, { chance, reached }, i) => {
    requireNumber(chance, `forecasts[${i}].chance`);
    if (chance < 0 || chance > 1)
      throw new RangeError(`forecasts[${i}].chance is ${chance}: 0 to 1 is needed`);
    return total + (chance - Number(reached)) ** 2;
  }, 0);
  return sum / forecasts.length;
}
