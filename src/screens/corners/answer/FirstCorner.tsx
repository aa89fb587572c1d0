import type { Id } from "#domain";
import { assumedCorner } from "#physics";
import { printAddress } from "#state/address.ts";
import type { CornersReport } from "#stats";
import { classes } from "#ui/classes.ts";
import { Name } from "#ui/Name.tsx";
import {
  cornersTitle,
  cornerWorthReading,
  noAnswerYet,
  sayOthersFirst,
  sayTooManySeconds,
  sayWhyCorners,
} from "#words";
import styles from "./Answer.module.css";

interface FirstCornerProps {
  readonly comboId: Id;
  readonly report: CornersReport;
}

/** The answer: which corner to work on first, what it is worth, and why; else the way to one. */
export function FirstCorner({ comboId, report }: FirstCornerProps) {
  const first = report.corners.find(({ number }) => number === report.order[0]);
  const more = [first && sayTooManySeconds(report), sayOthersFirst(report)].filter(
    (one) => one !== undefined,
  );
  const why = first && sayWhyCorners(first.why, assumedCorner(first.facts).corner.carWidth);
  return (
    <section aria-labelledby="first-corner" className={styles["first"]}>
      <h2 id="first-corner" tabIndex={-1} className={styles["title"]}>
        {cornersTitle(report)}
      </h2>
      {first?.name !== undefined && (
        <p className={styles["name"]}>
          <Name>{first.name}</Name>
        </p>
      )}
      <p className={styles["reading"]}>{first ? cornerWorthReading(first) : noAnswerYet(report)}</p>
      {why !== undefined && why !== "" && <p className={styles["reading"]}>{why}</p>}
      {more.map((sentence) => (
        <p key={sentence} className={styles["reading"]}>
          {sentence}
        </p>
      ))}
      <p className={styles["ways"]}>
        <a
          className={classes(styles["way"], styles["main"])}
          href={printAddress({ place: "corners", comboId, part: "review" })}
        >
          {report.reviews.length === 0 ? "Look at corners in a replay" : "Replay review"}
        </a>
        {first && (
          <a
            className={styles["way"]}
            href={printAddress({ place: "corners", comboId, corner: first.number })}
          >
            Open corner {first.number}
          </a>
        )}
      </p>
    </section>
  );
}
