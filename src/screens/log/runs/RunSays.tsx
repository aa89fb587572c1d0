import { Disclosure } from "#ui/Disclosure.tsx";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Part } from "#ui/Part.tsx";
import {
  sayAgainstRun,
  sayAgainstTarget,
  sayCounts,
  sayMistakes,
  sayPointedAt,
  sayRun,
  sayRunFigures,
  sayTrendInRun,
  testRunSays,
  toldWhenOver,
  type WhatNext,
} from "#words";
import type { SaidRun } from "../session/sessionFigures.ts";
import styles from "./RunSays.module.css";

interface RunSaysProps {
  readonly said: SaidRun;
  /** Absent where what to do next stands above. */
  readonly next: WhatNext | undefined;
  /** The verdict stands above and has told it: here are its figures alone. */
  readonly isTold: boolean;
  /** A run of a rig test that lasts: only its laps are counted. */
  readonly isSilent: boolean;
}

/** One true sentence and three numbers, one suggestion with its reason; the rest behind "figures". */
export function RunSays({ said: { report, number, isBeaten }, next, isTold, isSilent }: RunSaysProps) {
  if (isSilent)
    return (
      <Part title={`What run ${number} says`}>
        <p>
          {testRunSays} {toldWhenOver}
        </p>
        <p className={styles["reason"]}>{sayCounts(report.counts)}</p>
      </Part>
    );
  if (isTold) return figures(`Figures of run ${number}`);
  return (
    <Part title={`What run ${number} says`}>
      <p className={styles["sentence"]}>{sayRun(report, isBeaten)}</p>
      <FigureRow figures={sayRunFigures(report)} />
      {next && (
        <p className={styles["next"]}>
          <strong>Next:</strong> {next.suggestion} <span className={styles["reason"]}>{next.reason}</span>
        </p>
      )}
      {figures("Figures")}
    </Part>
  );

  function figures(title: string) {
    return (
      <Disclosure
        title={title}
        answer={report.againstTarget.known ? sayAgainstTarget(report.againstTarget) : undefined}
      >
        {isTold && <FigureRow figures={sayRunFigures(report)} />}
        <ul className={styles["figures"]}>
          <li>{sayTrendInRun(report.trend)}</li>
          <li>{sayMistakes(report)}</li>
          <li>{sayAgainstRun(report.againstRunBefore)}</li>
          <li>{sayAgainstTarget(report.againstTarget)}</li>
          {report.pointedAt.length > 0 && <li>{sayPointedAt(report.pointedAt, report.laps)}</li>}
          <li>{sayCounts(report.counts)}</li>
        </ul>
      </Disclosure>
    );
  }
}
