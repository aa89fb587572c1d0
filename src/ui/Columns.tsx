import type { ReactNode } from "react";
import styles from "./Columns.module.css";

interface ColumnsProps {
  readonly children: readonly [ReactNode, ReactNode];
  /** How many of the desk's twelve columns the first one takes; half of them unless said. */
  readonly share?: 6 | 7 | 8;
  /** On paper side by side too, half and half; else one under the other. */
  readonly onPaper?: "beside";
}

/** Two columns of use where a desk has room for them; on a phone the second stands under the first. */
export function Columns({ children: [first, second], share = 6, onPaper }: ColumnsProps) {
  return (
    <div className={styles["box"]}>
      <div className={styles["columns"]} data-share={share} data-paper={onPaper}>
        <div className={styles["column"]}>{first}</div>
        <div className={styles["column"]}>{second}</div>
      </div>
    </div>
  );
}
