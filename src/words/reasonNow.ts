import type { PlannedRun } from "#domain";
import { becauseNow, type PlanFacts, type PlanRule } from "#stats";
import { sayWhy } from "./planWhy.ts";

/** Rules whose reason is a fact of the day: days since or left, laps so far, what went well last time. */
const ofTheDay: readonly PlanRule[] = ["after a break", "learn the layout", "rig test", "again", "target"];

/**
 * A stored line as it is shown: without a reason that was a fact of the day it was drafted on and is none today, such as that
 * the driver has not been here before. Reasons that name their evenings or are true of any day stay.
 * @param facts of today; absent while they are not known
 */
export function withReasonNow<Line extends Pick<PlannedRun, "rule" | "reason">>(
  line: Line,
  facts: PlanFacts | undefined,
): Line {
  const rule = ofTheDay.find((one) => one === line.rule);
  if (rule === undefined || line.reason === undefined) return line;
  const now = facts === undefined ? [] : becauseNow(rule, facts).map(sayWhy);
  if (now.includes(line.reason)) return line;
  const { reason: _reason, ...others } = line;
  return others as Line;
}
