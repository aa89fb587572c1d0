import type { Corner, PlannedRun } from "#domain";
import type { PlanFacts } from "#stats";
import { Part } from "#ui/Part.tsx";
import { PlanRow } from "#ui/PlanRow.tsx";
import { sayRunTask } from "#words";
import { LineEvidence } from "./LineEvidence.tsx";
import styles from "./Plan.module.css";

interface FirstRunProps {
  readonly line: PlannedRun | undefined;
  readonly isOwn: boolean;
  readonly facts: PlanFacts;
  readonly corners: readonly Corner[];
}

/** The one suggestion for the next session, large, with its reason. */
export function FirstRun({ line, isOwn, facts, corners }: FirstRunProps) {
  if (line === undefined) return null;
  return (
    <div className={styles["first"]}>
      <Part
        title={isOwn ? "What your plan is for" : "What to do next"}
        aside={isOwn ? "Your plan" : "Drafted from your figures"}
        ruled
      >
        <PlanRow line={line} task={sayRunTask(line)} isLarge>
          <LineEvidence line={line} facts={facts} corners={corners} />
        </PlanRow>
      </Part>
    </div>
  );
}
