import { formatLapTime } from "#domain";
import type { KnownBest, SessionReport } from "#stats";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Part } from "#ui/Part.tsx";
import { counted, type NextRun, sayScatterFigure, saySession, sayUsual } from "#words";
import styles from "../runs/RunSays.module.css";

interface SessionTotalsProps {
  readonly report: SessionReport;
  readonly runs: number;
  /** Best of the page before the session. */
  readonly pb: KnownBest | undefined;
  /** What its last run suggests; absent where it has no laps. */
  readonly next: NextRun | undefined;
}

/** What a session says: one sentence, best, usual and scatter of all its runs, and what to do next time. */
export function SessionTotals({ report, runs, pb, next }: SessionTotalsProps) {
  const { best, pace, counts } = report;
  const { median, medianDecimals, consistency } = pace;
  if (counts.driven === 0) return null;
  return (
    <Part title="What the session says" aside={`${counted(runs, "run")}, ${counted(counts.driven, "lap")}`}>
      <p className={styles["sentence"]}>{saySession(report, pb)}</p>
      <FigureRow
        figures={[
          {
            label: "best",
            value: best === undefined ? "—" : formatLapTime(best.ms, best.decimals),
            detail: best === undefined ? "no clean lap" : undefined,
          },
          {
            label: "usual",
            value: median === undefined ? "—" : sayUsual(median, medianDecimals),
            detail: median === undefined ? "no pace laps" : `median of ${counted(pace.laps, "pace lap")}`,
          },
          sayScatterFigure(consistency),
        ]}
      />
      {next && (
        <p className={styles["next"]}>
          <strong>Next time:</strong> {next.suggestion}{" "}
          <span className={styles["reason"]}>{next.reason}</span>
        </p>
      )}
    </Part>
  );
}
