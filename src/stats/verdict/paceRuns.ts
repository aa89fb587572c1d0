import { type LapPlace, type LapWorth, lapPlaces, lapWorths, type Surface } from "#domain";
import { NO_TIME, type SessionDigest } from "../digest/sessionDigest.ts";

/** The pace laps of one run on one surface, as driven. */
export interface PaceRun {
  /** ms. */
  readonly times: readonly number[];
  /** Those good enough for a spread, in chains that a lap without a time ends. */
  readonly chains: readonly (readonly number[])[];
}

/**
 * The pace runs of a session on one surface, in order: dry ones by their pace laps; damp or wet ones, at brisk or full
 * effort, by their clean laps. Runs without such a lap, and those of which only some laps are written down, are left out.
 */
export function paceRuns(digest: SessionDigest, surface: Surface): PaceRun[] {
  const { times, places, worths, exact, runs, runFacts } = digest;
  const wanted: LapPlace = surface === "dry" ? "pace" : "wet";
  const found = new Map<number, { times: number[]; chains: number[][]; isBroken: boolean }>();
  times.forEach((ms, index) => {
    const number = runs[index] as number;
    const facts = runFacts[number];
    if (facts?.surface !== surface || facts.isPartly === true) return;
    if (facts.effort === "easy" || facts.effort === "learning") return;
    const run = found.get(number) ?? { times: [], chains: [], isBroken: true };
    found.set(number, run);
    if (ms === NO_TIME) run.isBroken = true;
    if (ms === NO_TIME || lapPlaces[places[index] as number] !== wanted || !isClean(worths[index])) return;
    run.times.push(ms);
    if (exact[index] !== 1) return;
    if (run.isBroken) run.chains.push([]);
    run.isBroken = false;
    run.chains.at(-1)?.push(ms);
  });
  return [...found.values()].filter((run) => run.times.length > 0);
}

function isClean(worth: number | undefined): boolean {
  const is = lapWorths[worth ?? 0] as LapWorth;
  return is === "clean" || is === "best";
}
