import { inSet, type SetOfLaps } from "../digest/lapsOfDigest.ts";
import type { SessionDigest } from "../digest/sessionDigest.ts";

/**
 * The laps of each run: the time of one that may be a best and is known exactly, undefined for any other.
 * @param set `paceBests`: only those of pace runs
 */
export function exactRuns(
  digest: SessionDigest,
  set: Extract<SetOfLaps, "bests" | "paceBests"> = "bests",
): (number | undefined)[][] {
  const { times, exact, runs } = digest;
  const mayBeBest = inSet(digest, set);
  const byRun: (number | undefined)[][] = [];
  times.forEach((ms, index) => {
    const isCounted = exact[index] === 1 && mayBeBest(index);
    const run = runs[index] ?? 0;
    byRun[run] ??= [];
    byRun[run].push(isCounted ? ms : undefined);
  });
  return byRun.filter((run) => run !== undefined);
}
