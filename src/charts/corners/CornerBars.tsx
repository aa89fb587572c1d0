import { aboutRemark, type RemarkKind } from "#domain";
import type { CornerCounts } from "#words";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import { lapMark } from "../strip/lapMarks.ts";
import { MarkPieces } from "../strip/MarkPieces.tsx";
import styles from "./CornerBars.module.css";
import { layCorners } from "./layCorners.ts";

interface CornerBarsProps {
  /** In lap order, corners without a remark among them. */
  readonly columns: readonly CornerCounts[];
  /** Kinds that occur, in the order they are stacked. */
  readonly kinds: readonly RemarkKind[];
  /** The same in words. */
  readonly label: string;
}

const RADIUS = 4;

/** The corners of a lap in their order, on each number as many marks as mistakes were noted there, each kind by its shape. */
export function CornerBars({ columns, kinds, label }: CornerBarsProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const { corners, each, height } = layCorners(columns, width, em);
  return (
    <Picture box={box} square={square}>
      <svg role="img" aria-label={label} width={width} height={height}>
        {corners.map(({ number, all, x, y, top, marks }) => (
          <g key={number} fontSize={em} textAnchor="middle" dominantBaseline="central">
            {marks.map((mark) => (
              <Mark key={mark.y} {...mark} />
            ))}
            {all > 0 && (
              <text x={x} y={top} className={styles["count"]}>
                {all}
              </text>
            )}
            <path d={`M${x - em * 0.7} ${y - em}H${x + em * 0.7}`} className={styles["ground"]} />
            <text x={x} y={y} className={styles["number"]}>
              {number}
            </text>
          </g>
        ))}
      </svg>
      <ul className={styles["key"]} aria-label="What the marks are">
        {kinds.map((kind) => (
          <li key={kind}>
            <svg aria-hidden="true" width={16} height={16}>
              <Mark kind={kind} x={7} y={8} />
            </svg>
            {aboutRemark(kind).word}
          </li>
        ))}
        {each > 1 && <li>a mark is {each} of them, the last one perhaps fewer</li>}
      </ul>
    </Picture>
  );
}

interface MarkProps {
  readonly kind: RemarkKind;
  readonly x: number;
  readonly y: number;
}

/** The mark a lap with that remark has in the strip of laps. */
function Mark({ kind, x, y }: MarkProps) {
  const lap = { id: kind, name: "", ms: 1, remarks: [{ kind }] };
  return <MarkPieces pieces={lapMark(lap, x, y, RADIUS)} />;
}
