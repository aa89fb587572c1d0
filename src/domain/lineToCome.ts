import type { PlannedRun, Run } from "./rows.ts";

/**
 * The line of a session's plan that its next run drives: the first that is neither left out nor named by a run of the driver's
 * own. Undefined where none is left.
 */
export function lineToCome(
  plan: readonly PlannedRun[] = [],
  runs: readonly Pick<Run, "line" | "deletedAt" | "guest">[],
): PlannedRun | undefined {
  const isFree = (id: PlannedRun["id"]) =>
    id !== undefined &&
    runs.every(({ line, deletedAt, guest }) => line !== id || deletedAt !== undefined || guest !== undefined);
  return plan.find(({ id, skipped }) => skipped !== true && isFree(id));
}
