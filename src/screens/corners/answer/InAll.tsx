import type { CornersReport } from "#stats";
import { assumedCornersSay, sectorCornersSay, unusedSumSays } from "#words";
import styles from "./Answer.module.css";

/** What all corners together come to, beside what the laps themselves say. */
export function InAll({ report }: { readonly report: CornersReport }) {
  const said = [unusedSumSays(report), assumedCornersSay(report), sectorCornersSay(report)].filter(
    (one) => one !== undefined,
  );
  return (
    <div className={styles["lines"]}>
      {said.map((sentence) => (
        <p key={sentence} className={styles["soft"]}>
          {sentence}
        </p>
      ))}
    </div>
  );
}
