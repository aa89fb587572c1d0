import styles from "./Marks.module.css";
import { usePlane } from "./usePlane.ts";

/** What the upright axis shows, and which way is good, written once above it. */
export function AxisTitle({ text, em }: { readonly text: string; readonly em: number }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  return (
    <text x={plane.left} y={plane.top - em * 0.9} fontSize={em} className={styles["words"]}>
      {text}
    </text>
  );
}
