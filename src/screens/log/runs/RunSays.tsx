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
  sayRunFigures,
  sayTrendInRun,
} from "#words";
import type { SaidRun } from "../session/sessionFigures.ts";
import styles from "./RunSays.module.css";

interface RunSaysProps {
  readonly said: SaidRun;
  /** Absent where the verdict stands above, which says it and what to do next. */
  readonly next: NextRun | undefined;
}

/** One true sentence and three numbers, one suggestion with its reason; the rest behind "figures". */
export function RunSays({ said: { report, number, isBeaten }, next }: RunSaysProps) {
  return (
    <Part title={`What run ${number} says`}>
      {next && (
        <>
          <p className={styles["sentence"]}>{sayRun(report, isBeaten)}</p>
          <FigureRow figures={sayRunFigures(report)} />
          <p className={styles["next"]}>
            {next.suggestion} <span className={styles["reason"]}>{next.reason}</span>
          </p>
        </>
      )}
      <Disclosure
        title="Figures"
        answer={report.againstTarget.known ? sayAgainstTarget(report.againstTarget) : undefined}
      >
        {next === undefined && <FigureRow figures={sayRunFigures(report)} />}
        <ul className={styles["figures"]}>
          <li>{sayTrendInRun(report.trend)}</li>
          <li>{sayMistakes(report)}</li>
          <li>{sayAgainstRun(report.againstRunBefore)}</li>
          <li>{sayAgainstTarget(report.againstTarget)}</li>
          {report.pointedAt.length > 0 && <li>{sayPointedAt(report.pointedAt, report.laps)}</li>}
          <li>{sayCounts(report.counts)}</li>
        </ul>
      </Disclosure>
    </Part>
  );
}
