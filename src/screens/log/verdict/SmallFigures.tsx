import type { RunFigure } from "#words";
import styles from "./SmallFigures.module.css";

/** Usual, best and what else is smaller than a verdict, in columns. */
export function SmallFigures({ figures }: { readonly figures: readonly RunFigure[] }) {
  return (
    <dl className={styles["figures"]}>
      {figures.map(({ label, value }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
