import { type KeyboardEvent, useEffect, useRef } from "react";
import type { VerdictShapeOf } from "#charts/verdict/VerdictShape.tsx";
import type { RunVerdict } from "#stats";
import { Button } from "#ui/Button.tsx";
import type { RunFigure, VerdictWords } from "#words";
import { fieldId } from "../entry/EntryPanel.tsx";
import type { SaidRun } from "../session/sessionFigures.ts";
import styles from "./BigView.module.css";
import { SmallFigures } from "./SmallFigures.tsx";
import { VerdictHead } from "./VerdictHead.tsx";
import { VerdictStrip } from "./VerdictStrip.tsx";

interface BigViewProps {
  /** The run it is about; undefined before the first lap. */
  readonly said: SaidRun | undefined;
  /** The verdict of the last run, or how the present one stands; undefined before the first lap and while it is worked out. */
  readonly words: VerdictWords | undefined;
  readonly verdict: RunVerdict | undefined;
  readonly shape: VerdictShapeOf | undefined;
  /** Usual and best lap of the run, and the way to the PB. */
  readonly figures: readonly RunFigure[];
  /** The PB that the run brought, if it did. */
  readonly best: string | undefined;
  /** What to do in the next run; while one goes on there is nothing to say yet. */
  readonly next: string | undefined;
  readonly breakDue: string | undefined;
  readonly isAwake: boolean;
  readonly onBack: () => void;
}

/** What may stand in the entry line. */
const ofEntryLine = /^[\da-z+\-−.:,'"/@]$/i;

/**
 * The verdict and the next run, readable from a metre. The first key leads back to the ledger; one that belongs to the
 * entry line is typed there. So does a tap anywhere.
 */
export function BigView(props: BigViewProps) {
  const { said, words, verdict, shape, figures, best, next, breakDue, isAwake, onBack } = props;
  const view = useRef<HTMLDialogElement>(null);
  const back = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    view.current?.showModal?.();
    back.current?.focus();
  }, []);
  const onKeyDown = (event: KeyboardEvent) => {
    const { key, ctrlKey, metaKey, altKey } = event;
    if (["Shift", "Control", "Alt", "AltGraph", "Meta", "CapsLock"].includes(key)) return;
    if (ctrlKey || metaKey || altKey) return;
    const field = document.getElementById(fieldId);
    if (field !== null && ofEntryLine.test(key)) {
      // The browser types the key into whatever has the focus once this has run.
      view.current?.close?.();
      field.focus({ preventScroll: true });
    } else event.preventDefault();
    onBack();
  };
  return (
    <dialog
      ref={view}
      open={typeof HTMLDialogElement.prototype.showModal === "function" ? undefined : true}
      aria-label="Big view"
      className={styles["view"]}
      onCancel={(event) => {
        event.preventDefault();
        onBack();
      }}
      onKeyDown={onKeyDown}
      onClick={onBack}
    >
      <div className={styles["head"]}>
        <VerdictHead words={words} shape={shape} />
      </div>
      {said !== undefined && (
        <div className={styles["picture"]}>
          <VerdictStrip said={said} verdict={verdict} size="large" />
        </div>
      )}
      <div className={styles["said"]}>
        {figures.length > 0 && <SmallFigures figures={figures} />}
        {best !== undefined && <p className={styles["best"]}>{best}</p>}
        {words !== undefined && words.sentence !== "" && (
          <p className={styles["sentence"]}>{words.sentence}</p>
        )}
        {next !== undefined && (
          <p className={styles["next"]}>
            <strong>Next:</strong> {next}
          </p>
        )}
        {breakDue !== undefined && <p className={styles["sentence"]}>{breakDue}</p>}
      </div>
      <div className={styles["foot"]}>
        <Button ref={back} size="between" variant="primary" onClick={onBack}>
          Back to the ledger
        </Button>
        {!isAwake && <p className={styles["hint"]}>This browser may let the screen go dark.</p>}
      </div>
    </dialog>
  );
}
