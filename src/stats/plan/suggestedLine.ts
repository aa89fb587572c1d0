import type { PlannedRun } from "#domain";
import type { PlanRule } from "./planRules.ts";

/** Rules whose lines open an evening: they are driven first, and are not what it is for. */
const beside: readonly string[] = ["after a break", "warm-up", "again"] satisfies readonly PlanRule[];

/**
 * Which line of a plan is the one suggestion: the next run of a rig test, else the first that does more than open the evening.
 * @returns its index, 0 where every line only opens it
 */
export function suggestedLine(lines: readonly Pick<PlannedRun, "rule" | "rigTest">[]): number {
  const test = lines.findIndex(({ rule, rigTest }) => rule === "rig test" || rigTest !== undefined);
  if (test >= 0) return test;
  return Math.max(
    0,
    lines.findIndex(({ rule = "" }) => !beside.includes(rule)),
  );
}
