import { formatLapTime } from "#domain";
import type { SessionReport } from "#stats";
import { FigureRow } from "#ui/FigureRow.tsx";
import { Part } from "#ui/Part.tsx";
import { counted, sayScatterFigure, sayUsual } from "#words";

/** Best, usual and scatter of a whole session, as its runs have them one by one. */
export function SessionTotals({ report, runs }: { readonly report: SessionReport; readonly runs: number }) {
  const { best, pace, counts } = report;
  const { median, medianDecimals, consistency } = pace;
  if (counts.driven === 0) return null;
  return (
    <Part title="What the session says" aside={`${counted(runs, "run")}, ${counted(counts.driven, "lap")}`}>
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
    </Part>
  );
}
