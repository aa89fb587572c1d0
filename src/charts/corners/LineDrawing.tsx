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

/** A corner from above, to scale: the road, the widest line, and the line as driven with the car at entry, apex and exit. */
export function LineDrawing({ corner, label, driven, widest }: LineDrawingProps) {
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const { height, road, kerbs, widestLine, drivenLine, cars, scale } = layLine(corner, width, em);
  return (
    <Picture box={box} square={square}>
      <svg role="img" aria-label={label} width={width} height={height}>
        <path d={road} className={styles["road"]} />
        {kerbs.map((kerb) => (
          <path key={kerb} d={kerb} className={styles["kerb"]} />
        ))}
        <path d={widestLine} className={styles["widest"]} />
        {drivenLine !== undefined && <path d={drivenLine} className={styles["driven"]} />}
        {cars.map((car) => (
          <path key={car} d={car} className={styles["car"]} />
        ))}
        <g fontSize={em}>
          <path d={scale.path} className={styles["scale"]} />
          <text x={scale.x} y={scale.y} textAnchor="end" className={styles["words"]}>
            {scale.text}
          </text>
        </g>
      </svg>
      <ul className={styles["key"]} aria-label="What the lines are">
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
      </ul>
    </Picture>
  );
}

function Sample({ of }: { readonly of: "driven" | "widest" }) {
  return (
    <svg aria-hidden="true" width={28} height={12}>
      <path d="M0 6H28" className={styles[of]} />
    </svg>
  );
}
