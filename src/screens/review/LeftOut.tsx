import type { ReactNode } from "react";
import { Button } from "#ui/Button.tsx";
import styles from "./LeftOut.module.css";

interface LeftOutProps {
  /** What is not in the figures, counted. */
  readonly children: ReactNode;
  readonly onSessions: () => void;
}

/** What a figure leaves out, and the way to the laps. */
export function LeftOut({ children, onSessions }: LeftOutProps) {
  return (
    <p className={styles["left"]}>
      <span>{children}</span>{" "}
      <Button variant="quiet" onClick={onSessions}>
        See the sessions
      </Button>
    </p>
  );
}
