import { numberedRuns, runNumber } from "#combo";
import { aboutRemark, isClean, isMistake, lapsDriven, lapsInOrder, type PlannedRun, type Run } from "#domain";
import { median } from "#numbers";
import type { Choices } from "../laps/choices.ts";
import { runTimes } from "../run/runTimes.ts";
import { asTold } from "./asTold.ts";
import type { TriedLine } from "./planFacts.ts";

/** What became of a line of a plan. */
export interface LineOutcome {
  readonly line: PlannedRun;
  /** What the runs that drove it are called by. */
  readonly runs: readonly number[];
  /** Laps driven for it. */
  readonly laps: number;
  /**
   * `good`: its figure is met · `not yet`: driven, and not met · `too few`: driven, but its figure cannot be told ·
   * `yours`: it has no figure to be told by · `skipped` · `to come`: not driven
   */
  readonly met: "good" | "not yet" | "too few" | "yours" | "skipped" | "to come";
  /** The figure it is told by, in the unit of its check, where there is one; of a drill in thousandths. */
  readonly value: number | undefined;
  /** Of a drill or of clean laps: out of so many. */
  readonly of: number | undefined;
}

/**
 * What became of the lines of a session's plan, in its order. A line is driven by the runs that name it, all of them together;
 * a run of a guest drives none.
 * @param runs of the session, without deleted ones
 */
export function planOutcome(
  plan: readonly PlannedRun[],
  runs: readonly Run[],
  choices: Choices,
): LineOutcome[] {
  // Asked of each lap: the runs are numbered once, one that holds nothing yet by itself.
  const numbers = new Map(numberedRuns(runs).map(({ run, number }) => [run.id, number]));
  return plan.map((line) => {
    const own = runs.filter((run) => isDrivenBy(line, run));
    const laps = own.reduce((sum, run) => sum + lapsDriven(run), 0);
    const about = { line, runs: own.map((run) => numbers.get(run.id) ?? runNumber(run, runs)), laps };
    const hasCounts = own.some(({ counts = [] }) => counts.length > 0);
    if (laps === 0 && !hasCounts)
      return {
        ...about,
        met: line.skipped === true ? "skipped" : "to come",
        value: undefined,
        of: undefined,
      };
    if (line.check === undefined) return { ...about, met: "yours", value: undefined, of: undefined };
    return { ...about, ...judged(line, line.check, own, choices) };
  });
}

/** A line of a rig test is driven by a run of that test alone, and not by one that is void: its place is still to be driven. */
function isDrivenBy({ id, rigTest }: PlannedRun, run: Run): boolean {
  if (id === undefined || run.line !== id || run.guest !== undefined) return false;
  return rigTest === undefined || (run.rigTest?.id === rigTest && run.rigTest.void === undefined);
}

/** Lines of plans that were driven and could be told, as the next draft looks at them. */
export function triedLines(outcomes: readonly LineOutcome[]): TriedLine[] {
  return outcomes
    .filter(({ met, line }) => (met === "good" || met === "not yet") && line.rule !== undefined)
    .map(({ line: { rule = "", corner, drill, laps }, met, value, of }) => ({
      ...{ rule, corner, drill, laps },
      ...(drill !== undefined &&
        value !== undefined &&
        of !== undefined && { came: { good: value, tries: of } }),
      isGood: met === "good",
    }));
}

type Judged = Pick<LineOutcome, "met" | "value" | "of">;

const tooFew: Judged = { met: "too few", value: undefined, of: undefined };

function judged(
  line: PlannedRun,
  { figure, value: wanted = 0 }: NonNullable<PlannedRun["check"]>,
  runs: readonly Run[],
  choices: Choices,
): Judged {
  const laps = runs.flatMap(lapsInOrder);
  const planned = line.laps ?? 0;
  const most = (value: number | undefined): Judged =>
    value === undefined
      ? tooFew
      : { met: asTold(figure, value) <= wanted ? "good" : "not yet", value, of: undefined };
  switch (figure) {
    case "driven": {
      const value = runs.reduce((sum, run) => sum + lapsDriven(run), 0);
      return { met: value >= planned ? "good" : "not yet", value, of: planned };
    }
    case "clean": {
      const value = laps.filter(isClean).length;
      // Out and in laps are no laps of the run's task.
      const of = laps.filter(({ remarks }) => !remarks.some(({ kind }) => aboutRemark(kind).apart)).length;
      if (value >= wanted) return { met: "good", value, of };
      return of < wanted ? { ...tooFew, value, of } : { met: "not yet", value, of };
    }
    case "corner": {
      const value = laps.filter(
        (lap) => isMistake(lap) && lap.remarks.some(({ corner }) => corner === line.corner),
      ).length;
      if (value > wanted) return { met: "not yet", value, of: laps.length };
      return laps.length < planned
        ? { ...tooFew, value, of: laps.length }
        : { met: "good", value, of: laps.length };
    }
    case "drill":
      return ofDrill(line, wanted, runs);
    case "sector":
      return most(
        median(
          laps.filter(isClean).flatMap(({ sectors }) => {
            const ms = line.sector === undefined ? undefined : sectors?.[line.sector - 1];
            return ms === undefined ? [] : [ms];
          }),
        ),
      );
    default: {
      const [run] = runs.toSorted((a, b) => lapsDriven(b) - lapsDriven(a));
      if (run === undefined) return tooFew;
      const { best, usual, scatter } = runTimes(run, choices);
      if (figure === "best") return most(best.known ? best.value.ms : undefined);
      if (figure === "usual") return most(usual.known ? usual.value : undefined);
      return most(scatter.known ? scatter.value.scatterMs : undefined);
    }
  }
}

/** Tries from which a share says something. Common practice, no source. */
const LEAST_TRIES = 5;

function ofDrill(line: PlannedRun, wanted: number, runs: readonly Run[]): Judged {
  const counts = runs
    .flatMap((run) => run.counts ?? [])
    .filter(({ drill, corner }) => drill === line.drill && corner === line.corner);
  const tries = counts.reduce((sum, count) => sum + count.tries, 0);
  const good = counts.reduce((sum, count) => sum + count.good, 0);
  const of = { value: good, of: tries };
  if (tries < LEAST_TRIES) return { met: "too few", ...of };
  return { met: good * 1000 >= wanted * tries ? "good" : "not yet", ...of };
}
