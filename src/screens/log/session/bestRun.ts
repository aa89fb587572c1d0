import { leastForSpread } from "#domain";
import { runTimes } from "#stats";
import type { StripsOf } from "./sessionStrips.ts";

/** The run of a session with the fastest usual lap. */
export interface BestRun {
  readonly number: number;
  readonly usualMs: number;
  readonly usualDecimals: number;
}

/** Of the pace runs with five laps at least; undefined where there are not two to choose from. */
export function bestRun({
  shown,
  preferences,
}: Pick<StripsOf, "shown" | "preferences">): BestRun | undefined {
  const runs = shown.flatMap(({ run, number }): BestRun[] => {
    const { isPace, laps, usual, usualDecimals } = runTimes(run, preferences);
    if (!isPace || laps < leastForSpread || !usual.known) return [];
    return [{ number, usualMs: usual.value, usualDecimals }];
  });
  if (runs.length < 2) return undefined;
  return runs.reduce((best, run) => (run.usualMs < best.usualMs ? run : best));
}
