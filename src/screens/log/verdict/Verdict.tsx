import type { Id } from "#domain";
import type { RunVerdict } from "#stats";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { type RunFigure, sayBestOfRun, sayVerdict, sayVerdictAloud, type WhatNext } from "#words";
import type { SaidRun } from "../session/sessionFigures.ts";
import { SmallFigures } from "./SmallFigures.tsx";
import { shapeOf } from "./shapeOf.ts";
import styles from "./Verdict.module.css";
import { VerdictHead } from "./VerdictHead.tsx";
import { VerdictStrip } from "./VerdictStrip.tsx";

interface VerdictProps {
  readonly said: SaidRun;
  /** Undefined while it is worked out. */
  readonly verdict: RunVerdict | undefined;
  /** Usual and best lap of the run; none where nothing may be told of them. */
  readonly figures: readonly RunFigure[];
  readonly next: WhatNext;
  /** Asks for one line at the end: time for a break. */
  readonly breakDue: string | undefined;
  readonly onOpenLap: (lapId: Id) => void;
}

/** How the last run was, read from a metre between two runs: a word, a figure, a picture, a sentence, what to do next. */
export function Verdict({ said, verdict, figures, next, breakDue, onOpenLap }: VerdictProps) {
  const { number, report, isBeaten } = said;
  const words = verdict && sayVerdict(verdict);
  const best = sayBestOfRun(report, isBeaten);
  return (
    <section aria-label={`Verdict of run ${number}`} className={styles["verdict"]} data-verdict>
      <div className={styles["told"]}>
        <VerdictHead words={words} shape={verdict && shapeOf(verdict)} />
        {best !== undefined && <p className={styles["best"]}>{best}</p>}
      </div>
      <div className={styles["shown"]}>
        <div className={styles["picture"]}>
          <VerdictStrip said={said} verdict={verdict} size="full" onOpen={onOpenLap} />
          {figures.length > 0 && <SmallFigures figures={figures} />}
        </div>
        <p className={styles["sentence"]}>{words?.sentence ?? " "}</p>
        <p className={styles["next"]}>
          <strong>Next:</strong> {next.suggestion} <span className={styles["reason"]}>{next.reason}</span>
        </p>
        {breakDue !== undefined && <p className={styles["break"]}>{breakDue}</p>}
      </div>
      <LiveRegion message={words === undefined ? "" : sayVerdictAloud(number, words)} />
    </section>
  );
}
