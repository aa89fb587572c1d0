import { useId } from "react";
import { driveLine, leaveOutLine } from "#db";
import type { Id, Run } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { ButtonRow } from "#ui/ButtonRow.tsx";
import { Dialog } from "#ui/Dialog.tsx";
import { Name } from "#ui/Name.tsx";
import { sayLineInShort, sayMet } from "#words";
import styles from "./PickLine.module.css";
import type { PlanTonight } from "./planTonight.ts";
import { TypedCount } from "./TypedCount.tsx";

interface PickLineProps {
  readonly plan: PlanTonight;
  readonly run: Run;
  /** No lap of it is there yet: its line can still be left out. */
  readonly isBetween: boolean;
  readonly onClose: () => void;
}

/** Which line of the plan the run drives, one press each; or none of them. A line that was left out is taken in again by it. */
export function PickLine({ plan, run, isBetween, onClose }: PickLineProps) {
  const write = useWrite();
  const countId = useId();
  const drive = (lineId: Id | undefined) => {
    onClose();
    void write((book) => driveLine(book, { runId: run.id, lineId }), { isUndoOffered: true });
  };
  const { line } = plan;
  const lineId = line?.id;
  const leaveOut = (id: Id) => {
    onClose();
    void write((book) => leaveOutLine(book, { sessionId: run.sessionId, lineId: id }), {
      isUndoOffered: true,
    });
  };
  return (
    <Dialog
      title="Which line does this run drive?"
      focus="title"
      onClose={onClose}
      actions={
        <ButtonRow
          main={
            <Button size="between" variant="primary" onClick={onClose}>
              Done
            </Button>
          }
        />
      }
    >
      <ol className={styles["list"]} aria-label="Lines of the plan">
        {plan.outcomes.map((outcome) => (
          <li key={outcome.line.id}>
            <button
              type="button"
              className={styles["line"]}
              aria-current={outcome.line === line || undefined}
              onClick={() => drive(outcome.line.id)}
            >
              <span className={styles["name"]}>
                <Name>{sayLineInShort(outcome.line)}</Name>
              </span>
              <span className={styles["met"]}>{outcome.line === line ? "this run" : sayMet(outcome)}</span>
            </button>
          </li>
        ))}
      </ol>
      <div className={styles["ways"]}>
        {line !== undefined && (
          <Button size="between" onClick={() => drive(undefined)}>
            No line: a run of its own
          </Button>
        )}
        {lineId !== undefined && isBetween && run.counts === undefined && (
          <Button size="between" onClick={() => leaveOut(lineId)}>
            Leave its line out
          </Button>
        )}
      </div>
      {line?.drill !== undefined && (
        <section aria-labelledby={countId}>
          <p id={countId}>How many worked in this run, of how many tries:</p>
          <TypedCount runId={run.id} drill={line.drill} corner={line.corner} />
        </section>
      )}
    </Dialog>
  );
}
