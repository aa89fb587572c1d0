import { useId, useState } from "react";
import type { Corner, PlannedRun } from "#domain";
import type { PlanFacts } from "#stats";
import { Button } from "#ui/Button.tsx";
import { planRests } from "#words";
import styles from "./Plan.module.css";

interface LineEvidenceProps {
  readonly line: PlannedRun;
  /** Figures as they are now; absent while they are not known. */
  readonly facts?: PlanFacts;
  readonly corners?: readonly Corner[];
}

/** What a line of the plan rests on, one press away: figures, class and claim; nothing where the driver wrote it. */
export function LineEvidence({ line, facts, corners }: LineEvidenceProps) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const rests = planRests(line, facts, corners);
  if (rests.length === 0 || line.reason === undefined) return null;
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
