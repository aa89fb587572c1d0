import { useId, useState } from "react";
import type { PlannedRun } from "#domain";
import { Button } from "#ui/Button.tsx";
import { planRests } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";

interface LineEvidenceProps {
  readonly context: PlanContext;
  readonly line: PlannedRun;
}

/** What a line of the plan rests on, one press away; nothing where the driver wrote it. */
export function LineEvidence({ context: { facts, combo }, line }: LineEvidenceProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const rests = line.reason === undefined ? [] : planRests(line, facts, combo.layout.corners);
  if (rests.length === 0) return null;
  return (
    <div className={styles["evidence"]}>
      <Button
        variant="quiet"
        aria-expanded={isOpen}
        aria-controls={id}
        aria-label={`What this rests on: ${line.purpose}`}
        onClick={() => setOpen(!isOpen)}
      >
        What this rests on
      </Button>
      <dl id={id} hidden={!isOpen} className={styles["rests"]}>
        {rests.map(({ title, says }) => (
          <div key={title}>
            <dt>{title}</dt>
            {says !== "" && <dd>{says}</dd>}
          </div>
        ))}
      </dl>
    </div>
  );
}
