import type { ReactNode } from "react";
import styles from "./NotYet.module.css";

interface NotYetProps {
  /** What is missing: "Not enough pace laps yet: 3 of 5". */
  readonly title: string;
  /** What can be said already, or done about it. */
  readonly children?: ReactNode;
}

/** In place of a chart that has too little to draw. */
export function NotYet({ title, children }: NotYetProps) {
  return (
    <div className={styles["place"]}>
      <h3>{title}</h3>
      {children !== undefined && <p>{children}</p>}
    </div>
  );
}
