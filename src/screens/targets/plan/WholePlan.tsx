import type { DrivenCombo } from "#live";
import type { PlanFacts } from "#stats";
import { Part } from "#ui/Part.tsx";
import { PlanRow } from "#ui/PlanRow.tsx";
import { sayPlanSize, sayRunTask } from "#words";
import { LineEvidence } from "./LineEvidence.tsx";
import styles from "./Plan.module.css";
import type { ShownPlan } from "./useShownPlan.ts";

interface WholePlanProps {
  readonly combo: DrivenCombo;
  readonly plan: ShownPlan;
  /** Index of the line that is the one suggestion. */
  readonly first: number;
  readonly facts: PlanFacts;
}

/** The whole session, run by run. */
export function WholePlan({ plan: { lines, minutes }, first, facts: { evening } }: WholePlanProps) {
  return (
    <Part title="The whole session" aside={sayPlanSize(lines, { lapMs: evening?.lapMs, minutes })} ruled>
      <ol className={styles["lines"]}>
        {lines.map((line, index) => (
          <li key={line.id} className={styles["line"]}>
            <PlanRow
              line={line}
              n={index + 1}
              task={sayRunTask(line)}
              hasReason={index !== first}
              {...(index === first && { mark: "see above" })}
              hasBoxes
            >
              {index !== first && <LineEvidence line={line} />}
            </PlanRow>
          </li>
        ))}
      </ol>
    </Part>
  );
}
