import { formatLapTime, formatSeconds } from "#domain";
import type { RunReport } from "#stats";
import { Disclosure } from "#ui/Disclosure.tsx";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Part } from "#ui/Part.tsx";
import {
  type NextRun,
  sayAgainstRun,
  sayAgainstTarget,
  sayCounts,
  sayMistakes,
  sayPointedAt,
  sayRun,
  sayTrendInRun,
} from "#words";
import styles from "./RunSays.module.css";

interface RunSaysProps {
  readonly report: RunReport;
  readonly number: number;
  readonly next: NextRun;
}

/** One true sentence and three numbers; the rest behind "figures"; then one suggestion with its reason. */
export function RunSays({ report, number, next }: RunSaysProps) {
  const { best, usual, scatter, againstBest } = report;
  return (
    <Part title={`What run ${number} says`}>
      <p className={styles["sentence"]}>{sayRun(report)}</p>
      <FigureRow
        figures={[
          {
            label: "best",
            value: best.known ? formatLapTime(best.value.ms, best.value.decimals) : "—",
            detail: !best.known ? best.reason : againstBest.known ? toBest(againstBest.value.ms) : undefined,
          },
          {
            label: "usual",
            value: usual.known ? formatLapTime(usual.value) : "—",
            detail: usual.known
              ? `median of ${report.laps} ${report.laps === 1 ? "lap" : "laps"}`
              : usual.reason,
          },
          scatter.known
            ? {
                label: "scatter",
                value: `± ${formatSeconds(scatter.value.scatterMs, 2)}`,
                detail: `${scatter.value.percent.toFixed(2)} %, lap to lap`,
              }
            : { label: "scatter", value: "—", detail: scatter.reason },
        ]}
      />
      <p className={styles["next"]}>
        {next.suggestion} <span className={styles["reason"]}>{next.reason}</span>
      </p>
      <Disclosure
        title="Figures"
        answer={report.againstTarget.known ? sayAgainstTarget(report.againstTarget) : undefined}
      >
        <ul className={styles["figures"]}>
          <li>{sayTrendInRun(report.trend)}</li>
          <li>{sayMistakes(report)}</li>
          <li>{sayAgainstRun(report.againstRunBefore)}</li>
          <li>{sayAgainstTarget(report.againstTarget)}</li>
          {report.pointedAt.length > 0 && <li>{sayPointedAt(report.pointedAt)}</li>}
          <li>{sayCounts(report.counts)}</li>
        </ul>
      </Disclosure>
    </Part>
  );
}

function toBest(ms: number): string {
  if (ms === 0) return "level with PB";
  return `${(Math.abs(ms) / 1000).toFixed(3)} s ${ms > 0 ? "off" : "under"} PB`;
}
