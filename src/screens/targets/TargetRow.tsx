import { useRef } from "react";
import { archiveTarget, deleteTarget } from "#db";
import { type CalendarDate, type Preferences, sayDate, type Target } from "#domain";
import { type DrivenCombo, useWrite } from "#live";
import type { TargetState } from "#stats";
import { Button } from "#ui/Button.tsx";
import { HalfTyped } from "#ui/HalfTyped.tsx";
import { Name } from "#ui/Name.tsx";
import { ProgressBar } from "#ui/ProgressBar.tsx";
import { useFocusBack } from "#ui/useFocusBack.ts";
import {
  sayKnownFigure,
  sayProgress,
  sayStanding,
  sayTarget,
  sayTargetFigure,
  sayTargetValue,
  targetFigure,
} from "#words";
import { Outlook } from "./Outlook.tsx";
import { TargetForm } from "./TargetForm.tsx";
import styles from "./TargetRow.module.css";
import { isMeasured } from "./typedTarget.ts";
import { useTypedTarget } from "./useTypedTarget.ts";

interface TargetRowProps {
  readonly target: Target;
  readonly combo: DrivenCombo;
  /** Undefined until it has been worked out. */
  readonly state: TargetState | undefined;
  readonly preferences: Preferences;
  readonly today: CalendarDate;
  /** It has gone from here: the focus goes on elsewhere. */
  readonly onGone: () => void;
}

/** One target: what is wanted, how far it has come, and what can be done with it. */
export function TargetRow({ target, combo, state, preferences, today, onGone }: TargetRowProps) {
  const write = useWrite();
  const editing = useTypedTarget(`target ${target.id}`);
  const edit = useRef<HTMLButtonElement>(null);
  useFocusBack(editing.isOpen || undefined, () => edit.current);
  const { id, kind, value, by, process, archivedAt } = target;
  const isArchived = archivedAt !== undefined;
  const name = sayTarget(target);

  const archive = async () => {
    const change = await write((book) => archiveTarget(book, { id, isArchived: !isArchived }), {
      isUndoOffered: true,
    });
    if (change !== undefined) onGone();
  };
  const remove = async () => {
    if (await write((book) => deleteTarget(book, id), { isUndoOffered: true })) onGone();
  };
  if (editing.isOpen && isMeasured(kind))
    return (
      <li className={styles["row"]}>
        <TargetForm
          editing={editing}
          combos={[combo]}
          target={target}
          preferences={preferences}
          today={today}
          onClose={editing.close}
        />
      </li>
    );
  return (
    <li className={styles["row"]}>
      <HalfTyped of={editing.kept} />
      <div className={styles["head"]}>
        <h3 className={styles["name"]}>
          {targetFigure(target)} <span className={styles["value"]}>{sayTargetValue(kind, value)}</span>
        </h3>
        {by !== undefined && <p className={styles["by"]}>by {sayDate(by)}</p>}
      </div>
      {state === undefined ? (
        <p className={styles["figures"]}>Working out how far it has come</p>
      ) : (
        <Progress target={target} state={state} />
      )}
      {state?.standing.kind === "open" && isMeasured(kind) && !isArchived && (
        <Outlook target={target} kind={kind} today={today} />
      )}
      {process !== undefined && (
        <p>
          To do: <Name>{process}</Name>
        </p>
      )}
      <div className={styles["buttons"]}>
        {isMeasured(kind) && (
          <Button ref={edit} aria-label={`Edit: ${name}`} onClick={editing.open}>
            Edit
          </Button>
        )}
        <Button
          aria-label={`${isArchived ? "Take out of the archive" : "Archive"}: ${name}`}
          onClick={archive}
        >
          {isArchived ? "Take out of the archive" : "Archive"}
        </Button>
        <Button variant="quiet" aria-label={`Delete: ${name}`} onClick={remove}>
          Delete
        </Button>
      </div>
    </li>
  );
}

function Progress({ target, state }: { readonly target: Target; readonly state: TargetState }) {
  const { kind, start, setOn } = target;
  const { standing, now, progress } = state;
  // What was driven after its date says nothing of a target that was missed.
  const isMissed = standing.kind === "missed";
  const figures = [
    start !== undefined && `${sayKnownFigure(kind, start)} on ${sayDate(setOn)}, when it was set`,
    now !== undefined && !isMissed && `${sayTargetFigure(kind, now)} now`,
  ].filter((part) => part !== false);
  return (
    <>
      <p className={styles["standing"]}>{sayStanding(state)}</p>
      {progress.known && !isMissed ? (
        <ProgressBar label={figures.join(" · ")} share={progress.value.progress} text={sayProgress(state)} />
      ) : (
        <p className={styles["figures"]}>
          {[...figures, standing.kind === "open" && sayProgress(state)].filter(Boolean).join(" · ")}
        </p>
      )}
    </>
  );
}
