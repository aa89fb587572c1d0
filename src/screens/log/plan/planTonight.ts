import { type Id, lineToCome, type PlannedRun, type Preferences, type Run, type Session } from "#domain";
import { type LineOutcome, planOutcome } from "#stats";

/** The plan of an open session, as far as Log has to do with it. */
export interface PlanTonight {
  readonly lines: readonly PlannedRun[];
  /** What became of each of them so far, in their order. */
  readonly outcomes: readonly LineOutcome[];
  /** The line that the run being driven drives, or, with no run open, the one to come; undefined where it drives none. */
  readonly line: PlannedRun | undefined;
  /** What became of the line that the run before it drove; undefined where that drove none, and of a rig test, which tells it itself. */
  readonly before: LineOutcome | undefined;
  /** The line of the run after it. */
  readonly toCome: PlannedRun | undefined;
}

/**
 * The plan of an open session; undefined where it has none. Reckoned from the rows on the page alone.
 * @param current the run being driven
 */
export function planTonight(
  { plan = [], endedAt }: Pick<Session, "plan" | "endedAt">,
  runs: readonly Run[],
  current: Run | undefined,
  preferences: Preferences,
): PlanTonight | undefined {
  const lines = plan.filter(({ id }) => id !== undefined);
  if (endedAt !== undefined || lines.length === 0) return undefined;
  const toCome = lineToCome(lines, runs);
  const driven = current?.guest === undefined ? current?.line : undefined;
  const outcomes = planOutcome(lines, runs, preferences);
  const before = runs.findLast((run) => run !== current);
  return {
    lines,
    outcomes,
    before: outcomes.find(
      ({ line }) => before?.guest === undefined && line.id === before?.line && line.rigTest === undefined,
    ),
    line: current === undefined ? toCome : lines.find(({ id }) => id === driven),
    toCome,
  };
}

/**
 * Whether the next run of a rig test comes before a line of the plan: it does, but where the plan has a place for it of its own,
 * further down.
 */
export function isTestFirst(
  plan: PlanTonight | undefined,
  line: PlannedRun | undefined,
  testId: Id,
): boolean {
  if (plan === undefined || line === undefined || line.rigTest === testId) return true;
  return !plan.outcomes.some((outcome) => outcome.line.rigTest === testId && outcome.met === "to come");
}
