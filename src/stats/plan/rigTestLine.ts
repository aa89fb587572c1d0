import type { PlanFacts } from "./planFacts.ts";
import { type DraftLine, rules } from "./planRules.ts";

/** The next run of a rig test as a line of a plan; undefined where none waits. */
export function rigTestLine(facts: PlanFacts): DraftLine | undefined {
  return rules.find(({ rule }) => rule === "rig test")?.lines(facts)[0];
}
