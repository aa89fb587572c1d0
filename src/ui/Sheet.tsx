import type { ReactNode } from "react";
import styles from "./Part.module.css";

/** A lighter sheet laid on the paper: for what is typed or held, such as the entry line. */
export function Sheet({ children }: { readonly children: ReactNode }) {
  return <div className={styles["sheet"]}>{children}</div>;
}
