import { useEffect, useRef } from "react";
import { Button } from "#ui/Button.tsx";
import styles from "./RestingView.module.css";

interface RestingViewProps {
  /** The last finding. */
  readonly finding: string;
  /** What to do in the next run. */
  readonly next: string;
  /** The usual lap of the run, where there is one. */
  readonly usual: string | undefined;
  readonly isAwake: boolean;
  readonly onBack: () => void;
}

/** The last finding and the next run, readable from a metre; the button or Escape goes back to the ledger, whose page takes the focus home. */
export function RestingView({ finding, next, usual, isAwake, onBack }: RestingViewProps) {
  const view = useRef<HTMLDialogElement>(null);
  const back = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    view.current?.showModal?.();
    back.current?.focus();
  }, []);
  return (
    <dialog
      ref={view}
      open={typeof HTMLDialogElement.prototype.showModal === "function" ? undefined : true}
      aria-label="Resting view"
      className={styles["rest"]}
      onCancel={(event) => {
        event.preventDefault();
        onBack();
      }}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.preventDefault();
        onBack();
      }}
    >
      {usual !== undefined && (
        <p className={styles["usual"]}>
          <small>usual lap</small>
          {usual}
        </p>
      )}
      <p className={styles["finding"]}>{finding}</p>
      <p className={styles["next"]}>{next}</p>
      <Button ref={back} size="between" variant="primary" onClick={onBack}>
        Back to the ledger
      </Button>
      {!isAwake && <p className={styles["hint"]}>This browser may let the screen go dark.</p>}
    </dialog>
  );
}
