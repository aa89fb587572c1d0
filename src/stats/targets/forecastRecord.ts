import { brierScore, type ScoredForecast } from "./brierScore.ts";

/** Forecasts that gave about the same chance. */
export interface RecordFifth {
  readonly from: number;
  readonly to: number;
  readonly count: number;
  /** Mean chance given, and the share that came true. */
  readonly said: number;
  readonly came: number;
}

/** How the app's own forecasts have turned out. */
export interface ForecastRecord {
  readonly count: number;
  readonly reached: number;
  readonly score: number;
  /** Score of always saying the share that was reached. */
  readonly baseScore: number;
  /** 1 − score/baseScore: above 0 is better than the base rate; undefined when all or none were reached. */
  readonly skill: number | undefined;
  /** The fifths of chance in which there are forecasts. */
  readonly fifths: readonly RecordFifth[];
}

/** By the chance as it is told, in twentieths: 0.199 is told as 4 in 20, and stands with those of 0.2. */
function fifthOf(chance: number): number {
  return Math.min(4, Math.floor(Math.round(chance * 20) / 4));
}

/**
 * The app's own record: Brier score against always saying the base rate, and said against came by fifths of chance.
 * @returns undefined for no forecasts
 * @throws RangeError for a chance that is not a number from 0 to 1, naming it
 */
export function forecastRecord(forecasts: readonly ScoredForecast[]): ForecastRecord | undefined {
  const score = brierScore(forecasts);
  if (score === undefined) return undefined;
  const count = forecasts.length;
  const reached = forecasts.filter((forecast) => forecast.reached).length;
  const base = reached / count;
  const baseScore = base * (1 - base);
  const fifths = [0, 1, 2, 3, 4].flatMap((fifth) => {
    const these = forecasts.filter(({ chance }) => fifthOf(chance) === fifth);
    if (these.length === 0) return [];
    return [
      {
        from: fifth / 5,
        to: (fifth + 1) / 5,
        count: these.length,
        said: these.reduce((sum, { chance }) => sum + chance, 0) / these.length,
        came: these.filter((forecast) => forecast.reached).length / these.length,
      },
    ];
  });
  return {
    count,
    reached,
    score,
    baseScore,
    skill: baseScore > 0 ? 1 - score / baseScore : undefined,
    fifths,
  };
}
