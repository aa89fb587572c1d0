import type { Numbers } from "#numbers";
import { individualsChart } from "./individualsChart.ts";
import { FAR_OUT, modifiedZScores } from "./modifiedZScores.ts";

/** Why a lap is pointed at. The driver decides what it means. */
export type PointedAtFor = "far out" | "outside the limits" | "eight in a row on one side";

/** A lap that is pointed at, by its index, with at least one reason. */
export interface PointedAtLap {
  readonly index: number;
  readonly reasons: readonly PointedAtFor[];
}

/** Laps behind the hint: with fewer, limits of three sigma mean nothing. */
const LEAST_LAPS = 5;

/**
 * Laps worth a second look: outside the limits of an individuals chart, the eighth or a later one in a row on one
 * side of its centre, or with a modified z-score over 5; how often chance alone makes one says `chanceOfPointing`. A lap
 * far out drags the centre with it, so then no row on one side is pointed at.
 * @param values pace laps of a run in order, ms
 * @returns none for fewer than five laps
 * @throws RangeError for a value that is not finite
 * @example pointedAtLaps([84000, 84100, 84050, 84020, 90000]) // index 4, "far out"
 */
export function pointedAtLaps(values: Numbers): PointedAtLap[] {
  const chart = individualsChart(values);
  const scores = modifiedZScores(values);
  if (chart === undefined || values.length < LEAST_LAPS) return [];
  const hasFarOut = scores.some((score) => Math.abs(score) > FAR_OUT);
  return scores.flatMap((score, index) => {
    const reasons: PointedAtFor[] = [];
    if (Math.abs(score) > FAR_OUT) reasons.push("far out");
    if (chart.outside.includes(index)) reasons.push("outside the limits");
    if (!hasFarOut && chart.sameSide.includes(index)) reasons.push("eight in a row on one side");
    return reasons.length === 0 ? [] : [{ index, reasons }];
  });
}
