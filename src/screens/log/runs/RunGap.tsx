import styles from "./RunBlock.module.css";

/** In the place of a run that is there and cannot be read. */
export function RunGap({ number }: { readonly number: number }) {
  return (
    <section className={styles["run"]} aria-label={`Run ${number}`}>
      <div className={styles["head"]}>
        <h2 className={styles["title"]}>Run {number}</h2>
      </div>
      <p>This browser cannot read this run. What is said of the session is without its laps.</p>
    </section>
  );
}
