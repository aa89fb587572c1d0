import type { PlannedRun } from "#domain";
import { Part } from "#ui/Part.tsx";
import { PlanRow } from "#ui/PlanRow.tsx";
import { sayRunTask, withReasonNow } from "#words";
import { LineEvidence } from "./LineEvidence.tsx";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";

interface FirstRunProps {
  readonly context: PlanContext;
  readonly line: PlannedRun | undefined;
}

/** The one suggestion for the next session, large, with its reason. */
export function FirstRun({ context, line }: FirstRunProps) {
  if (line === undefined) return null;
  const { isOwn } = context.plan;
  return (
    <div className={styles["first"]}>
      <Part
        title={isOwn ? "What your plan is for" : "What to do next"}
        aside={isOwn ? "Your plan" : "Drafted from your figures"}
        ruled
      >
        <PlanRow line={withReasonNow(line, context.facts)} task={sayRunTask(line)} isLarge>
          <LineEvidence context={context} line={line} />
        </PlanRow>
      </Part>
    </div>
  );
}
