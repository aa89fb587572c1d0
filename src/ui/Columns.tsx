import type { ReactNode } from "react";
import styles from "./Columns.module.css";

interface ColumnsProps {
  readonly children: readonly [ReactNode, ReactNode];
  /** How many of the desk's twelve columns the first one takes; half of them unless said. */
  readonly share?: 6 | 7 | 8;
}

/** Two columns of use where a desk has room for them; on a phone the second stands under the first. */
export function Columns({ children: [first, second], share = 6 }: ColumnsProps) {
  return (
    <div className={styles["box"]}>
      <div className={styles["columns"]} data-share={share}>
        <div className={styles["column"]}>{first}</div>
        <div className={styles["column"]}>{second}</div>
      </div>
    </div>
  );
}
