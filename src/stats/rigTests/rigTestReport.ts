import { type Figure, type Id, known, type RigTest, type Run, type TestFigure, unknown } from "#domain";
import { median } from "#numbers";
import type { Choices } from "../laps/choices.ts";
import type { RankTest } from "./findings.ts";
import { type OrderedTTest, orderedPairsTTest } from "./orderedPairsTTest.ts";
import { leastPairs, testLevel } from "./pairsNeeded.ts";
import { signedRankTest } from "./signedRankTest.ts";
import { type FigureOfRun, testFigure } from "./testFigure.ts";
import { type TestProgress, testProgress } from "./testProgress.ts";

/** Pairs a verdict needs. */
const LEAST_PAIRS = leastPairs(testLevel);
/** A shift of more than this share of the lap usually means mixed-up combos or conditions. */
const QUESTIONED_SHARE = 0.03;

/** One pair of runs with the figures of both, ms. */
export interface RigPair {
  readonly first: "A" | "B";
  readonly a: number;
  readonly b: number;
  /** B less A; negative means that B was faster, or steadier. */
  readonly difference: number;
}

/** What a finished rig test says. "A" and "B": that one has the smaller figure, faster or steadier. */
export interface RigVerdict extends OrderedTTest {
  readonly finding: "A" | "B" | "no clear difference";
}

interface AnyReport {
  readonly figure: TestFigure;
  readonly progress: TestProgress;
  readonly planned: number;
  readonly complete: number;
  readonly verdict: Figure<RigVerdict>;
}

/** A test that lasts: how far it is, and nothing of how the settings compare. */
export interface RunningTestReport extends AnyReport {
  readonly isOver: false;
  readonly verdict: Figure<never>;
}

/** All that the screen says about a test that is over. Differences are B less A, ms. */
export interface FinishedTestReport extends AnyReport {
  readonly isOver: true;
  /** The complete pairs. */
  readonly pairs: readonly RigPair[];
  /** The t interval with the order taken out, fixed beforehand as the one that decides. */
  readonly verdict: Figure<RigVerdict>;
  /** The same figures where no verdict may be given: an estimate, no claim. */
  readonly estimate: OrderedTTest | undefined;
  /** Wilcoxon's signed-rank test, shown as a check and never chosen instead. */
  readonly check: RankTest | undefined;
  /** More than 3 % of the lap: were combos or conditions mixed up? */
  readonly isQuestioned: boolean;
}

export type RigTestReport = RunningTestReport | FinishedTestReport;

/**
 * Reads a rig test. The unit is the run, not the lap. Our methods, §7. While the test lasts nothing is told of how the
 * settings compare: looking after each pair would find differences that are none. A verdict is given only after as many
 * pairs as were planned, and at least six; a test stopped early gives its estimate and no claim.
 * @param runs any runs, those of the test among them, without deleted ones
 * @param sessionId where the next run would be driven, as in `testProgress`
 */
export function rigTestReport(
  test: RigTest,
  runs: readonly Run[],
  choices: Choices,
  sessionId?: Id | null,
): RigTestReport {
  const progress = testProgress(test, runs, choices, sessionId);
  const { planned, complete } = progress;
  const any = { figure: test.figure ?? "usual", progress, planned, complete };
  if (!progress.isOver) {
    const needs = Math.max(LEAST_PAIRS, planned);
    return { ...any, isOver: false, verdict: unknown({ needs, of: "pair of runs", has: complete }) };
  }
  const read = pairsRead(test, progress, runs, choices);
  const pairs = read.map(
    ({ first, a, b }): RigPair => ({ first, a: a.ms, b: b.ms, difference: b.ms - a.ms }),
  );
  const estimate = orderedPairsTTest(pairs, 1 - test.level);
  const usual = median(read.map(({ a }) => a.usualMs));
  const differences = pairs.map(({ difference }) => difference);
  return {
    ...any,
    isOver: true,
    pairs,
    verdict: verdictOf(test, complete, estimate),
    estimate,
    check: signedRankTest(differences, 1 - test.level),
    isQuestioned:
      estimate !== undefined && usual !== undefined && Math.abs(estimate.estimate) > QUESTIONED_SHARE * usual,
  };
}

interface PairRead {
  readonly first: "A" | "B";
  readonly a: FigureOfRun;
  readonly b: FigureOfRun;
}

function pairsRead(
  test: RigTest,
  { pairs }: TestProgress,
  runs: readonly Run[],
  choices: Choices,
): PairRead[] {
  const byId = new Map(runs.map((run) => [run.id, run]));
  const read = (runId: string | undefined) => {
    const run = runId === undefined ? undefined : byId.get(runId);
    const figure = run && testFigure(run, test, choices).figure;
    return figure?.known ? figure.value : undefined;
  };
  return pairs.flatMap(({ first, a, b }) => {
    const [ofA, ofB] = [read(a?.runId), read(b?.runId)];
    return ofA && ofB ? [{ first, a: ofA, b: ofB }] : [];
  });
}

function verdictOf(
  { pairsPlanned: planned, kept }: RigTest,
  complete: number,
  estimate: OrderedTTest | undefined,
): Figure<RigVerdict> {
  // A setting is kept at the end of a full test too: runs of it may be on another device.
  if (complete < planned)
    return unknown({
      because: kept === undefined ? "test stopped early" : "pairs not here",
      pairs: complete,
      planned,
    });
  if (complete < LEAST_PAIRS) return unknown({ needs: LEAST_PAIRS, of: "pair of runs", has: complete });
  if (estimate === undefined) return unknown({ because: "pairs that do not differ" });
  const { low, high } = estimate;
  const finding = high < 0 ? "B" : low > 0 ? "A" : "no clear difference";
  return known({ ...estimate, finding });
}
