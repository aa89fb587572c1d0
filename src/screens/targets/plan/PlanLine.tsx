import { moveLine, removeLine } from "#db";
import type { PlannedRun } from "#domain";
import { useWrite } from "#live";
import { Button } from "#ui/Button.tsx";
import { PlanRow } from "#ui/PlanRow.tsx";
import { sayRunTask, withReasonNow } from "#words";
import { LineEvidence } from "./LineEvidence.tsx";
import styles from "./Plan.module.css";
import type { PlanContext } from "./planContext.ts";
import { type TypedLine, typedOf } from "./typedLine.ts";
import type { MovedLine } from "./useFocusInLines.ts";

interface PlanLineProps {
  readonly context: PlanContext;
  readonly line: PlannedRun;
  readonly index: number;
  /** It is the one suggestion, which stands above with its reason. */
  readonly isFirst: boolean;
  readonly onEdit: (start: TypedLine) => void;
  readonly onMoved: (moved: MovedLine) => void;
  readonly onGone: (index: number) => void;
}

/** One run of the plan with what can be done with it. */
export function PlanLine({ context, line, index, isFirst, onEdit, onMoved, onGone }: PlanLineProps) {
  const { plan } = context;
  const write = useWrite();
  const { purpose, rigTest } = line;
  const move = (way: MovedLine["way"]) => {
    onMoved({ line, way });
    void write((book) => moveLine(book, plan, { line, by: way === "up" ? -1 : 1 }), { isUndoOffered: true });
  };
  const remove = () => {
    onGone(index);
    void write((book) => removeLine(book, plan, line), { isUndoOffered: true });
  };
  return (
    <PlanRow
      line={withReasonNow(line, context.facts)}
      n={index + 1}
      task={sayRunTask(line)}
      isReasonElsewhere={isFirst}
      hasBoxes
    >
      <div className={styles["buttons"]}>
        {rigTest === undefined && (
          <Button aria-label={`Edit: ${purpose}`} onClick={() => onEdit(typedOf(line))}>
            Edit
          </Button>
        )}
        {index > 0 && (
          <Button data-way="up" aria-label={`Up: ${purpose}`} onClick={() => move("up")}>
            Up
          </Button>
        )}
        {index < plan.lines.length - 1 && (
          <Button data-way="down" aria-label={`Down: ${purpose}`} onClick={() => move("down")}>
            Down
          </Button>
        )}
        <Button variant="quiet" aria-label={`Take out: ${purpose}`} onClick={remove}>
          Take out
        </Button>
      </div>
      {!isFirst && <LineEvidence context={context} line={line} />}
    </PlanRow>
  );
}
