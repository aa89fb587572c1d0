import styles from "./Marks.module.css";
import { usePlane } from "./usePlane.ts";
import { textWidth } from "./useRoom.ts";

/** What the upright axis shows, and which way is good, written once above it. */
export function AxisTitle({ text, em }: { readonly text: string; readonly em: number }) {
  const plane = usePlane();
  if (plane === undefined) return null;
  return (
    <text
      x={Math.max(0, Math.min(plane.left, plane.right - textWidth(text, em)))}
      y={plane.top - em * 0.9}
      fontSize={em}
      className={styles["words"]}
    >
      {text}
    </text>
  );
}
