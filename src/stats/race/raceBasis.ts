import { isMistake, isTimed, lapsInOrder, type Run, standsApart } from "#domain";
import { leastRaceLaps } from "./raceDistance.ts";
import type { RaceLap } from "./raceLaps.ts";

/** The laps that a race distance is worked out from. */
export interface RaceBasis {
  /** Race runs, or, where they have too few laps, pace runs. */
  readonly kind: "race" | "pace";
  /** The newest first. */
  readonly runs: readonly Run[];
  readonly laps: readonly RaceLap[];
}

/** Older runs are of a driver who has changed since. Our own choice. */
const MOST_RUNS = 8;

/**
 * The laps of the last race runs, else of the last pace runs, mistakes included: of the last eight runs driven for time on a dry
 * track. Out laps, in laps and the first lap of a race, which begins at a stand, are left out. Our methods, §10.
 * @param runs of the present page, the newest first
 */
export function raceBasis(runs: readonly Run[]): RaceBasis {
  const last = lastForTime(runs);
  const races = ofKind("race", last);
  const timed = races.laps.filter((lap) => typeof lap === "number" || lap.ms !== undefined);
  return timed.length >= leastRaceLaps ? races : ofKind("pace", last);
}

/** The last runs that were driven for time on a dry track, races among them, the newest first. */
export function lastForTime(runs: readonly Run[]): readonly Run[] {
  return runs.filter((run) => standsApart(run) === undefined && lapsOf(run).length > 0).slice(0, MOST_RUNS);
}

function ofKind(kind: RaceBasis["kind"], all: readonly Run[]): RaceBasis {
  const runs = all.filter((run) => run.kind === kind);
  return { kind, runs, laps: runs.flatMap(lapsOf) };
}

function lapsOf(run: Run): RaceLap[] {
  const laps = lapsInOrder(run).slice(run.kind === "race" ? 1 : 0);
  return laps
    .filter((lap) => isTimed(lap) || isMistake(lap))
    .map(({ ms, remarks }) => ({ remarks, run: run.id, ...(ms !== undefined && { ms }) }));
}
