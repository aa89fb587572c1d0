import { IntervalLine } from "#charts/interval/IntervalLine.tsx";
import type { CalendarDate } from "#domain";
import type { CornersReport } from "#stats";
import { Part } from "#ui/Part.tsx";
import { cornerChangeReading, cornerChangeTitle, lapTimesFollowed, sayCorners } from "#words";
import styles from "./Answer.module.css";

interface ChangeSinceProps {
  readonly report: CornersReport;
  readonly today: CalendarDate;
}

/** What became of the unused road from the review before to the last one, and whether the lap times followed. */
export function ChangeSince({ report: { change }, today }: ChangeSinceProps) {
  if (change === undefined) return null;
  const { low, mid, high } = change.ms;
  return (
    <Part title="Since the review before" ruled>
      <p className={styles["found"]}>{cornerChangeTitle(change, sayCorners(change.corners), today)}</p>
      <IntervalLine low={low} estimate={mid} high={high} of="road" />
      <p>{cornerChangeReading(change)}</p>
      <p>{lapTimesFollowed(change, today)}</p>
    </Part>
  );
}
