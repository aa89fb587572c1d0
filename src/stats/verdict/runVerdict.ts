import {
  type Apart,
  isPartlyWritten,
  lapsDriven,
  lapsInOrder,
  leastForSpread,
  type Reason,
  type RigTest,
  type Run,
  standsApart,
} from "#domain";
import { median } from "#numbers";
import { LEVEL_DECIMALS } from "../combo/figureForTarget.ts";
import type { Choices } from "../laps/choices.ts";
import { usualDecimals } from "../pace/usualDecimals.ts";
import type { WhyAside } from "../rigTests/testProgress.ts";
import { testRuns } from "../rigTests/testRuns.ts";
import { whyAside } from "../rigTests/whyAside.ts";
import { flyingLaps, isUntidy } from "../run/isUntidy.ts";
import { type RunTimes, runTimes } from "../run/runTimes.ts";
import { ONE_IN_TEN, type RunBasis, type RunScatters, type RunSpread } from "./runBasis.ts";

/** How a run was, by rule. Our methods, §4. */
export type RunVerdict =
  | CountedRun
  | UntestedRun
  | RacedRun
  | TestedRun
  | UntidyRun
  | SteadyRun
  | ComparedRun;

/** Laps of a run, out and in laps left out. */
export interface LapsOfRun {
  readonly laps: number;
  readonly clean: number;
  /** Places in the run, from 1, of those that were lost or had a mistake of one's own. */
  readonly lost: readonly number[];
  /** Clean laps that the run's usual lap rests on. */
  readonly pace: number;
  /** All that were driven, written down or not. */
  readonly driven: number;
}

/** A run that gets no comparing word: only counted. */
export interface CountedRun {
  readonly word: "counted";
  readonly because: Exclude<Apart, "test"> | "partly written" | "after a break" | "nothing to compare with";
  /** Days of the break that the run comes after. */
  readonly days?: number;
  readonly run: LapsOfRun;
}

export interface RacedRun {
  readonly word: "race";
  readonly grid: number | undefined;
  readonly finish: number | undefined;
  readonly run: LapsOfRun;
}

/** A run of a rig test: nothing is said of its speed, for looking after each run finds differences that are none. */
export interface TestedRun {
  readonly word: "rig test";
  /** It counts in the test: five clean laps or more, and not void. */
  readonly isValid: boolean;
  /** Why it does not count; undefined where it does. */
  readonly why: WhyAside | undefined;
  readonly run: LapsOfRun;
}

/** A run that compares with something, but whose distance from it nobody can tell from chance yet: only counted. */
export interface UntestedRun {
  readonly word: "counted";
  readonly because: "not told yet";
  /** What is missing before faster and slower can be told. */
  readonly missing: Reason;
  readonly against: AgainstUsual;
  readonly run: LapsOfRun;
}

/** A run that would compare, and says so little because of its laps. */
export interface UntidyRun {
  readonly word: "untidy" | "too few";
  /** Undefined where the run has no clean lap. */
  readonly against: AgainstUsual | undefined;
  readonly run: LapsOfRun;
}

/** A run whose laps differ less than those of three in four of the driver's own. */
export interface SteadyRun {
  readonly word: "steady";
  readonly against: AgainstUsual;
  readonly scatterMs: number;
  /** Those of the driver's own runs before the session. */
  readonly scatters: RunScatters;
  readonly run: LapsOfRun;
}

/** A run whose distance was held against that of the driver's own runs. */
export interface ComparedRun {
  readonly word: "faster" | "slower" | "as usual";
  readonly against: AgainstUsual;
  readonly spread: RunSpread;
  readonly run: LapsOfRun;
}

/** A run's usual lap against what is usual, ms. */
export interface AgainstUsual {
  /** The run's usual lap less the reference; below 0 faster. */
  readonly ms: number;
  readonly referenceMs: number;
  /** Known decimals of the reference: two of a level. */
  readonly referenceDecimals: number;
  /** The level as it was known when the session began, or the usual lap of tonight's runs before. */
  readonly from: "level" | "tonight";
  readonly usualMs: number;
  /** Known decimals of the run's usual lap. */
  readonly decimals: number;
}

/** What a run is judged with. */
export interface RunVerdictInput {
  readonly run: Run;
  /** The session's runs before it, in any order. */
  readonly runsBefore: readonly Run[];
  /** From `runBasis`, for the surface of the run. */
  readonly basis: RunBasis;
  /** The combo's rig tests. */
  readonly tests: readonly RigTest[];
  readonly preferences: Choices;
}

/** Laps after a break that are compared with nothing. */
const FIRST_LAPS = 20;

/** The verdict of a run: the first of our rule that holds (methods, §4). */
export function runVerdict(input: RunVerdictInput): RunVerdict {
  const { run, basis, preferences } = input;
  const times = runTimes(run, preferences);
  const counts = lapsOfRun(run, times);
  const special = notJudged(input, counts);
  if (special !== undefined) return special;
  const reference = referenceOf(input);
  if (reference === undefined) {
    const because = run.surface === "dry" ? "nothing to compare with" : "wet";
    return { word: "counted", because, run: counts };
  }
  return judged(counts, againstUsual(times, reference), times, basis);
}

/** "As usual" is the word of a distance that was tested; one that nothing can test is not usual, only not known. */
function judged(
  run: LapsOfRun,
  against: AgainstUsual | undefined,
  { scatter }: RunTimes,
  { spread, scatters }: RunBasis,
): RunVerdict {
  if (isUntidy(run.lost.length, run.laps)) return { word: "untidy", against, run };
  if (run.pace < leastForSpread || against === undefined) return { word: "too few", against, run };
  if (spread.known && Math.abs(against.ms) > ONE_IN_TEN * spread.value.s)
    return { word: against.ms < 0 ? "faster" : "slower", against, spread: spread.value, run };
  const scatterMs = scatter.known ? scatter.value.scatterMs : undefined;
  if (scatterMs !== undefined && scatters.known && scatterMs < scatters.value.lowerQuartile)
    return { word: "steady", against, scatterMs, scatters: scatters.value, run };
  return spread.known
    ? { word: "as usual", against, spread: spread.value, run }
    : { word: "counted", because: "not told yet", missing: spread.reason, against, run };
}

/** Laps of a run as a verdict counts them. */
export function lapsOfRun(run: Run, { placed, counted }: Pick<RunTimes, "placed" | "counted">): LapsOfRun {
  return {
    laps: flyingLaps(placed).length,
    clean: placed.filter(({ isClean }) => isClean).length,
    lost: placed.flatMap(({ isMistake, index }) => (isMistake ? [index + 1] : [])),
    pace: counted.length,
    driven: lapsDriven(run),
  };
}

/** Why the run was driven or written matters here, whatever its times: the surface is asked about later. */
const setOff = (run: Run) => standsApart({ ...run, surface: "dry" });

function notJudged(
  { run, runsBefore, basis, tests, preferences }: RunVerdictInput,
  counts: LapsOfRun,
): RunVerdict | undefined {
  const test = testOf(run, tests);
  const apart = setOff(run);
  if (apart === "test" || (apart === undefined && test !== undefined)) {
    const why = whyAside(run, test ?? {}, preferences);
    return { word: "rig test", isValid: why === undefined, why, run: counts };
  }
  if (apart !== undefined) return { word: "counted", because: apart, run: counts };
  if (run.kind === "race") return { word: "race", grid: run.gridPlace, finish: run.finishPlace, run: counts };
  if (isPartly(run)) return { word: "counted", because: "partly written", run: counts };
  const { pause } = basis;
  if (pause !== undefined && pause.lapsSince + lapsBefore(runsBefore) < FIRST_LAPS)
    return { word: "counted", because: "after a break", days: pause.days, run: counts };
  return undefined;
}

const testOf = (run: Run, tests: readonly RigTest[]) =>
  tests.find((test) => testRuns(test, [run]).length > 0);

const isPartly = (run: Run) => isPartlyWritten(run, lapsInOrder(run).length);

/** Laps of one's own driven tonight before the run. */
function lapsBefore(runs: readonly Run[]): number {
  return runs.reduce((sum, run) => sum + (run.guest === undefined ? lapsDriven(run) : 0), 0);
}

type Reference = Pick<AgainstUsual, "referenceMs" | "referenceDecimals" | "from">;

/** The level for the run's surface, or the usual lap of the runs before it tonight that compare with it. */
function referenceOf({ run, runsBefore, basis, tests, preferences }: RunVerdictInput): Reference | undefined {
  if (basis.level.known)
    return { referenceMs: basis.level.value, referenceDecimals: LEVEL_DECIMALS, from: "level" };
  const alike = runsBefore.filter(
    (one) =>
      one.kind === "pace" &&
      one.surface === run.surface &&
      setOff(one) === undefined &&
      !isPartly(one) &&
      testOf(one, tests) === undefined,
  );
  const laps = alike.flatMap((one) => runTimes(one, preferences).counted.map(({ lap }) => lap));
  const referenceMs = median(laps.map(({ ms }) => ms as number));
  if (referenceMs === undefined) return undefined;
  return { referenceMs, referenceDecimals: usualDecimals(laps), from: "tonight" };
}

function againstUsual(
  { usual, usualDecimals: decimals }: RunTimes,
  reference: Reference,
): AgainstUsual | undefined {
  if (!usual.known) return undefined;
  return { ...reference, ms: usual.value - reference.referenceMs, usualMs: usual.value, decimals };
}
