import {
  type AccountTarget,
  accountTarget,
  bestLapTargets,
  currentRun,
  isDrivenRun,
  type NumberedRun,
  runPlaces,
} from "#combo";
import type { RunsToJudgeBy } from "#db";
import { type Id, isMistake, lapsInOrder, latestMs, type Run } from "#domain";
import type { EntryContext } from "#entry";
import {
  type KnownBest,
  type LapDifferences,
  lapDifferences,
  type RunReport,
  type RunReportInput,
  runReport,
  type SessionReport,
  sessionReport,
} from "#stats";
import { entryContext } from "../entry/entryContext.ts";
import type { SessionData } from "./useSession.ts";

/** What the last run with laps says. */
export interface SaidRun {
  readonly number: number;
  readonly run: Run;
  /** The session's runs before it, in order. */
  readonly runsBefore: readonly Run[];
  readonly report: RunReport;
  /** Its PB has been beaten since, in a later run or session. */
  readonly isBeaten: boolean;
  /** Corners named in its remarks of own mistakes, as often as they were named. */
  readonly corners: readonly number[];
}

/** All that the page of a session shows besides its rows. */
export interface SessionFigures {
  /** What laps are measured against, where that is not the PB. */
  readonly target: AccountTarget | undefined;
  readonly report: SessionReport;
  readonly rows: ReadonlyMap<Id, readonly LapDifferences[]>;
  /** The lap of this session that is the PB of its page still. */
  readonly standingId: Id | undefined;
  /** The run being driven: the last one that has not been ended, of an open session. */
  readonly current: Run | undefined;
  readonly said: SaidRun | undefined;
  /** What another run says; undefined for one without laps. */
  readonly saidOf: (number: number) => SaidRun | undefined;
  /** Number of the run before the one that `said` is about: it was the last complete one, and stays to be read. */
  readonly beforeSaid: number | undefined;
  /** Runs worth a block on the page, in order: those with laps, and the one being driven. */
  readonly shown: readonly NumberedRun<Run>[];
  /** The same, and in their places those that cannot be read, without a run: those after them keep their numbers. */
  readonly blocks: readonly NumberedRun<Run | undefined>[];
  readonly context: EntryContext;
  /** What is known while a lap of another run is typed, or one that is there is typed anew. */
  readonly contextOf: (run: Run, editedId?: Id) => EntryContext;
}

const noneAround: RunsToJudgeBy = { page: [], layout: [], elsewhere: [] };

/**
 * Works out a session's page from its rows.
 * @param pb best of the page before the session
 * @param later best of the page in the sessions after it
 * @param around runs outside the session that laps are judged by
 */
export function sessionFigures(
  data: SessionData,
  pb: KnownBest | undefined,
  later?: KnownBest,
  around: RunsToJudgeBy = noneAround,
): SessionFigures {
  const { session, preferences, layout } = data;
  const target = accountTarget({
    session,
    page: data.page,
    targets: data.targets,
    references: data.references,
    pbBefore: pb?.ms,
  });
  const named = target?.from === "pb" ? undefined : target;
  const current = session.endedAt === undefined ? currentRun(data.runs) : undefined;
  const blocks = runPlaces(data.runs, data.unreadableRuns, current);
  const runs = blocks.flatMap(({ run, number }) => (run === undefined ? [] : [{ run, number }]));
  const report = sessionReport({ session, runs: data.runs, preferences, target, pbBefore: pb });
  const newBest = report.newBests.at(-1);
  const isStanding = newBest && (later === undefined || latestMs(later) >= newBest.ms);
  const contextOf = (run: Run | undefined, editedId?: Id) =>
    entryContext({
      run,
      editedId,
      runs: data.runs,
      around,
      layout,
      preferences,
      pb:
        report.newBests.findLast(({ lapId, isOdd }) => lapId !== editedId && !isOdd) ??
        (pb?.isOdd ? undefined : pb),
      hasEarlierBest: pb !== undefined,
      targetMs: named?.ms,
    });
  const withLaps = runs.filter(({ run }) => isDrivenRun(run));
  const wanted = { targetMs: named?.ms, bestTargetsMs: bestLapTargets(data) };
  const saidOf = (number: number) => saidRun(runs, number, report, data, { pb, later, wanted });
  const last = withLaps.at(-1)?.number;
  return {
    target: named,
    report,
    rows: lapDifferences(data.runs, pb, named?.ms),
    standingId: isStanding ? newBest.lapId : undefined,
    current,
    said: last === undefined ? undefined : saidOf(last),
    saidOf,
    beforeSaid: withLaps.at(-2)?.number,
    shown: runs,
    blocks,
    context: contextOf(current ?? data.runs.findLast(isDrivenRun)),
    contextOf,
  };
}

/** What is known outside the session, and what was wanted. */
interface Around {
  readonly pb: KnownBest | undefined;
  readonly later: KnownBest | undefined;
  readonly wanted: Pick<RunReportInput, "targetMs" | "bestTargetsMs">;
}

function saidRun(
  runs: SessionFigures["shown"],
  number: number,
  { newBests }: SessionReport,
  { preferences }: SessionData,
  { pb, later, wanted }: Around,
): SaidRun | undefined {
  const asked = runs.find((one) => one.number === number);
  if (asked === undefined || !isDrivenRun(asked.run)) return undefined;
  const runsBefore = runs.filter((one) => one.number < number).map((one) => ({ ...one.run, n: one.number }));
  const bestBefore = newBests.findLast(({ runId }) => runsBefore.some(({ id }) => id === runId)) ?? pb;
  const best = newBests.findLast(({ runId }) => runId === asked.run.id) ?? bestBefore;
  const run = { ...asked.run, n: number };
  const corners = lapsInOrder(run)
    .filter(isMistake)
    .flatMap(({ remarks }) => remarks.flatMap(({ corner }) => (corner === undefined ? [] : [corner])));
  return {
    number,
    run,
    runsBefore,
    report: runReport({
      run,
      runsBefore,
      pb: bestBefore,
      hasEarlierBest: pb !== undefined,
      ...wanted,
      preferences,
    }),
    isBeaten:
      (best !== undefined && later !== undefined && latestMs(later) < best.ms) ||
      newBests.some(({ runId }) => runs.some((one) => one.run.id === runId && one.number > number)),
    corners,
  };
}
