import type { PlannedRun, Preferences, Run } from "#domain";
import { type LineOutcome, planOutcome } from "#stats";
import { listed } from "./counted.ts";
import { sayCameTo, sayMet } from "./planOutcome.ts";
import { sayRunTask } from "./runTask.ts";

/** A line of a plan and what came of it, in words. */
interface SaidOutcome {
  readonly id: string;
  readonly purpose: string;
  readonly task: string;
  readonly goodWhen: string | undefined;
  readonly cameTo: string;
  readonly met: string;
  /** Nobody drove it. */
  readonly isSoft: boolean;
}

/**
 * A session's plan and its outcome side by side, in the plan's order; the same on every screen.
 * @param runs of the session, without deleted ones
 */
export function outcomeRows(
  plan: readonly PlannedRun[],
  runs: readonly Run[],
  preferences: Pick<Preferences, "settlingLaps" | "displayDecimals" | "marginPercent">,
): readonly SaidOutcome[] {
  return planOutcome(plan, runs, preferences).map((outcome, index) => {
    const { line, met } = outcome;
    return {
      id: line.id ?? String(index),
      purpose: line.purpose,
      task: sayRunTask(line),
      goodWhen: line.goodWhen,
      cameTo: withRuns(outcome),
      met: sayMet(outcome),
      isSoft: isLeft(met),
    };
  });
}

const isLeft = (met: LineOutcome["met"]) => met === "skipped" || met === "to come";

/** "7 of 8 laps clean in run 2"; a line that nobody drove came to nothing. */
function withRuns(outcome: LineOutcome): string {
  const { runs, met } = outcome;
  const said = sayCameTo(outcome);
  if (said === "" || isLeft(met)) return "";
  const numbers = listed(runs.map(String));
  return `${said} in ${runs.length === 1 ? "run" : "runs"} ${numbers}`;
}
