import { learnTheLayout } from "./learnTheLayout.ts";
import type { PlanFacts } from "./planFacts.ts";
import { type Because, isNewCircuit, type PlanRule, rules } from "./planRules.ts";

/** Why lines of a rule would stand in a draft of today; empty where the rule does not speak today. */
export function becauseNow(rule: PlanRule, facts: PlanFacts): readonly Because[] {
  const lines =
    rule === "learn the layout"
      ? isNewCircuit(facts)
        ? learnTheLayout(facts)
        : []
      : rules.filter((one) => one.rule === rule).flatMap((one) => one.lines(facts));
  return lines.map(({ because }) => because);
}
