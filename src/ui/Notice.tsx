import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import styles from "./Notice.module.css";

export interface NoticeProps {
  readonly tone?: "plain" | "caution";
  readonly children: ReactNode;
  /** Buttons: Undo, Try again. */
  readonly actions?: ReactNode;
  /** Of many words: what can be done stands under them, so that they have the whole width. */
  readonly isLong?: boolean;
}

/** A message that stays in the page, with what can be done about it. It is silent: pair it with LiveRegion. */
export function Notice({ tone = "plain", children, actions, isLong = false }: NoticeProps) {
  return (
    <div
      className={classes(styles["notice"], tone === "caution" && styles["caution"], isLong && styles["long"])}
    >
      <div className={styles["words"]}>{children}</div>
      {actions !== undefined && <div className={styles["actions"]}>{actions}</div>}
    </div>
  );
}
