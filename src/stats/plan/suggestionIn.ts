import type { PlannedRun } from "#domain";

/** What stands beside the one thing that an evening is for. */
const beside: readonly (string | undefined)[] = ["after a break", "warm-up", "again"];

/**
 * Which line of a plan is the one suggestion: the next run of a rig test, else the first that is for more than getting warm. The
 * first of all where there is none.
 * @returns its index
 */
export function suggestionIn(lines: readonly Pick<PlannedRun, "rule" | "kind">[]): number {
  const test = lines.findIndex(({ rule }) => rule === "rig test");
  if (test >= 0) return test;
  const focus = lines.findIndex(
    ({ rule, kind }) => !beside.includes(rule) && (rule !== undefined || kind !== "warm-up"),
  );
  return Math.max(0, focus);
}
