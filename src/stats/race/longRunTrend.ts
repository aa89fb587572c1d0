import { type Figure, known, type Run, unknown } from "#domain";
import { CONFIDENCE } from "#numbers";
import type { Choices } from "../laps/choices.ts";
import { signedRankTest } from "../rigTests/signedRankTest.ts";
import { runTimes } from "../run/runTimes.ts";
import { type RunTrend, runTrend } from "../run/runTrend.ts";

/** How the pace moves inside a long run, over several of them. */
export interface LongRunTrend extends Pick<RunTrend, "msPerLap" | "low" | "high"> {
  readonly runs: number;
  /** Laps of the longest of them: nothing is known of what comes beyond. */
  readonly longest: number;
}

const LEAST_LAPS = 6;
/** With fewer runs no interval of nine in ten can be given over runs. */
const LEAST_RUNS = 5;

/**
 * The pace over a long run: the trend of each run (our methods, §4), and over five runs and more their middle with the
 * interval of Wilcoxon's signed-rank test, for laps of one run hang together; of fewer runs the trend of the longest. Pooling
 * over runs is our own choice.
 * @param runs driven for time, in any order
 * @returns a reason where no run has six clean laps
 */
export function longRunTrend(runs: readonly Run[], choices: Choices): Figure<LongRunTrend> {
  const each = runs.map((run) => {
    const laps = runTimes(run, choices).counted.map(({ index, lap: { ms = 0 } }) => ({
      number: index + 1,
      ms,
    }));
    return { laps: laps.length, trend: runTrend(laps, CONFIDENCE) };
  });
  const long = each
    .flatMap(({ trend }) => (trend.known ? [trend.value] : []))
    .toSorted((a, b) => b.laps - a.laps);
  const [longest] = long;
  if (longest === undefined)
    return unknown({ needs: LEAST_LAPS, of: "clean lap", has: Math.max(0, ...each.map(({ laps }) => laps)) });
  const about = { runs: long.length, longest: longest.laps };
  if (long.length < LEAST_RUNS) {
    const { msPerLap, low, high } = longest;
    return known({ ...about, runs: 1, msPerLap, low, high });
  }
  const slopes = long.map(({ msPerLap }) => msPerLap);
  // Undefined where not one of them has any slope.
  const {
    estimate: msPerLap,
    low,
    high,
  } = signedRankTest(slopes, CONFIDENCE) ?? { estimate: 0, low: 0, high: 0 };
  return known({ ...about, msPerLap, low, high });
}
