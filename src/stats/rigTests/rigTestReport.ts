import { type Figure, type Id, known, type RigTest, type Run, unknown } from "#domain";
import { median } from "#numbers";
import type { Choices } from "../laps/choices.ts";
import { placedRun } from "../laps/sessionLaps.ts";
import type { RankTest } from "./findings.ts";
import { type OrderedTTest, orderedPairsTTest } from "./orderedPairsTTest.ts";
import { signedRankTest } from "./signedRankTest.ts";

/** Pairs a verdict needs. */
const LEAST_PAIRS = 6;
/** A shift of more than this share of the lap usually means mixed-up combos. */
const TOO_GOOD = 0.1;

/** One pair of runs with the medians of their pace laps, ms. */
export interface RigPair {
  readonly first: "A" | "B";
  readonly medianA: number | undefined;
  readonly medianB: number | undefined;
  /** B less A; negative means that B was faster. */
  readonly difference: number | undefined;
}

/** What a finished rig test says. */
export interface RigVerdict extends OrderedTTest {
  readonly finding: "A faster" | "B faster" | "no clear difference";
}

/** All that the screen says about a rig test. Differences are B less A, ms. */
export interface RigTestReport {
  readonly pairs: readonly RigPair[];
  /** Pairs with a median on both sides. */
  readonly complete: number;
  readonly planned: number;
  /** The t interval with the order taken out, fixed beforehand as the one that decides. */
  readonly verdict: Figure<RigVerdict>;
  /** The same figures before the verdict may be given: an estimate, no claim. */
  readonly estimate: OrderedTTest | undefined;
  /** Wilcoxon's signed-rank test, shown as a check and never chosen instead. */
  readonly check: RankTest | undefined;
  /** More than a tenth of a lap: were the combos mixed up? */
  readonly isTooGood: boolean;
}

/**
 * Reads a rig test. The unit is the run, not the lap. A verdict is given only after as many pairs as were planned, and
 * at least six: looking after each pair would find differences that are none.
 * @param runs the test's runs, without deleted ones
 */
export function rigTestReport(test: RigTest, runs: readonly Run[], choices: Choices): RigTestReport {
  const medianOf = (id: Id | undefined) => {
    const run = runs.find((candidate) => candidate.id === id);
    if (run === undefined || run.guest !== undefined) return undefined;
    const pace = placedRun(run, 0, run.startedAt, choices).filter((placed) => placed.place === "pace");
    return median(pace.map((placed) => placed.lap.ms as number));
  };
  const pairs = test.pairs.map(({ first, runA, runB }): RigPair => {
    const [medianA, medianB] = [medianOf(runA), medianOf(runB)];
    const isComplete = medianA !== undefined && medianB !== undefined;
    return { first, medianA, medianB, difference: isComplete ? medianB - medianA : undefined };
  });
  const ordered = pairs.flatMap(({ first, difference }) =>
    difference === undefined ? [] : [{ first, difference }],
  );
  const estimate = orderedPairsTTest(ordered, 1 - test.level);
  const usual = median(pairs.flatMap(({ medianA }) => medianA ?? []));
  return {
    pairs,
    complete: ordered.length,
    planned: test.pairsPlanned,
    verdict: verdictOf(test, ordered.length, estimate),
    estimate,
    check: signedRankTest(
      ordered.map((pair) => pair.difference),
      1 - test.level,
    ),
    isTooGood:
      estimate !== undefined && usual !== undefined && Math.abs(estimate.estimate) > TOO_GOOD * usual,
  };
}

function verdictOf(test: RigTest, complete: number, estimate: OrderedTTest | undefined): Figure<RigVerdict> {
  const least = Math.max(LEAST_PAIRS, test.pairsPlanned);
  if (complete < least) {
    return unknown(
      test.endedAt === undefined
        ? { needs: least, of: "pair of runs", has: complete }
        : { because: "test stopped early", pairs: complete, planned: least },
    );
  }
  if (estimate === undefined) return unknown({ because: "pairs that do not differ" });
  const { low, high } = estimate;
  const finding = high < 0 ? "B faster" : low > 0 ? "A faster" : "no clear difference";
  return known({ ...estimate, finding });
}
