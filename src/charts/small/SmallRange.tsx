import styles from "./Small.module.css";
import { smallHeight, smallWidth, spread } from "./spread.ts";

interface SmallRangeProps {
  /** A difference and the ends of its interval. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** What its scale spans as well: the ends of the others in a list, so that lengths can be compared. */
  readonly among?: readonly number[];
}

const edge = 8;

/** One difference on its interval, beside the line of none: in the ink of a gain or loss only where it is clear of it. */
export function SmallRange({ value, low, high, among = [] }: SmallRangeProps) {
  const x = spread([0, low, high, ...among], [edge, smallWidth - edge]);
  const ink = high < 0 ? "Gain" : low > 0 ? "Loss" : "Ink";
  const middle = smallHeight / 2;
  return (
    <svg viewBox={`0 0 ${smallWidth} ${smallHeight}`} aria-hidden="true" className={styles["small"]}>
      <path d={`M${x(0)} 4V${smallHeight - 4}`} className={styles["ground"]} />
      <path
        d={`M${x(low)} ${middle}H${x(high)}M${x(low)} ${middle - 5}v10M${x(high)} ${middle - 5}v10`}
        className={styles[`line${ink}`]}
      />
      <path d={`M${x(value)} ${middle}h0`} className={styles[`dot${ink}`]} />
    </svg>
  );
}
