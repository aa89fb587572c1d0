import { type Figure, known, unknown } from "#domain";
import { median, standardDeviation } from "#numbers";
import { inSet } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";

const LEAST_LAPS = 3;
const LEAST_DIFFERENCES = 5;

/**
 * Standard deviation of the difference of neighbouring runs' medians in the driver's own sessions, drift included: what
 * a rig test has to overcome. Runs with fewer than three pace laps are passed over.
 * @param digests of one page
 * @returns a reason for fewer than five differences
 */
export function spreadOfRunDifferences(
  digests: readonly SessionDigest[],
): Figure<{ readonly ms: number; readonly differences: number }> {
  const differences = digests.flatMap((digest) => {
    const medians = runMedians(digest);
    return medians.slice(1).map((value, index) => value - (medians[index] as number));
  });
  const ms = standardDeviation(differences);
  if (ms === undefined || differences.length < LEAST_DIFFERENCES) {
    return unknown({ needs: LEAST_DIFFERENCES, of: "pair of neighbouring runs", has: differences.length });
  }
  return known({ ms, differences: differences.length });
}

function runMedians(digest: SessionDigest): number[] {
  const byRun = new Map<number, number[]>();
  const isPace = inSet(digest, "pace");
  digest.times.forEach((ms, lap) => {
    if (!isPace(lap)) return;
    const run = digest.runs[lap] ?? 0;
    byRun.set(run, [...(byRun.get(run) ?? []), ms]);
  });
  return [...byRun.entries()]
    .toSorted(([a], [b]) => a - b)
    .flatMap(([, laps]) => (laps.length < LEAST_LAPS ? [] : (median(laps) ?? [])));
}
