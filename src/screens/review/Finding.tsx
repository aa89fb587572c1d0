import styles from "./Finding.module.css";

interface FindingProps {
  readonly title: string;
  readonly reading: string;
  readonly isLarge?: boolean;
}

/** What a chart says, in its place until the chart itself has been loaded. */
export function Finding({ title, reading, isLarge = false }: FindingProps) {
  return (
    <div className={styles["finding"]}>
      <h2 className={isLarge ? styles["large"] : undefined}>{title}</h2>
      <p className={styles["reading"]}>{reading}</p>
    </div>
  );
}
