import { type Figure, known, outOfTest, type Run, unknown } from "#domain";
import { bestCandidates } from "../bests/bestCandidates.ts";
import { fastestOf } from "../bests/fastestOf.ts";
import type { Choices } from "../laps/choices.ts";
import { type PlacedLap, placedRun } from "../laps/sessionLaps.ts";
import { paceFigures } from "../pace/paceFigures.ts";
import { ofCleanLaps } from "./ofCleanLaps.ts";
import type { KnownTime, RunFigures } from "./runFigures.ts";

/** Best, usual lap and scatter of one run, and the laps they are of. */
export interface RunTimes
  extends Pick<
    RunFigures,
    "isPace" | "laps" | "best" | "usual" | "usualDecimals" | "isUsualGiven" | "scatter"
  > {
  /** All laps of the run in their places, and those behind the figures. */
  readonly placed: readonly PlacedLap[];
  readonly counted: readonly PlacedLap[];
}

/**
 * Best, usual lap and scatter of one run: of its pace laps, one of a rig test read as if it were of none; of any other run (drill, warm-up, race, wet, easy, a guest's,
 * partly written) of its clean laps, a race's first left out. What stands at the head of the run, and what the run says, both take it from here.
 */
export function runTimes(run: Run, choices: Choices): RunTimes {
  const placed = placedRun(run, 0, run.startedAt, choices);
  const isPace = hasPace(run, placed);
  const itself = isPace ? placed : placedRun(outOfTest(run), 0, run.startedAt, choices);
  const looked = hasPace(run, itself)
    ? itself
    : placed.map((lap) => (isStart(run, lap) ? lap : asIfPace(lap)));
  const counted = looked.filter(({ place }) => place === "pace");
  const { median, medianDecimals, consistency } = paceFigures(looked);
  const { usualMs, usualDecimals = 3 } = run.summary ?? {};
  return {
    placed,
    counted,
    isPace,
    laps: counted.length,
    best: bestOf(run, placed),
    usual: usualMs !== undefined ? known(usualMs) : usualOf(median, counted.length),
    usualDecimals: usualMs === undefined ? medianDecimals : usualDecimals,
    isUsualGiven: usualMs !== undefined,
    scatter: isPace ? consistency : ofCleanLaps(consistency),
  };
}

/** Whether a run is read by its pace laps. */
export function hasPace(run: Run, placed: readonly PlacedLap[]): boolean {
  return run.guest === undefined && placed.some(({ place }) => place === "pace");
}

/** A race begins at a stand: its first lap tells nothing of the pace (common practice, no source). */
function isStart({ kind }: Run, { index }: PlacedLap): boolean {
  return kind === "race" && index === 0;
}

function asIfPace(placed: PlacedLap): PlacedLap {
  return placed.isClean ? { ...placed, place: "pace" } : placed;
}

function bestOf(run: Run, placed: readonly PlacedLap[]): Figure<KnownTime> {
  const best = fastestOf(bestCandidates({ runs: [run], laps: placed }, run.startedAt));
  if (best === undefined) return unknown({ needs: 1, of: "clean lap", has: 0 });
  return known({ ms: best.ms, decimals: best.decimals, lapId: best.isSummary ? undefined : best.lapId });
}

/** One lap is no usual one. */
const LEAST_FOR_USUAL = 2;

function usualOf(ms: number | undefined, laps: number): Figure<number> {
  return ms === undefined || laps < LEAST_FOR_USUAL
    ? unknown({ needs: LEAST_FOR_USUAL, of: "clean lap", has: laps })
    : known(ms);
}
