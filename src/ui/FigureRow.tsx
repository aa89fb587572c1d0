import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import styles from "./FigureRow.module.css";

export interface LabelledFigure {
  readonly label: string;
  /** "—" with the reason as detail when there is too little to say. */
  readonly value: ReactNode;
  readonly detail?: ReactNode;
  readonly tone?: "plain" | "gain" | "loss";
}

/** A few large figures side by side, each with its name above and what it is measured against below. */
export function FigureRow({ figures }: { readonly figures: readonly LabelledFigure[] }) {
  return (
    <dl className={styles["row"]}>
      {figures.map((figure) => (
        <div key={figure.label}>
          <dt className={styles["label"]}>{figure.label}</dt>
          <dd className={styles["value"]}>{figure.value}</dd>
          {figure.detail !== undefined && (
            <dd
              className={classes(
                styles["detail"],
                figure.tone !== undefined && figure.tone !== "plain" && styles[figure.tone],
              )}
            >
              {figure.detail}
            </dd>
          )}
        </div>
      ))}
    </dl>
  );
}
