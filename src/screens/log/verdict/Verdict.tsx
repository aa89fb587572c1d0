import { useMemo } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import type { StripLines } from "#charts/strip/stripScale.ts";
import type { Id } from "#domain";
import type { RunVerdict } from "#stats";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { type NextRun, sayBestOfRun, sayVerdict, sayVerdictAloud, sayVerdictFigures } from "#words";
import { useRunStrip } from "../session/RunStrips.tsx";
import type { SaidRun } from "../session/sessionFigures.ts";
import { SmallFigures } from "./SmallFigures.tsx";
import { shapeOf } from "./shapeOf.ts";
import styles from "./Verdict.module.css";
import { VerdictHead } from "./VerdictHead.tsx";

interface VerdictProps {
  readonly said: SaidRun;
  /** Undefined while it is worked out. */
  readonly verdict: RunVerdict | undefined;
  readonly next: NextRun;
  /** Asks for one line at the end: time for a break. */
  readonly breakDue: string | undefined;
  readonly onOpenLap: (lapId: Id) => void;
}

/** How the last run was, read from a metre between two runs: a word, a figure, a picture, a sentence, what to do next. */
export function Verdict({ said, verdict, next, breakDue, onOpenLap }: VerdictProps) {
  const { number, report, isBeaten } = said;
  const strip = useRunStrip(said.run.id);
  const words = verdict && sayVerdict(verdict);
  const best = sayBestOfRun(report, isBeaten);
  const lines = useMemo(() => seenAgainst(strip?.lines, verdict), [strip?.lines, verdict]);
  return (
    <section aria-label={`Verdict of run ${number}`} className={styles["verdict"]}>
      <div className={styles["told"]}>
        <VerdictHead words={words} shape={verdict && shapeOf(verdict)} />
        {best !== undefined && <p className={styles["best"]}>{best}</p>}
      </div>
      <div className={styles["shown"]}>
        {strip !== undefined && strip.laps.length > 0 && (
          <LapStrip laps={strip.laps} lines={lines} size="full" name={`Run ${number}`} onOpen={onOpenLap} />
        )}
        <SmallFigures figures={sayVerdictFigures(report, verdict?.run)} />
        <p className={styles["sentence"]}>{words?.sentence ?? " "}</p>
        <p className={styles["next"]}>
          <strong>Next:</strong> {next.suggestion} <span className={styles["reason"]}>{next.reason}</span>
        </p>
        {breakDue !== undefined && <p className={styles["reason"]}>{breakDue}</p>}
      </div>
      <LiveRegion message={words === undefined ? "" : sayVerdictAloud(number, words)} />
    </section>
  );
}

/** The laps are seen against what the verdict was given against, in the place of their own usual lap. */
function seenAgainst(lines: StripLines | undefined, verdict: RunVerdict | undefined): StripLines | undefined {
  const against = verdict !== undefined && "against" in verdict ? verdict.against : undefined;
  if (against?.from !== "level") return lines;
  return { pb: lines?.pb, target: lines?.target, level: { ms: against.referenceMs } };
}
