import {
  type Figure,
  isPartlyWritten,
  known,
  latestMs,
  type NotCompared,
  noCounts,
  notWritten,
  type Run,
  standsApart,
  unknown,
} from "#domain";
import { CONFIDENCE } from "#numbers";
import { bestCandidates } from "../bests/bestCandidates.ts";
import { bestLine } from "../bests/bestLine.ts";
import { mayTakeBest } from "../bests/mayTakeBest.ts";
import type { Choices } from "../laps/choices.ts";
import { type PlacedLap, placedRun } from "../laps/sessionLaps.ts";
import { rankSumTest } from "../rigTests/rankSumTest.ts";
import { flyingLaps, isUntidy } from "./isUntidy.ts";
import { ofCleanLaps } from "./ofCleanLaps.ts";
import { pointedAtLaps } from "./pointedAtLaps.ts";
import type { AgainstBest, AgainstRun, AgainstTarget, KnownTime, RunFigures } from "./runFigures.ts";
import { type RunFinding, runFinding } from "./runFinding.ts";
import { hasPace, runTimes } from "./runTimes.ts";
import { runTrend } from "./runTrend.ts";

const LEAST_TO_COMPARE = 5;

/** All that the screen says about one run: its figures, and the one thing to say first. */
export interface RunReport extends RunFigures {
  readonly finding: RunFinding;
}

/** What a run is looked at with. */
export interface RunReportInput {
  readonly run: Run;
  /** The session's runs before it, in any order. */
  readonly runsBefore: readonly Run[];
  /** Personal best of the page before this run, and whether there was one before its session: where not said, as `pb`. */
  readonly hasEarlierBest?: boolean | undefined;
  readonly pb?: { readonly ms: number; readonly decimals?: number } | undefined;
  readonly targetMs?: number | undefined;
  /** Lap times wanted as a best lap, ms. */
  readonly bestTargetsMs?: readonly number[] | undefined;
  readonly preferences: Choices;
}

/**
 * What one run says. A pace run is read by its pace laps; any other (drill, warm-up, race, wet, easy, a guest's, partly
 * written) by its clean laps, for itself alone: one that stands apart is measured against nothing but a best that it took.
 */
export function runReport(input: RunReportInput): RunReport {
  const { run, runsBefore, targetMs, preferences } = input;
  const { placed: laps, counted, ...figures } = runTimes(run, preferences);
  const { isPace, best } = figures;
  const times = counted.map((placed) => placed.lap.ms as number);
  const trend = runTrend(
    counted.map((placed) => ({ number: placed.index + 1, ms: placed.lap.ms as number })),
    CONFIDENCE,
  );
  const mistakes = Math.max(laps.filter((placed) => placed.isMistake).length, run.summary?.off ?? 0);
  const flying = flyingLaps(laps).length + notWritten(run, laps.length);
  const report: RunFigures = {
    ...figures,
    isGuest: run.guest !== undefined,
    counts: countsOf(run, laps),
    trend: isPace ? trend : ofCleanLaps(trend),
    flyingLaps: flying,
    mistakes,
    isUntidy: isUntidy(mistakes, flying),
    againstRunBefore: againstRunBefore(notCompared(run, laps), isPace ? times : [], runsBefore, preferences),
    againstTarget: againstTarget(run, figures, counted, targetMs),
    againstBest: againstBest(best, input),
    firstBest: firstBest(run, laps, input),
    bestTargetReached: bestTargetReached(best, input),
    pointedAt: pointedAtLaps(times).flatMap(({ index, reasons }) => {
      const placed = counted[index];
      return placed === undefined ? [] : [{ lapId: placed.lap.id, number: placed.index + 1, reasons }];
    }),
  };
  return { ...report, finding: runFinding(report) };
}

function countsOf(run: Run, laps: readonly PlacedLap[]) {
  const counts = noCounts();
  for (const placed of laps) counts[placed.place]++;
  counts.notWritten = notWritten(run, laps.length);
  counts.driven = laps.length + counts.notWritten;
  return counts;
}

function notCompared(run: Run, laps: readonly PlacedLap[]): NotCompared | undefined {
  const apart = standsApart(run);
  if (apart !== undefined) return apart;
  if (run.kind === "race") return "race";
  return isPartlyWritten(run, laps.length) ? "partly written" : undefined;
}

function againstRunBefore(
  apart: NotCompared | undefined,
  times: readonly number[],
  runsBefore: readonly Run[],
  preferences: Choices,
): Figure<AgainstRun> {
  if (apart !== undefined) return unknown({ because: "not compared", run: apart });
  if (times.length < LEAST_TO_COMPARE)
    return unknown({ needs: LEAST_TO_COMPARE, of: "pace lap", has: times.length });
  const before = runsBefore
    .toSorted((a, b) => b.n - a.n)
    .map((run) => ({ run, laps: placedRun(run, 0, run.startedAt, preferences) }))
    .find(({ run, laps }) => hasPace(run, laps));
  if (before === undefined) return unknown({ because: "no pace run before" });
  const others = before.laps.filter((lap) => lap.place === "pace").map((lap) => lap.lap.ms as number);
  if (others.length < LEAST_TO_COMPARE) {
    return unknown({ needs: LEAST_TO_COMPARE, of: "pace lap", has: others.length, run: before.run.n });
  }
  const test = rankSumTest(times, others, CONFIDENCE);
  if (test === undefined) return unknown({ because: "both runs the same" });
  const { estimate, low, high, achievedConfidence } = test;
  return known({
    n: before.run.n,
    ms: estimate,
    low,
    high,
    confidence: achievedConfidence,
    isClear: low > 0 || high < 0,
  });
}

function againstTarget(
  run: Run,
  { best, usual, usualDecimals }: Pick<RunFigures, "best" | "usual" | "usualDecimals">,
  laps: readonly PlacedLap[],
  targetMs: number | undefined,
): Figure<AgainstTarget> {
  if (targetMs === undefined) return unknown({ because: "no target" });
  const apart = standsApart(run);
  if (apart !== undefined) return unknown({ because: "not compared", run: apart });
  if (!best.known) return best;
  return known({
    targetMs,
    best: best.value.ms - targetMs,
    bestDecimals: best.value.decimals,
    usual: usual.known ? Math.round(usual.value) - targetMs : undefined,
    usualDecimals,
    reached: laps.filter(
      ({ lap, mayBeBest }) => mayBeBest && latestMs({ ...lap, ms: lap.ms as number }) <= targetMs,
    ).length,
    laps: laps.length,
  });
}

/** The lap that was the page's first personal best, where this run brought it. */
function firstBest(run: Run, laps: readonly PlacedLap[], { pb }: RunReportInput): KnownTime | undefined {
  if (pb !== undefined || run.guest !== undefined) return undefined;
  const first = bestLine(bestCandidates({ runs: [run], laps }, run.startedAt))[0];
  return (
    first && { ms: first.ms, decimals: first.decimals, lapId: first.isSummary ? undefined : first.lapId }
  );
}

function bestTargetReached(
  best: Figure<KnownTime>,
  { pb, bestTargetsMs = [] }: RunReportInput,
): number | undefined {
  if (!best.known) return undefined;
  const [now, before] = [latestMs(best.value), pb === undefined ? Number.POSITIVE_INFINITY : latestMs(pb)];
  const reached = bestTargetsMs.filter((ms) => now <= ms && ms < before);
  return reached.length === 0 ? undefined : Math.min(...reached);
}

function againstBest(
  best: Figure<KnownTime>,
  { run, pb, hasEarlierBest = pb !== undefined }: RunReportInput,
): Figure<AgainstBest> {
  if (!best.known) return best;
  if (pb === undefined) return unknown({ because: "no PB before" });
  const mayTake = mayTakeBest(run.kind, hasEarlierBest);
  const isFaster = latestMs(best.value) < pb.ms;
  const isNew = mayTake && isFaster;
  const apart = standsApart(run);
  if (apart !== undefined && !isNew) return unknown({ because: "not compared", run: apart });
  return known({
    pbMs: pb.ms,
    pbDecimals: pb.decimals ?? 3,
    ms: best.value.ms - pb.ms,
    isNew,
    isLevel: mayTake && !isFaster && best.value.ms <= latestMs(pb),
  });
}
