import { useMemo } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import type { StripLines } from "#charts/strip/stripScale.ts";
import { type Id, stripLaps } from "#domain";
import type { RunVerdict } from "#stats";
import { LiveRegion } from "#ui/LiveRegion.tsx";
import { type NextRun, sayBestOfRun, sayVerdict, sayVerdictAloud, sayVerdictFigures } from "#words";
import type { SaidRun } from "../session/sessionFigures.ts";
import { shapeOf } from "./shapeOf.ts";
import styles from "./Verdict.module.css";
import { VerdictHead } from "./VerdictHead.tsx";

interface VerdictProps {
  readonly said: SaidRun;
  /** Undefined while it is worked out. */
  readonly verdict: RunVerdict | undefined;
  readonly next: NextRun;
  /** PB and target that the laps are seen against. */
  readonly lines: StripLines;
  readonly standingId: Id | undefined;
  /** Asks for one line at the end: time for a break. */
  readonly breakDue: string | undefined;
  readonly onOpenLap: (lapId: Id) => void;
}

/** How the last run was, read from a metre between two runs: a word, a figure, a picture, a sentence, what to do next. */
export function Verdict({ said, verdict, next, lines, standingId, breakDue, onOpenLap }: VerdictProps) {
  const { run, number, report } = said;
  const name = `Run ${number}`;
  const words = verdict && sayVerdict(verdict);
  const best = sayBestOfRun(report);
  const laps = useMemo(
    () => stripLaps([{ run, number }], new Set(standingId === undefined ? [] : [standingId]), true),
    [run, number, standingId],
  );
  const reference = verdict !== undefined && "against" in verdict ? verdict.against : undefined;
  const { referenceMs } = reference ?? {};
  const seenAgainst = useMemo(
    () =>
      referenceMs === undefined ? lines : { ...lines, usual: { ms: Math.round(referenceMs), decimals: 2 } },
    [lines, referenceMs],
  );
  return (
    <section
      aria-label={`Verdict of run ${number}`}
      className={styles["verdict"]}
      data-waiting={words === undefined}
    >
      <div className={styles["told"]}>
        <VerdictHead words={words} shape={verdict && shapeOf(verdict)} />
        {best !== undefined && <p className={styles["best"]}>{best}</p>}
      </div>
      <div className={styles["shown"]}>
        {laps.length > 0 && (
          <LapStrip laps={laps} lines={seenAgainst} size="full" name={name} onOpen={onOpenLap} />
        )}
        <dl className={styles["figures"]}>
          {sayVerdictFigures(report, verdict?.run).map(({ label, value }) => (
            <div key={label}>
              <dt>{label}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
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
