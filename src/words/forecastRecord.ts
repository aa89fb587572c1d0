import { counted } from "./counted.ts";
import { sayTooFew } from "./reason.ts";

const LEAST_FORECASTS = 5;

/**
 * How the app's own forecasts came true: Brier score (mean squared error of the chance) against always saying the
 * share of targets reached.
 * @example "Better than always saying the usual share, in 12 forecasts so far: error 0.18 against 0.24. Lower is better, 0 is
 * perfect."
 */
export function sayForecastRecord(record: {
  readonly forecasts: number;
  readonly score: number | undefined;
  readonly baseScore: number | undefined;
}): string {
  const { forecasts, score, baseScore } = record;
  if (forecasts < LEAST_FORECASTS || score === undefined || baseScore === undefined)
    return sayTooFew({ needs: LEAST_FORECASTS, of: "forecast that came due", has: forecasts });
  const finding =
    score === baseScore
      ? "No better than always saying the usual share"
      : score < baseScore
        ? "Better than always saying the usual share"
        : "Worse than always saying the usual share";
  return `${finding}, in ${counted(forecasts, "forecast")} so far: error ${score.toFixed(2)} against ${baseScore.toFixed(2)}. Lower is better, 0 is perfect.`;
}
