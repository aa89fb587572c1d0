import styles from "./Marks.module.css";
import type { ProgressSession } from "./progress.ts";
import { usePlane } from "./usePlane.ts";

const halfBox = 5;
const halfTick = 7;

/** A session with its place on the calendar axis. */
export interface PlacedSession {
  readonly x: number;
  readonly session: ProgressSession;
}

/** Each session: half of its laps as a band, the usual lap as a tick, the best as a dot. Older pages in grey. */
export function SessionMarks({ placed }: { readonly placed: readonly PlacedSession[] }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const path = (ofPresentPage: boolean, draw: (x: number, session: ProgressSession) => string) =>
    placed
      .filter(({ session }) => session.isPresentPage === ofPresentPage)
      .map(({ x, session }) => draw(plane.x(x), session))
      .join("");
  const box = (x: number, { q1, q3 }: ProgressSession) =>
    q1 === undefined || q3 === undefined
      ? ""
      : `M${x - halfBox} ${plane.y(q1)}V${plane.y(q3)}h${2 * halfBox}V${plane.y(q1)}Z`;
  const tick = (x: number, { median }: ProgressSession) =>
    median === undefined ? "" : `M${x - halfTick} ${plane.y(median)}h${2 * halfTick}`;
  const dot = (x: number, { best }: ProgressSession) =>
    best === undefined ? "" : `M${x} ${plane.y(best)}h0`;
  return (
    <g>
      <path d={path(false, box)} className={styles["boxOld"]} />
      <path d={path(true, box)} className={styles["band"]} />
      <path d={path(false, dot)} className={styles["dotOld"]} />
      <path d={path(true, dot)} className={styles["dot"]} />
      <path d={path(false, tick)} className={styles["tickOld"]} />
      <path d={path(true, tick)} className={styles["tick"]} />
    </g>
  );
}

/** The rule between an older page and the present one. */
export function PageRule({ x, em }: { readonly x: number | undefined; readonly em: number }) {
  const plane = usePlane();
  if (plane === undefined || x === undefined) return null;
  const isAtRight = plane.x(x) > (plane.left + plane.right) / 2;
  return (
    <g>
      <path d={`M${plane.x(x)} ${plane.top}V${plane.bottom}`} className={styles["page"]} />
      <text
        x={plane.x(x) + (isAtRight ? -6 : 6)}
        y={plane.bottom - em * 0.6}
        textAnchor={isAtRight ? "end" : "start"}
        fontSize={em}
        className={styles["words"]}
      >
        new page
      </text>
    </g>
  );
}
