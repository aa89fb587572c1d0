import type { ReactNode } from "react";
import styles from "./LineKey.module.css";

/** What the lines of a drawing are: an item each, its sample before its words. */
export function LineKey({ children }: { readonly children: ReactNode }) {
  return (
    <ul className={styles["key"]} aria-label="What the lines are">
      {children}
    </ul>
  );
}
