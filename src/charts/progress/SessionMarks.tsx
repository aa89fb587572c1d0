import styles from "../frame/Marks.module.css";
import { type PlaneArea, usePlane } from "../frame/usePlane.ts";
import type { ProgressSession } from "./progress.ts";
import { halfMark, ribbonPath } from "./ribbon.ts";

/** A session with its place on the calendar axis. */
export interface PlacedSession {
  readonly x: number;
  readonly session: ProgressSession;
}

interface SessionMarksProps {
  readonly placed: readonly PlacedSession[];
  /** One band and one line run through all of them. */
  readonly isBand: boolean;
  /** The best lap as a dot and the best of ten as a ring wide enough to be seen about it; no ring in a band. */
  readonly hasBests: boolean;
}

/** Each session: half of its laps as a band, the usual lap as a tick, on request its best laps. Older pages in grey. */
export function SessionMarks({ placed, isBand: dense, hasBests }: SessionMarksProps) {
  const plane = usePlane();
  if (plane === undefined) return null;
  const half = halfMark(placed.map(({ x }) => plane.x(x)));
  const older = placed.filter(({ session }) => !session.isPresentPage);
  const present = placed.filter(({ session }) => session.isPresentPage);
  const dotWidth = dense ? 2 : half < 4 ? 4 : 6;
  const ring = dotWidth / 2 + 1.5;
  const dots = (some: readonly PlacedSession[]) =>
    each(some, plane, (x, { best }) => best && [`M${x} `, best, "h0"]);
  const rings = (some: readonly PlacedSession[]) =>
    each(
      some,
      plane,
      (x, { bestOfTen }) =>
        bestOfTen && [
          `M${x - ring} `,
          bestOfTen,
          `a${ring} ${ring} 0 1 0 ${2 * ring} 0a${ring} ${ring} 0 1 0 ${-2 * ring} 0`,
        ],
    );
  const draw = dense ? drawBand : drawMarks;
  return (
    <g>
      {draw(older, plane, half, "Old")}
      {draw(present, plane, half, "")}
      {hasBests && (
        <>
          <path d={dense ? "" : rings(older)} className={styles["ringOld"]} />
          <path d={dense ? "" : rings(present)} className={styles["ring"]} />
          <path d={dots(older)} className={styles["dotOld"]} style={{ strokeWidth: dotWidth }} />
          <path d={dots(present)} className={styles["dot"]} style={{ strokeWidth: dotWidth }} />
        </>
      )}
    </g>
  );
}

function drawMarks(placed: readonly PlacedSession[], plane: PlaneArea, half: number, age: "" | "Old") {
  const boxes = each(
    placed,
    plane,
    (x, { q1, q3 }) => q1 && q3 && [`M${x - half} `, q1, "V", q3, `h${2 * half}V`, q1, "Z"],
  );
  const ticks = each(
    placed,
    plane,
    (x, { median }) => median && [`M${x - half - 2} `, median, `h${2 * half + 4}`],
  );
  return (
    <>
      <path d={boxes} className={styles[`box${age}`]} />
      <path d={ticks} className={styles[`tick${age}`]} />
    </>
  );
}

function drawBand(placed: readonly PlacedSession[], plane: PlaneArea, _half: number, age: "" | "Old") {
  const ranges = placed.flatMap(({ x, session: { q1, q3 } }) =>
    q1 === undefined || q3 === undefined ? [] : [{ x: plane.x(x), low: plane.y(q1), high: plane.y(q3) }],
  );
  const usual = placed.flatMap(({ x, session: { median } }) =>
    median === undefined ? [] : [`${plane.x(x)} ${plane.y(median)}`],
  );
  return (
    <>
      <path d={ribbonPath(ranges)} className={styles[`ribbon${age}`]} />
      <path d={usual.length < 2 ? "" : `M${usual.join("L")}`} className={styles[`line${age}`]} />
    </>
  );
}

/** One path for all sessions; numbers in the parts are times, to be turned into heights. */
function each(
  placed: readonly PlacedSession[],
  plane: PlaneArea,
  partsOf: (x: number, session: ProgressSession) => readonly (string | number)[] | 0 | undefined,
): string {
  return placed
    .flatMap(({ x, session }) => partsOf(plane.x(x), session) || [])
    .map((part) => (typeof part === "number" ? plane.y(part) : part))
    .join("");
}
