import { type AccountTarget, numberedRuns } from "#combo";
import { type Figure, type LapCounts, type Run, type Session, unknown } from "#domain";
import { CONFIDENCE } from "#numbers";
import type { LapInAccount } from "../account/accountSteps.ts";
import { reachableLap } from "../account/reachableLap.ts";
import { type SectorAccount, sectorAccount } from "../account/sectorAccount.ts";
import { type LapOfSectors, sumOfBestSectors } from "../account/sumOfBestSectors.ts";
import { accountOfLaps, type TimeAccount } from "../account/timeAccount.ts";
import { type WorkOn, workOn } from "../account/workOn.ts";
import { type BestCandidate, bestCandidates } from "../bests/bestCandidates.ts";
import { bestLine } from "../bests/bestLine.ts";
import { fastestOf } from "../bests/fastestOf.ts";
import type { Choices } from "../laps/choices.ts";
import { type PlacedLap, type SessionLaps, sessionLaps } from "../laps/sessionLaps.ts";
import { type BestInARow, threeInARow } from "../pace/bestInARow.ts";
import { type PaceFigures, paceFigures } from "../pace/paceFigures.ts";
import type { NearTheBest } from "../pace/shareWithinMargin.ts";
import { type IndividualsChart, individualsChart } from "../run/individualsChart.ts";
import { type PointedAtLap, pointedAtLaps } from "../run/pointedAtLaps.ts";
import { type Share, wilsonInterval } from "../sample/wilsonInterval.ts";
import { nearSessionBest } from "./nearSessionBest.ts";

/** The individuals chart of a session's pace laps in order. */
export interface SessionChart {
  /** `run` is what the run is called by. */
  readonly laps: readonly { readonly lapId: string; readonly run: number; readonly ms: number }[];
  readonly chart: IndividualsChart | undefined;
  readonly pointedAt: readonly PointedAtLap[];
}

/** All that the screen says about one session. */
export interface SessionReport {
  readonly counts: LapCounts;
  readonly guestLaps: number;
  readonly mistakes: number;
  readonly pace: PaceFigures;
  /** Timed and clean laps of runs written lap by lap. */
  readonly timed: number;
  readonly clean: number;
  /** Share of clean laps among timed laps of runs written lap by lap. */
  readonly cleanShare: Share | undefined;
  readonly nearTheBest: NearTheBest | undefined;
  readonly threeInARow: BestInARow | undefined;
  /** Steps of the personal-best line in this session. */
  readonly newBests: readonly BestCandidate[];
  readonly best: BestCandidate | undefined;
  /** What the account is measured against. */
  readonly target: AccountTarget | undefined;
  readonly account: Figure<TimeAccount>;
  readonly workOn: WorkOn | undefined;
  readonly sectors: Figure<SectorAccount>;
  readonly sumOfBestSectors: Figure<LapOfSectors>;
  readonly reachableLap: Figure<LapOfSectors>;
  readonly chart: SessionChart;
}

/** What a session is looked at with. */
export interface SessionReportInput {
  readonly session: Session;
  readonly runs: readonly Run[];
  readonly preferences: Choices;
  /** From `accountTarget`. */
  readonly target?: AccountTarget | undefined;
  /** Personal best of the page before the session. */
  readonly pbBefore?: { readonly ms: number; readonly decimals?: number } | undefined;
}

/** What one session says. */
export function sessionReport(input: SessionReportInput): SessionReport {
  const { session, runs, preferences, target, pbBefore } = input;
  const sorted = sessionLaps(session, runs, preferences);
  const { laps } = sorted;
  const candidates = bestCandidates(sorted, session.startedAt);
  const paceLaps = laps.filter((placed) => placed.place === "pace");
  const account =
    target === undefined
      ? unknown({ because: "nothing to measure a session against" })
      : accountOfLaps([laps.map(inAccount)], target.ms);
  const maybeBests = laps.filter((placed) => placed.mayBeBest);
  const paceBests = paceLaps.filter((placed) => placed.mayBeBest);
  const sectors = sectorAccount(sectorsOf(paceBests));
  return {
    counts: sorted.counts,
    guestLaps: sorted.guestLaps,
    mistakes: sorted.mistakes,
    pace: paceFigures(laps),
    timed: sorted.timed,
    clean: sorted.clean,
    cleanShare: wilsonInterval(sorted.clean, sorted.timed, CONFIDENCE),
    nearTheBest: nearSessionBest([paceBests.map(({ lap }) => lap.ms as number)], preferences.marginPercent),
    threeInARow: threeInARow(runsOfMaybeBests(sorted)),
    newBests: newBests(candidates, session.startedAt, pbBefore),
    best: fastestOf(candidates),
    target,
    account,
    workOn: workOn(account, sectors),
    sectors,
    sumOfBestSectors: sumOfBestSectors(sectorsOf(maybeBests)),
    reachableLap: reachableLap(sectorsOf(paceBests)),
    chart: chartOf(paceLaps, sorted, runs),
  };
}

/** Sector times of the laps that have as many as most complete one. */
function sectorsOf(laps: readonly PlacedLap[]): (readonly number[])[] {
  const count = Math.max(0, ...laps.map((placed) => placed.lap.sectors?.length ?? 0));
  return laps.flatMap(({ lap: { sectors } }) => (sectors?.length === count && count > 0 ? [sectors] : []));
}

function runsOfMaybeBests({ runs, laps }: SessionLaps): (number | undefined)[][] {
  return runs.map((_, index) =>
    laps
      .filter((placed) => placed.run === index)
      .map((placed) => (placed.mayBeBest ? placed.lap.ms : undefined)),
  );
}

function newBests(
  candidates: readonly BestCandidate[],
  startedAt: number,
  pbBefore: SessionReportInput["pbBefore"],
): BestCandidate[] {
  if (pbBefore === undefined) return bestLine(candidates);
  const before: BestCandidate = {
    lapId: "",
    runId: "",
    sessionId: "",
    kind: "pace",
    isSummary: false,
    at: startedAt - 1,
    ms: pbBefore.ms,
    decimals: pbBefore.decimals ?? 3,
  };
  return bestLine([before, ...candidates]).slice(1);
}

function inAccount({ lap: { ms, isNotBest, isOdd }, place }: PlacedLap): LapInAccount {
  return { ms, place, isNotBest: isNotBest === true, isOdd: isOdd === true };
}

function chartOf(
  paceLaps: readonly PlacedLap[],
  { runs: own }: SessionLaps,
  runs: readonly Run[],
): SessionChart {
  const numbers = new Map(numberedRuns(runs).map(({ run, number }) => [run.id, number]));
  const laps = paceLaps.map(({ lap, run }) => ({
    lapId: lap.id,
    run: numbers.get(own[run]?.id ?? "") ?? 0,
    ms: lap.ms as number,
  }));
  const times = laps.map((lap) => lap.ms);
  return { laps, chart: individualsChart(times), pointedAt: pointedAtLaps(times) };
}
