import styles from "./Small.module.css";
import { smallHeight, smallWidth } from "./spread.ts";

/** How much of something on each day or in each week, in order; where there was none there is a gap. */
export function SmallColumns({ values }: { readonly values: readonly number[] }) {
  const most = Math.max(1, ...values);
  const column = smallWidth / Math.max(1, values.length);
  const gap = Math.min(3, column * 0.3);
  return (
    <svg viewBox={`0 0 ${smallWidth} ${smallHeight}`} aria-hidden="true" className={styles["small"]}>
      <path d={`M0 ${smallHeight - 0.5}H${smallWidth}`} className={styles["ground"]} />
      {values.map((value, index) => {
        const height = (Math.max(0, value) / most) * (smallHeight - 2);
        return (
          <rect
            key={index}
            x={index * column + gap / 2}
            y={smallHeight - 1 - height}
            width={column - gap}
            height={height}
            className={styles["column"]}
          />
        );
      })}
    </svg>
  );
}
