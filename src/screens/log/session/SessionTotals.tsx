import { useMemo } from "react";
import { LapStrip } from "#charts/strip/LapStrip.tsx";
import { formatLapTime, type Id } from "#domain";
import type { KnownBest, SessionReport } from "#stats";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Part } from "#ui/Part.tsx";
import { counted, sayScatterFigure, saySession, sayUsual } from "#words";
import { bestRun } from "./bestRun.ts";
import styles from "./SessionTotals.module.css";
import { type StripsOf, wholeStrip } from "./sessionStrips.ts";

interface SessionTotalsProps {
  readonly report: SessionReport;
  readonly strips: StripsOf;
  /** Best of the page before the session. */
  readonly pb: KnownBest | undefined;
  readonly onOpenLap: (lapId: Id) => void;
}

/** What an ended session says: one sentence, all its laps as one strip, its figures and best run. */
export function SessionTotals({ report, strips, pb, onOpenLap }: SessionTotalsProps) {
  const { best, pace, counts } = report;
  const { median, medianDecimals, consistency } = pace;
  const strip = useMemo(
    () => wholeStrip(strips, median === undefined ? undefined : { ms: median, decimals: medianDecimals }),
    [strips, median, medianDecimals],
  );
  if (counts.driven === 0) return null;
  const runs = strips.shown.filter(({ run }) => run.guest === undefined).length;
  const named = bestRun(strips);
  return (
    <Part title="What the session says" aside={`${counted(runs, "run")}, ${counted(counts.driven, "lap")}`}>
      <div className={styles["columns"]}>
        <div className={styles["column"]}>
          <p className={styles["sentence"]}>{saySession(report, pb)}</p>
          {strip.laps.length > 0 && <LapStrip {...strip} size="full" name="All runs" onOpen={onOpenLap} />}
        </div>
        <div className={styles["column"]}>
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
                detail:
                  median === undefined
                    ? "no pace laps"
                    : `the middle one of ${counted(pace.laps, "pace lap")}`,
              },
              sayScatterFigure(consistency),
            ]}
          />
          {named !== undefined && (
            <p>
              Best run: run {named.number}, usual lap {sayUsual(named.usualMs, named.usualDecimals)}.
            </p>
          )}
        </div>
      </div>
    </Part>
  );
}
