import { aboutRemark, type RemarkKind } from "#domain";
import type { CornerCounts } from "#words";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import { lapMark } from "../strip/lapMarks.ts";
import { MarkPieces } from "../strip/MarkPieces.tsx";
import styles from "./CornerBars.module.css";
import { allOf, layCorners } from "./layCorners.ts";

/** A corner with its remarks, and its name where it has one. */
export interface CornerColumn extends CornerCounts {
  readonly name?: string | undefined;
}

interface CornerBarsProps {
  /** In lap order, corners without a remark among them. */
  readonly columns: readonly CornerColumn[];
  /** Kinds that occur, in the order they are stacked. */
  readonly kinds: readonly RemarkKind[];
  /** The same in words. */
  readonly label: string;
}

const RADIUS = 5;
/** Below so many em a corner its marks would be a heap of specks and its name has no place: then a row a corner. */
const LEAST_EACH = 3.4;

/**
 * The corners of a lap in their order, on each number as many marks as mistakes were noted there, each kind by its shape. Where
 * there is no room for that, a row for each corner with mistakes: a bar, and the marks once with their numbers.
 */
export function CornerBars({ columns, kinds, label }: CornerBarsProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  if (width < columns.length * LEAST_EACH * em)
    return (
      <Picture box={box} square={square}>
        <CornerRows columns={columns} />
      </Picture>
    );
  const { corners, each, height } = layCorners(columns, width, em);
  const names = new Map(columns.map(({ number, name }) => [number, name]));
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
            <text x={x} y={y + em * 1.1} fontSize={em * 0.85} className={styles["number"]}>
              {names.get(number)}
            </text>
          </g>
        ))}
      </svg>
      <ul className={styles["key"]} aria-label="What the marks are">
        {kinds.map((kind) => (
          <li key={kind}>
            <Sample kind={kind} />
            {aboutRemark(kind).word}
          </li>
        ))}
        {each > 1 && <li>a mark is {each} of them, the last one perhaps fewer</li>}
      </ul>
    </Picture>
  );
}

/** The corners with mistakes, a row each: as long as there were, and each kind by its mark and its number. */
function CornerRows({ columns }: { readonly columns: readonly CornerColumn[] }) {
  const rows = columns.filter(({ counts }) => counts.length > 0).map((one) => ({ ...one, all: allOf(one) }));
  const most = Math.max(1, ...rows.map(({ all }) => all));
  return (
    <ol className={styles["rows"]} aria-label="Mistakes and cuts by corner">
      {rows.map(({ number, name, counts, all }) => (
        <li key={number}>
          <span className={styles["where"]}>
            {number} {name !== undefined && <bdi className={styles["name"]}>{name}</bdi>}
          </span>
          <span
            aria-hidden="true"
            className={styles["length"]}
            style={{ inlineSize: `${(100 * all) / most}%` }}
          />
          <span className={styles["all"]}>{all}</span>
          <ul className={styles["key"]}>
            {counts.map(({ kind, count }) => (
              <li key={kind}>
                <Sample kind={kind} />
                {count} {aboutRemark(kind).word}
              </li>
            ))}
          </ul>
        </li>
      ))}
    </ol>
  );
}

function Sample({ kind }: { readonly kind: RemarkKind }) {
  return (
    <svg aria-hidden="true" width={18} height={18}>
      <Mark kind={kind} x={8} y={9} />
    </svg>
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
