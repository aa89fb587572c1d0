import { draftAnew, putLine } from "#db";
import { useLogbook, useWrite } from "#live";
import { rigTestLine } from "#stats";
import { Button } from "#ui/Button.tsx";
import { writtenLine } from "#words";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";
import { newDrill, newRun, type TypedLine } from "./typedLine.ts";

interface PlanButtonsProps {
  readonly context: PlanContext;
  readonly onAdd: (start: TypedLine) => void;
}

/** More runs are no evening; files hold no more than fifty. */
const mostLines = 20;

/** What can be done with the whole plan. */
export function PlanButtons({ context: { plan, facts, combo }, onAdd }: PlanButtonsProps) {
  const { surroundings } = useLogbook();
  const write = useWrite();
  const test = rigTestLine(facts);
  const isTestMissing = test !== undefined && plan.lines.every(({ rigTest }) => rigTest !== test.rigTest);
  const addTest = () => {
    if (test === undefined) return;
    const line = { ...writtenLine(test, combo.layout.corners), id: surroundings.newId() };
    void write((book) => putLine(book, plan, { line }), { isUndoOffered: true });
  };
  const anew = () => void write((book) => draftAnew(book, plan), { isUndoOffered: true });
  return (
    <div className={styles["buttons"]}>
      {plan.lines.length < mostLines && (
        <>
          <Button size="between" onClick={() => onAdd(newRun)}>
            Add a run
          </Button>
          <Button size="between" onClick={() => onAdd(newDrill)}>
            Add a drill
          </Button>
          {isTestMissing && (
            <Button size="between" onClick={addTest}>
              Add the next run of the rig test
            </Button>
          )}
        </>
      )}
      {plan.isOwn && (
        <Button size="between" onClick={anew}>
          Draft it anew
        </Button>
      )}
      <Button size="between" variant="quiet" onClick={() => window.print()}>
        Print
      </Button>
    </div>
  );
}
