import { type ReactNode, useId } from "react";
import styles from "./ProgressBar.module.css";

export interface ProgressBarProps {
  readonly label: ReactNode;
  /** Share done, 0 to 1; outside that range the bar is full or empty, the text says the rest. */
  readonly share: number;
  /** The same in words: "0.42 of 0.60 s done". */
  readonly text: string;
}

/** How far something has come, in words and as a bar. */
export function ProgressBar({ label, share, text }: ProgressBarProps) {
  const id = useId();
  const percent = Math.round(Math.min(1, Math.max(0, share)) * 100);
  return (
    <div>
      <div className={styles["words"]}>
        <span id={id}>{label}</span>
        <span className={styles["text"]}>{text}</span>
      </div>
      <div
        role="progressbar"
        aria-labelledby={id}
        aria-valuemin={0}
        aria-valuemax={100}
        aria-valuenow={percent}
        aria-valuetext={text}
        className={styles["trough"]}
      >
        <div className={styles["fill"]} style={{ inlineSize: `${percent}%` }} />
      </div>
    </div>
  );
}
