import type { ReactNode } from "react";
import styles from "./Spoken.module.css";

/** Words for those who listen, not drawn. */
export function Spoken({ children }: { readonly children: ReactNode }) {
  return <span className={styles["spoken"]}>{children}</span>;
}
