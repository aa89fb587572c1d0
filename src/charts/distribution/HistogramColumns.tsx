import type { LapBin, LapQuarters } from "#stats";
import styles from "../frame/Marks.module.css";
import { usePlane } from "../frame/usePlane.ts";

/** One period's laps, drawn as bars to the right of a line. */
export interface Column {
  readonly name: "now" | "before";
  readonly words: string;
  readonly quarters: LapQuarters;
  /** Laps in each bin. */
  readonly bars: readonly number[];
  /** Place of the column: it runs from here to one more. */
  readonly at: number;
}

/** Share of its period's laps that the longest bar stands for. */
export function fullestShare(columns: readonly Column[]): number {
  return Math.max(...columns.flatMap(({ bars, quarters }) => bars.map((bar) => bar / quarters.laps)));
}

interface HistogramColumnsProps {
  readonly bins: readonly LapBin[];
  readonly columns: readonly Column[];
  readonly em: number;
}

/** Bars as long as the share of the column's laps; left of them half of its laps as a box and the usual lap as a tick. */
export function HistogramColumns({ bins, columns, em }: HistogramColumnsProps) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const fullest = fullestShare(columns);
  return (
    <g>
      {columns.map(({ name, at, bars, quarters: { laps, lowerQuartile, median, upperQuartile } }) => {
        const age = name === "now" ? "" : "Old";
        const foot = plane.x(at) + em * 2;
        const longest = plane.x(at + 1) - foot - em * 0.8;
        const drawn = bins.map((bin, index) => {
          const length = ((bars[index] ?? 0) / laps / fullest) * longest;
          return length === 0
            ? ""
            : `M${foot} ${plane.y(bin.from) - 1}h${length}V${plane.y(bin.to) + 1}h${-length}Z`;
        });
        const box = foot - em * 0.8;
        return (
          <g key={name}>
            <path d={drawn.join("")} className={styles[`bar${age}`]} />
            <path d={`M${foot} ${plane.top}V${plane.bottom}`} className={styles["page"]} />
            <path
              d={`M${box - 4} ${plane.y(lowerQuartile)}V${plane.y(upperQuartile)}h8V${plane.y(lowerQuartile)}Z`}
              className={styles[`box${age}`]}
            />
            <path d={`M${box - 7} ${plane.y(median)}h14`} className={styles[`tick${age}`]} />
          </g>
        );
      })}
    </g>
  );
}
