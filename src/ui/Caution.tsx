import { type ReactNode, useState } from "react";
import { Button } from "./Button.tsx";
import styles from "./Caution.module.css";
import { Notice } from "./Notice.tsx";

interface CautionProps {
  /** What stands in its place once it has been read. */
  readonly line: string;
  readonly children: ReactNode;
  /** The driver has read it before. */
  readonly isRead: boolean;
  /** Folds it; absent where it has to stay in full. */
  readonly onRead?: (() => void) | undefined;
}

/** A caution in full; once read it is a line, and a press away. */
export function Caution({ line, children, isRead, onRead }: CautionProps) {
  const [isAsked, setAsked] = useState(false);
  if (isRead && !isAsked && onRead !== undefined)
    return (
      <p className={styles["line"]}>
        Caution: {line}{" "}
        <Button variant="quiet" aria-label={`Show the caution: ${line}`} onClick={() => setAsked(true)}>
          Show
        </Button>
      </p>
    );
  const fold = () => {
    setAsked(false);
    onRead?.();
  };
  return (
    <Notice
      tone="caution"
      isLong
      actions={
        onRead && (
          <Button variant="quiet" aria-label={`I have read the caution: ${line}`} onClick={fold}>
            I have read it
          </Button>
        )
      }
    >
      <p>{children}</p>
    </Notice>
  );
}
