import type { PlanFacts } from "./planFacts.ts";
import type { DraftLine } from "./planRules.ts";

/**
 * The first evening on a circuit: laps to know the way, laps without a mistake at learning effort, and only then one run at
 * pace to begin the record with. Common practice, no source.
 */
export function learnTheLayout({ driven: { laps } }: PlanFacts): readonly DraftLine[] {
  const line = {
    rule: "learn the layout",
    because: { because: "new here", laps },
  } as const;
  return [
    { ...line, kind: "warm-up", laps: 6, effort: "easy", check: { figure: "driven" } },
    { ...line, kind: "pace", laps: 8, effort: "learning", check: { figure: "clean", value: 6 } },
    { ...line, kind: "pace", laps: 8, effort: "brisk", check: { figure: "clean", value: 7 } },
  ];
}
