import { lapFlags } from "../digest/digestFlags.ts";
import { NO_TIME, type SessionDigest } from "../digest/sessionDigest.ts";

/** The laps of each run: the time of one that may be a best and is known exactly, undefined for any other. */
export function exactRuns({ times, flags, runs }: SessionDigest): (number | undefined)[][] {
  const wanted = lapFlags.mayBeBest | lapFlags.exact;
  const byRun: (number | undefined)[][] = [];
  times.forEach((ms, index) => {
    const isCounted = ((flags[index] ?? 0) & wanted) === wanted && ms !== NO_TIME;
    const run = runs[index] ?? 0;
    byRun[run] ??= [];
    byRun[run].push(isCounted ? ms : undefined);
  });
  return byRun.filter((run) => run !== undefined);
}
