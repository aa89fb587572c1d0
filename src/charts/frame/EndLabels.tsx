import { classes } from "#ui/classes.ts";
import styles from "./Marks.module.css";
import { spreadLabels } from "./spreadLabels.ts";
import { usePlane } from "./usePlane.ts";
import { textWidth } from "./useRoom.ts";

/** Words at the end of a line. */
export interface LineEnd {
  /** Where the line ends, in the chart's values. */
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
  readonly ink: "ink" | "accent";
}

const lineHeight = 1.2;
const gap = 10;

/** Room the words need at the right of the plot, px. */
export function endRoom(ends: readonly LineEnd[], em: number): number {
  const widths = ends.flatMap((end) => end.lines.map((line) => textWidth(line, em)));
  return Math.ceil(Math.max(0, ...widths)) + gap + 4;
}

/** Names the lines at their ends, at the right of the plot, none over another. */
export function EndLabels({ ends, em }: { readonly ends: readonly LineEnd[]; readonly em: number }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const wanted = ends.map((end) => ({ y: plane.y(end.y), height: end.lines.length * em * lineHeight + 2 }));
  const middles = spreadLabels(wanted, plane.top - em, plane.bottom + em);
  return (
    <g>
      {ends.map((end, index) => {
        const middle = middles[index] ?? 0;
        const first = middle - ((end.lines.length - 1) * em * lineHeight) / 2;
        const from = plane.x(end.x);
        return (
          <g key={end.lines.join(" ")}>
            <path
              d={`M${from} ${plane.y(end.y)}L${plane.right} ${plane.y(end.y)}L${plane.right + gap - 2} ${middle}`}
              className={styles["leader"]}
            />
            {end.lines.map((line, row) => (
              <text
                key={line}
                x={plane.right + gap}
                y={first + row * em * lineHeight}
                dominantBaseline="central"
                fontSize={em}
                className={classes(end.ink === "accent" ? styles["wordsAccent"] : styles["wordsInk"])}
              >
                {line}
              </text>
            ))}
          </g>
        );
      })}
    </g>
  );
}
