import styles from "../frame/Marks.module.css";
import { usePlane } from "../frame/usePlane.ts";

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
