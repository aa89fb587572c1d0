import { type Figure, known, leastForSpread, type TestFigure, unknown } from "#domain";
import { median, standardDeviation } from "#numbers";
import type { SessionDigest } from "../digest/sessionDigest.ts";
import { successiveScatter } from "../pace/successiveScatter.ts";
import { type PaceRun, paceRuns } from "../verdict/paceRuns.ts";

const LEAST_DIFFERENCES = 5;

/** How far neighbouring runs lie apart. */
export interface RunDifferences {
  /** Standard deviation, ms. */
  readonly ms: number;
  readonly differences: number;
}

/**
 * Standard deviation of the difference of neighbouring runs in the driver's own sessions, drift included: what a rig test
 * has to overcome. Of their usual laps, or of their scatters. Runs with fewer than five pace laps, as few as do not count
 * in a test, are passed over.
 * @param digests of one page
 * @param figure that the test judges by
 * @returns a reason for fewer than five differences
 */
export function spreadOfRunDifferences(
  digests: readonly SessionDigest[],
  figure: TestFigure = "usual",
): Figure<RunDifferences> {
  const differences = digests.flatMap((digest) => {
    const figures = paceRuns(digest, "dry").flatMap((run) => figureOf(run, figure) ?? []);
    return figures.slice(1).map((value, index) => value - (figures[index] as number));
  });
  const ms = standardDeviation(differences);
  if (ms === undefined || differences.length < LEAST_DIFFERENCES) {
    return unknown({ needs: LEAST_DIFFERENCES, of: "pair of neighbouring runs", has: differences.length });
  }
  return known({ ms, differences: differences.length });
}

function figureOf({ times, chains }: PaceRun, figure: TestFigure): number | undefined {
  if (figure === "usual") return times.length < leastForSpread ? undefined : median(times);
  return chains.flat().length < leastForSpread ? undefined : successiveScatter(chains);
}
