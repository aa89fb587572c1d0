import { useId, useState } from "react";
import type { PlannedRun } from "#domain";
import { Button } from "#ui/Button.tsx";
import { planEvidence, sayEvidence } from "#words";
import styles from "./Plan.module.css";

/** What a line of the plan rests on, one press away; nothing where the driver wrote it. */
export function LineEvidence({ line: { rule, purpose, reason } }: { readonly line: PlannedRun }) {
  const [isOpen, setOpen] = useState(false);
  const id = useId();
  const evidence = Object.entries(planEvidence).find(([name]) => name === rule)?.[1];
  if (evidence === undefined || reason === undefined) return null;
  return (
    <div className={styles["evidence"]}>
      <Button
        variant="quiet"
        aria-expanded={isOpen}
        aria-controls={id}
        aria-label={`What this rests on: ${purpose}`}
        onClick={() => setOpen(!isOpen)}
      >
        What this rests on
      </Button>
      <p id={id} hidden={!isOpen}>
        {sayEvidence(evidence)}
      </p>
    </div>
  );
}
