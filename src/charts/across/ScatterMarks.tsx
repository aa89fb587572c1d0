import type { ConsistencySession } from "../consistency/consistencyTable.ts";
import styles from "../frame/Marks.module.css";
import { usePlane } from "../frame/usePlane.ts";
import { halfMark, isDense, ribbonPath } from "../progress/ribbon.ts";

/** A session whose scatter is known, at its place on the calendar axis. */
export interface PlacedScatter {
  readonly x: number;
  readonly y: number;
  readonly session: ConsistencySession;
}

/** Each session's scatter as a dot on its interval; too close for that, one band. Older pages in grey. */
export function ScatterMarks({ placed }: { readonly placed: readonly PlacedScatter[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const places = placed.map(({ x }) => plane.x(x));
  const half = halfMark(places);
  const dense = isDense(places);
  const parts = ([false, true] as const).map((isPresent) => {
    const some = placed.filter(({ session }) => session.isPresentPage === isPresent);
    const ranges = some.flatMap(({ x, session: { intervalPercent } }) =>
      intervalPercent === undefined
        ? []
        : [{ x: plane.x(x), low: plane.y(intervalPercent[0]), high: plane.y(intervalPercent[1]) }],
    );
    const whiskers = ranges.map(
      ({ x, low, high }) =>
        `M${x} ${low}V${high}M${x - half + 1} ${low}h${2 * half - 2}M${x - half + 1} ${high}h${2 * half - 2}`,
    );
    return {
      age: isPresent ? "" : "Old",
      ranges: dense ? ribbonPath(ranges) : whiskers.join(""),
      dots: some.map(({ x, y }) => `M${plane.x(x)} ${plane.y(y)}h0`).join(""),
    };
  });
  const dotWidth = dense ? 2 : Math.max(4, half * 1.6);
  return (
    <g>
      {parts.map(({ age, ranges, dots }) => (
        <g key={age}>
          <path d={ranges} className={styles[`${dense ? "ribbon" : "whisker"}${age}`]} />
          <path d={dots} className={styles[`point${age}`]} style={{ strokeWidth: dotWidth }} />
        </g>
      ))}
    </g>
  );
}
