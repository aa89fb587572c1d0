import type { ReactNode, Ref } from "react";
import styles from "./ButtonRow.module.css";

interface ButtonRowProps {
  /** What the form or dialog is for. */
  readonly main: ReactNode;
  /** The other ways on, the least of a loss first. */
  readonly others?: ReactNode;
  /** What removes something: apart from the rest, at the far end. */
  readonly removes?: ReactNode;
  readonly ref?: Ref<HTMLDivElement>;
}

/**
 * The buttons under a form or a dialog, and the one place that says in which order they stand: what removes first and apart,
 * then the other ways, and the main button last, at the right.
 */
export function ButtonRow({ main, others, removes, ref }: ButtonRowProps) {
  return (
    <div ref={ref} className={styles["row"]}>
      {removes !== undefined && (
        <div className={styles["removes"]} data-part="removes">
          {removes}
        </div>
      )}
      {others}
      <div className={styles["main"]} data-part="main">
        {main}
      </div>
    </div>
  );
}
