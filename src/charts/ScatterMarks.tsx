import type { ConsistencySession } from "./consistencyTable.ts";
import styles from "./Marks.module.css";
import { usePlane } from "./usePlane.ts";

/** A session whose scatter is known, at its place on the calendar axis. */
export interface PlacedScatter {
  readonly x: number;
  readonly y: number;
  readonly session: ConsistencySession;
}

/** Each session's scatter as a dot on its interval. Older pages in grey. */
export function ScatterMarks({ placed }: { readonly placed: readonly PlacedScatter[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const path = (ofPresentPage: boolean, draw: (place: PlacedScatter) => string) =>
    placed
      .filter(({ session }) => session.isPresentPage === ofPresentPage)
      .map(draw)
      .join("");
  const whisker = ({ x, session: { intervalPercent } }: PlacedScatter) => {
    if (intervalPercent === undefined) return "";
    const [low, high] = intervalPercent.map(plane.y);
    return `M${plane.x(x)} ${low}V${high}M${plane.x(x) - 4} ${low}h8M${plane.x(x) - 4} ${high}h8`;
  };
  const dot = ({ x, y }: PlacedScatter) => `M${plane.x(x)} ${plane.y(y)}h0`;
  return (
    <g>
      <path d={path(false, whisker)} className={styles["whiskerOld"]} />
      <path d={path(true, whisker)} className={styles["whisker"]} />
      <path d={path(false, dot)} className={styles["pointOld"]} />
      <path d={path(true, dot)} className={styles["point"]} />
    </g>
  );
}
