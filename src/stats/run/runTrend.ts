import { type Figure, known, unknown } from "#domain";
import { theilSen } from "../sample/theilSen.ts";

const LEAST_LAPS = 6;

/** How the pace moves inside a run, in ms a lap; a fall is negative. */
export interface RunTrend {
  readonly msPerLap: number;
  readonly low: number;
  readonly high: number;
  readonly laps: number;
}

/**
 * Trend inside a run: Theil–Sen slope of its pace laps over the lap number (fuel burns off, tyres warm and wear).
 * @param laps pace laps: place in the run and time in ms
 * @param confidence fraction, as 0.9
 * @returns a reason for fewer than six laps
 * @throws RangeError for values that are not finite or a confidence outside 0 to 1
 * @example a run that loses 20 ms a lap gives msPerLap 20
 */
export function runTrend(
  laps: readonly { readonly number: number; readonly ms: number }[],
  confidence: number,
): Figure<RunTrend> {
  const line = theilSen(
    laps.map((lap) => lap.number),
    laps.map((lap) => lap.ms),
    confidence,
  );
  if (line === undefined || laps.length < LEAST_LAPS)
    return unknown({ needs: LEAST_LAPS, of: "pace lap", has: laps.length });
  return known({ msPerLap: line.slope, low: line.low, high: line.high, laps: laps.length });
}
