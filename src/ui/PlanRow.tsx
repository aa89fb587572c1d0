import type { ReactNode } from "react";
import type { PlannedRun } from "#domain";
import { classes } from "./classes.ts";
import { Name } from "./Name.tsx";
import styles from "./PlanRow.module.css";

export interface PlanRowProps {
  readonly line: Omit<PlannedRun, "id">;
  /** Its place in the plan, from 1; absent where it stands alone. */
  readonly n?: number;
  /** What is driven: "8 laps, learning effort". */
  readonly task: string;
  /** The one suggestion of a page: larger than the rows of a list. */
  readonly isLarge?: boolean;
  /** Its reason stands elsewhere on the page: here it is only on paper, where the rest is not. */
  readonly isReasonElsewhere?: boolean;
  /** On paper: a box for each lap to be ticked, and a line to write on. */
  readonly hasBoxes?: boolean;
  /** What can be done with it, and what else belongs to it. */
  readonly children?: ReactNode;
}

/** More would fill the sheet; such a run is counted in the head. */
const mostBoxes = 30;

/** One run of a plan: what it is for, what is driven, the one thing to attend to, when it has worked, and why it is there. */
export function PlanRow(props: PlanRowProps) {
  const { line, n, task, isLarge = false, isReasonElsewhere = false } = props;
  const { hasBoxes = false, children } = props;
  const { purpose, attendTo, goodWhen, reason, laps = 0 } = line;
  return (
    <div className={styles["around"]}>
      <div className={classes(styles["row"], isLarge && styles["large"])}>
        {n !== undefined && (
          <span aria-hidden="true" className={styles["number"]}>
            {n}
          </span>
        )}
        <div className={styles["what"]}>
          <h3 className={styles["purpose"]}>
            <Name>{purpose}</Name>
          </h3>
          <p className={styles["task"]}>{task}</p>
        </div>
        {(attendTo !== undefined || goodWhen !== undefined) && (
          <dl className={styles["terms"]}>
            {attendTo !== undefined && (
              <div>
                <dt>Attend to</dt>
                <dd>
                  <Name>{attendTo}</Name>
                </dd>
              </div>
            )}
            {goodWhen !== undefined && (
              <div>
                <dt>Good when</dt>
                <dd>
                  <Name>{goodWhen}</Name>
                </dd>
              </div>
            )}
          </dl>
        )}
        {reason !== undefined && (
          <p className={classes(styles["reason"], isReasonElsewhere && styles["onPaper"])}>
            <Name>{reason}</Name>
          </p>
        )}
        {hasBoxes && (
          <div aria-hidden="true" className={styles["paper"]}>
            <span className={styles["boxes"]}>
              {Array.from({ length: Math.min(laps, mostBoxes) }, (_, lap) => (
                <span key={lap} data-box="" className={styles["box"]} />
              ))}
            </span>
            <span className={styles["write"]} />
          </div>
        )}
        {children !== undefined && <div className={styles["more"]}>{children}</div>}
      </div>
    </div>
  );
}
