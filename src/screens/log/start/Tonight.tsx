import { type PlannedRun, type Preferences, unbroken } from "#domain";
import { type DrivenCombo, usePlan, useToday } from "#live";
import { printAddress } from "#state/address.ts";
import { suggestionIn } from "#stats";
import { Button } from "#ui/Button.tsx";
import { Name } from "#ui/Name.tsx";
import { PlanRow } from "#ui/PlanRow.tsx";
import { sayRunTask } from "#words";
import { linesToCome } from "../plan/linesToCome.ts";
import styles from "./Tonight.module.css";

interface TonightProps {
  readonly combo: DrivenCombo;
  readonly preferences: Preferences;
  /** Starts a session with these lines, without ids yet. */
  readonly onStart: (lines: readonly PlannedRun[]) => void;
}

/** The next session with a combo: the one suggestion with its reason, the other runs in a line each, and the way to all of it. */
export function Tonight({ combo, preferences, onStart }: TonightProps) {
  const today = useToday(preferences);
  const next = usePlan(combo.id, today);
  if (next === undefined || next.found === null) return null;
  const lines = linesToCome(next, combo.layout);
  const at = suggestionIn(lines);
  const isDraft = next.own === undefined;
  return (
    <>
      <ol className={styles["lines"]} aria-label="Runs of tonight">
        {lines.map((line, index) => (
          <li key={line.id} className={styles["line"]} data-first={index === at || undefined}>
            {index === at ? <PlanRow line={line} task={sayRunTask(line)} isLarge /> : <InALine line={line} />}
          </li>
        ))}
      </ol>
      <div className={styles["ways"]}>
        {isDraft && (
          <Button size="between" onClick={() => onStart(lines)}>
            Start with this plan
          </Button>
        )}
        <a
          className={styles["way"]}
          href={printAddress({ place: "targets", comboId: combo.id, part: "plan" })}
        >
          The whole plan
        </a>
      </div>
    </>
  );
}

function InALine({ line }: { readonly line: PlannedRun }) {
  return (
    <p className={styles["short"]}>
      <span className={styles["purpose"]}>
        <Name>{line.purpose}</Name>
      </span>
      <span className={styles["task"]}>{unbroken(sayRunTask(line))}</span>
    </p>
  );
}
