import { classes } from "./classes.ts";
import { Name } from "./Name.tsx";
import styles from "./OutcomeRows.module.css";

/** A run of a plan, and what came of it. */
export interface OutcomeRow {
  readonly id: string;
  readonly purpose: string;
  /** "8 laps, learning effort" */
  readonly task: string;
  readonly goodWhen: string | undefined;
  /** "7 of 8 laps clean"; empty where there is nothing to tell. */
  readonly cameTo: string;
  /** "Good", "Not met". */
  readonly met: string;
  /** It was not driven. */
  readonly isSoft: boolean;
}

/** A plan and its outcome side by side: what was to be driven and when it was good, against what it came to. */
export function OutcomeRows({
  label,
  rows,
}: {
  readonly label: string;
  readonly rows: readonly OutcomeRow[];
}) {
  return (
    <div className={styles["around"]}>
      <ol aria-label={label} className={styles["rows"]}>
        {rows.map(({ id, purpose, task, goodWhen, cameTo, met, isSoft }) => (
          <li key={id} className={classes(styles["row"], isSoft && styles["soft"])}>
            <p className={styles["line"]}>
              <strong>
                <Name>{purpose}</Name>
              </strong>{" "}
              <span className={styles["task"]}>{task}</span>
            </p>
            <p className={styles["task"]}>
              {goodWhen !== undefined && (
                <>
                  Good when <Name>{goodWhen}</Name>
                </>
              )}
            </p>
            <p className={styles["came"]}>
              <strong className={styles["met"]}>{met}</strong> {cameTo}
            </p>
          </li>
        ))}
      </ol>
    </div>
  );
}
