import styles from "./Small.module.css";
import { smallHeight, smallWidth } from "./spread.ts";

/** Up to four bars from a common beginning, the longest in the ink of a loss; what gains has no length. */
export function SmallBars({ values }: { readonly values: readonly number[] }) {
  const most = Math.max(0, ...values);
  const row = smallHeight / Math.max(1, values.length);
  return (
    <svg viewBox={`0 0 ${smallWidth} ${smallHeight}`} aria-hidden="true" className={styles["small"]}>
      {values.map((value, index) => (
        <rect
          key={index}
          x={0}
          y={index * row + 1}
          width={Math.max(1, most === 0 ? 0 : (Math.max(0, value) / most) * smallWidth)}
          height={row - 2}
          className={styles[value > 0 && value === most ? "barMost" : "bar"]}
        />
      ))}
    </svg>
  );
}
