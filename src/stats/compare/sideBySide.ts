import type { AccountTarget } from "#combo";
import {
  type Figure,
  known,
  leastForSpread,
  type NotCompared,
  type Run,
  type Session,
  standsApart,
  unknown,
} from "#domain";
import { CONFIDENCE, median } from "#numbers";
import { type SectorAccount, sectorAccount } from "../account/sectorAccount.ts";
import { accountOfLaps, type TimeAccount } from "../account/timeAccount.ts";
import { accountLaps, sectorsOf } from "../digest/lapsOfDigest.ts";
import { type SessionDigest, sessionDigest } from "../digest/sessionDigest.ts";
import type { Choices } from "../laps/choices.ts";
import { sessionLaps } from "../laps/sessionLaps.ts";
import type { Consistency } from "../pace/consistency.ts";
import type { Shift } from "../period/shift.ts";
import { rankSumTest } from "../rigTests/rankSumTest.ts";
import type { KnownTime } from "../run/runFigures.ts";
import { runTimes } from "../run/runTimes.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";

/** Runs of five pace laps that either session needs: with two against three no ranks are rare enough for nine in ten. */
const LEAST_RUNS = 3;

/** One of two runs or sessions: its session, and the runs of it that are meant. */
export interface SideInput {
  readonly session: Session;
  readonly runs: readonly Run[];
}

/** What is set side by side of one run or session. */
export interface SideFigures {
  /** Laps behind the usual one. */
  readonly laps: number;
  readonly best: Figure<KnownTime>;
  readonly usual: Figure<number>;
  readonly usualDecimals: number;
  readonly scatter: Figure<Consistency>;
  readonly cleanShare: Share | undefined;
  readonly account: Figure<TimeAccount>;
  readonly sectors: Figure<SectorAccount>;
}

/** How far the second usual lap lies from the first, faster is negative, and what it was counted by. */
export interface SideShift extends Shift {
  readonly by: "lap" | "run";
  readonly first: number;
  readonly second: number;
}

/**
 * Why times are not set against each other: another combo, another page of it, or the kind of one of the runs. `lasting
 * test`: a run of a rig test that lasts, of which nothing is told, not even by itself.
 */
export type SidesApart = "combo" | "page" | "lasting test" | NotCompared;

/** Two runs or two sessions side by side. */
export interface SideBySide {
  readonly first: SideFigures;
  readonly second: SideFigures;
  readonly apart: SidesApart | undefined;
  /** What both accounts are measured against. */
  readonly target: AccountTarget | undefined;
  readonly shift: Figure<SideShift>;
}

interface SideBySideInput {
  readonly kind: "run" | "session";
  readonly first: SideInput;
  readonly second: SideInput;
  /** Undefined where both stand on one page of one combo, and neither is a run of a rig test that lasts. */
  readonly apart: "combo" | "page" | "lasting test" | undefined;
  /** One for both, or their accounts could not be set side by side. */
  readonly target: AccountTarget | undefined;
  readonly preferences: Choices;
}

/**
 * Two runs or two sessions, figure by figure. Two runs are compared by their laps (rank-sum shift, Hodges–Lehmann; Mann &
 * Whitney 1947; five pace laps on either side), which tells of these laps and claims nothing of the driver: laps of one run
 * are alike. Two sessions are compared by the usual laps of their runs, three runs of five pace laps on either side. Where
 * times do not compare (another combo, a new page, a wet run beside a dry one) there is no shift and no account.
 */
export function sideBySide(input: SideBySideInput): SideBySide {
  const { kind, target, preferences } = input;
  const [first, second] = input.apart === "lasting test" ? untold(input) : [input.first, input.second];
  const apart = input.apart ?? (kind === "run" ? runsApart(first.runs[0], second.runs[0]) : undefined);
  const against = apart === undefined ? target : undefined;
  return {
    first: sideFigures(kind, first, against, preferences),
    second: sideFigures(kind, second, against, preferences),
    apart,
    target: against,
    shift: kind === "run" ? shiftOfLaps(first, second, preferences) : shiftOfRuns(first, second, preferences),
  };
}

/** Both without their runs: none of their laps is counted. */
function untold({ first, second }: SideBySideInput): readonly [SideInput, SideInput] {
  return [
    { ...first, runs: [] },
    { ...second, runs: [] },
  ];
}

/** Why the laps of two runs do not compare: each stands apart in a way of its own. Wet laps compare with wet ones. */
function runsApart(first: Run | undefined, second: Run | undefined): NotCompared | undefined {
  const kinds = [first, second].map(
    (run) => run && (standsApart(run) ?? (run.kind === "race" ? "race" : undefined)),
  );
  const [a, b] = kinds;
  if (a === "wet" && b === "wet") return undefined;
  if (a === "race" && b === "race") return undefined;
  return a ?? b;
}

function sideFigures(
  kind: "run" | "session",
  { session, runs }: SideInput,
  target: AccountTarget | undefined,
  preferences: Choices,
): SideFigures {
  const digest = sessionDigest(session, runs, preferences);
  const [run] = runs;
  return {
    ...(kind === "run" && run !== undefined ? ofRun(run, preferences) : ofSession(digest)),
    cleanShare: wilsonInterval(digest.clean, digest.timed, CONFIDENCE),
    account:
      target === undefined
        ? unknown({ because: "nothing to measure a session against" })
        : accountOfLaps([accountLaps(digest)], target.ms),
    sectors: sectorAccount(sectorsOf([digest], "paceBests")),
  };
}

type Times = Pick<SideFigures, "laps" | "best" | "usual" | "usualDecimals" | "scatter">;

function ofRun(run: Run, preferences: Choices): Times {
  const { laps, best, usual, usualDecimals, scatter } = runTimes(run, preferences);
  return { laps, best, usual, usualDecimals, scatter };
}

function ofSession({ pace, bestClean }: SessionDigest): Times {
  return {
    laps: pace.laps,
    best:
      bestClean === undefined
        ? unknown({ needs: 1, of: "clean lap", has: 0 })
        : known({ ms: bestClean.ms, decimals: bestClean.decimals, lapId: bestClean.lapId }),
    usual: pace.median === undefined ? unknown({ needs: 1, of: "pace lap", has: 0 }) : known(pace.median),
    usualDecimals: pace.medianDecimals,
    scatter: pace.consistency,
  };
}

function shiftOfLaps(first: SideInput, second: SideInput, preferences: Choices): Figure<SideShift> {
  const [a, b] = [first, second].map(({ runs: [run] }) =>
    run === undefined ? [] : runTimes(run, preferences).counted.map(({ lap }) => lap.ms as number),
  ) as [number[], number[]];
  const has = Math.min(a.length, b.length);
  if (has < leastForSpread)
    return unknown({ needs: leastForSpread, of: "pace lap", has, where: "on one side" });
  return shiftBetween("lap", a, b);
}

function shiftOfRuns(first: SideInput, second: SideInput, preferences: Choices): Figure<SideShift> {
  const [a, b] = [first, second].map((side) => mediansOfRuns(side, preferences)) as [number[], number[]];
  const has = Math.min(a.length, b.length);
  const each = { needs: leastForSpread, of: "pace lap" } as const;
  if (has < LEAST_RUNS)
    return unknown({ needs: LEAST_RUNS, of: "pace run", each, has, where: "on one side" });
  return shiftBetween("run", a, b);
}

function mediansOfRuns({ session, runs }: SideInput, preferences: Choices): number[] {
  const placed = sessionLaps(session, runs, preferences);
  return placed.runs.flatMap((_, index) => {
    const times = placed.laps
      .filter(({ run, place }) => run === index && place === "pace")
      .map(({ lap }) => lap.ms as number);
    const middle = times.length < leastForSpread ? undefined : median(times);
    return middle === undefined ? [] : [middle];
  });
}

function shiftBetween(by: SideShift["by"], a: readonly number[], b: readonly number[]): Figure<SideShift> {
  const { estimate, low, high } = rankSumTest(b, a, CONFIDENCE) ?? { estimate: 0, low: 0, high: 0 };
  return known({ estimate, low, high, by, first: a.length, second: b.length });
}
