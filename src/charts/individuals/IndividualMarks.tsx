import type { SessionChart } from "#stats";
import styles from "../frame/Marks.module.css";
import { usePlane } from "../frame/usePlane.ts";

interface IndividualMarksProps {
  readonly session: SessionChart;
  readonly first: number;
  readonly em: number;
}

/** Laps as dots, joined within a run; mean and limits across; a ring and the lap's number where one is pointed at. */
export function IndividualMarks({ session: { laps, chart, pointedAt }, first, em }: IndividualMarksProps) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const drawn = laps.slice(first);
  const place = (index: number, ms: number) => `${plane.x(first + index + 1)} ${plane.y(ms)}`;
  const joined = drawn.map(
    ({ ms, run }, index) => `${index > 0 && drawn[index - 1]?.run === run ? "L" : "M"}${place(index, ms)}`,
  );
  const across = (ms: number) => `M${plane.left} ${plane.y(ms)}H${plane.right}`;
  const marked = pointedAt.filter(({ index }) => index >= first);
  return (
    <g>
      {chart !== undefined && (
        <>
          <path d={across(chart.centre)} className={styles["line"]} />
          <path d={across(chart.lower) + across(chart.upper)} className={styles["limit"]} />
        </>
      )}
      <path d={joined.join("")} className={styles["lineOld"]} />
      <path d={drawn.map(({ ms }, index) => `M${place(index, ms)}h0`).join("")} className={styles["dot"]} />
      {marked.map(({ index }) => {
        const [x, y] = [plane.x(index + 1), plane.y(laps[index]?.ms ?? 0)];
        const isAtRight = x > plane.right - em * 4;
        return (
          <g key={index}>
            <circle cx={x} cy={y} r={7} className={styles["walked"]} />
            <text
              x={x + (isAtRight ? -11 : 11)}
              y={y}
              textAnchor={isAtRight ? "end" : "start"}
              dominantBaseline="central"
              fontSize={em}
              className={styles["wordsInk"]}
            >
              lap {index + 1}
            </text>
          </g>
        );
      })}
    </g>
  );
}
