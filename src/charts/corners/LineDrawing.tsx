import { LineKey } from "../frame/LineKey.tsx";
import { Picture } from "../frame/Picture.tsx";
import { useRoom } from "../frame/useRoom.ts";
import styles from "./LineDrawing.module.css";
import { type DrawnCorner, layLine } from "./layLine.ts";

interface LineDrawingProps {
  readonly corner: DrawnCorner;
  /** The same in words. */
  readonly label: string;
  /** "61 m, then 55 m": radii of the line as driven; undefined where nobody looked. */
  readonly driven: string | undefined;
  readonly widest: string;
}

const APEX_RADIUS = 3.5;
const BEST_RADIUS = 6;

/** A corner from above, to scale: the road, the widest line, and the line as driven with the car at entry, apex and exit. */
export function LineDrawing({ corner, label, driven, widest }: LineDrawingProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const laid = layLine(corner, width, em);
  const { height, road, kerbs, widestLine, drivenLine, cars, apex, bestApex, ends, scale } = laid;
  return (
    <Picture box={box} square={square}>
      <svg
        role="img"
        aria-label={label}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        className={styles["drawing"]}
      >
        <path d={road} className={styles["road"]} />
        {kerbs.map((kerb) => (
          <path key={kerb} d={kerb} className={styles["kerb"]} />
        ))}
        <path d={widestLine} className={styles["widest"]} />
        {drivenLine !== undefined && <path d={drivenLine} className={styles["driven"]} />}
        {cars.map((car) => (
          <path key={car} d={car} className={styles["car"]} />
        ))}
        <circle cx={apex.x} cy={apex.y} r={APEX_RADIUS} className={styles["apex"]} />
        {bestApex && (
          <circle cx={bestApex.x} cy={bestApex.y} r={BEST_RADIUS} className={styles["bestApex"]} />
        )}
        <path d={ends.arrow} className={styles["scale"]} />
        <g fontSize={em}>
          <EndWord at={ends.entry} word="entry" />
          <EndWord at={ends.exit} word="exit" />
          <path d={scale.path} className={styles["scale"]} />
          <text x={scale.x} y={scale.y} textAnchor="end" className={styles["words"]}>
            {scale.text}
          </text>
        </g>
      </svg>
      <LineKey>
        {driven !== undefined && (
          <li>
            <Sample of="driven" />
            as driven: arcs of {driven}
          </li>
        )}
        <li>
          <Sample of="widest" />
          widest line: {widest}
        </li>
        <li>
          <svg aria-hidden="true" width={12} height={12}>
            <circle cx={6} cy={6} r={APEX_RADIUS} className={styles["apex"]} />
          </svg>
          its apex
        </li>
        {bestApex && (
          <li>
            <svg aria-hidden="true" width={14} height={14}>
              <circle cx={7} cy={7} r={BEST_RADIUS} className={styles["bestApex"]} />
            </svg>
            best place for the apex, see below
          </li>
        )}
        {kerbs.length > 0 && (
          <li>
            <Sample of="kerb" />
            kerb that may be used
          </li>
        )}
      </LineKey>
    </Picture>
  );
}

function EndWord({
  at,
  word,
}: {
  readonly at: { readonly x: number; readonly y: number };
  readonly word: string;
}) {
  return (
    <text x={at.x} y={at.y} textAnchor="middle" dominantBaseline="central" className={styles["words"]}>
      {word}
    </text>
  );
}

function Sample({ of }: { readonly of: "driven" | "widest" | "kerb" }) {
  return (
    <svg aria-hidden="true" width={28} height={12}>
      <path d="M0 6H28" className={styles[of]} />
    </svg>
  );
}
