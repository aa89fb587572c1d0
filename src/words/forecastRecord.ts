import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";

const LEAST_FORECASTS = 5;

/**
 * How the app's own forecasts came true: Brier score (mean squared error of the chance) against always saying the
 * share of targets reached.
 * @example "12 forecasts so far: error 0.18, always saying the usual share 0.24. Lower is better, 0 is perfect."
 */
export function sayForecastRecord(record: {
  readonly forecasts: number;
  readonly score: number | undefined;
  readonly baseScore: number | undefined;
}): string {
  const { forecasts, score, baseScore } = record;
  if (forecasts < LEAST_FORECASTS || score === undefined || baseScore === undefined)
    return sayTooFew({ needs: LEAST_FORECASTS, of: "forecast that came due", has: forecasts });
  const errors = `error ${score.toFixed(2)}, always saying the usual share ${baseScore.toFixed(2)}`;
  return `${counted(forecasts, "forecast")} so far: ${errors}. Lower is better, 0 is perfect.`;
}
