import { Picture } from "../frame/Picture.tsx";
import { textWidth, useRoom } from "../frame/useRoom.ts";
import styles from "./IntervalLine.module.css";

interface IntervalLineProps {
  /** A change with its interval, ms; a fall is faster. */
  readonly low: number;
  readonly estimate: number;
  readonly high: number;
  /** What has changed: lap times unless said, or what is given away. */
  readonly of?: keyof typeof wordsOf;
  /** How far to either side the line goes at least, ms, where several are to stand on one scale. */
  readonly reach?: number;
}

const wordsOf = {
  time: { fall: "faster", none: "no change", rise: "slower" },
  evenness: { fall: "steadier", none: "no change", rise: "less steady" },
  road: { fall: "less", none: "the same", rise: "more" },
} as const;

/**
 * A change between faster and slower, or less and more: the interval as a bar, the estimate as a dot, no change as a rule in the middle. The
 * words beside it say the same.
 */
export function IntervalLine({ low, estimate, high, of = "time", reach = 1 }: IntervalLineProps) {
  const words = wordsOf[of];
  const { box, square, room } = useRoom();
  const { width, em } = room;
  const [left, right] = [textWidth(words.fall, em) + em, width - textWidth(words.rise, em) - em];
  const most = Math.max(Math.abs(low), Math.abs(high), reach) * 1.1;
  const x = (ms: number) => (left + right) / 2 + ((right - left) / 2) * (ms / most);
  const middle = em * 0.8;
  const way = high < 0 ? "gain" : low > 0 ? "loss" : "unclear";
  return (
    <Picture box={box} square={square}>
      <svg aria-hidden="true" width={width} height={em * 2.8}>
        <path d={`M${left} ${middle}H${right}`} className={styles["axis"]} />
        <rect
          x={x(low)}
          y={middle - 5}
          width={Math.max(2, x(high) - x(low))}
          height={10}
          className={styles[way]}
        />
        <path d={`M${x(0)} 0V${em * 1.6}`} className={styles["zero"]} />
        <circle cx={x(estimate)} cy={middle} r={5} className={styles["dot"]} />
        <g fontSize={em} className={styles["words"]}>
          <text x={0} y={middle} dominantBaseline="central">
            {words.fall}
          </text>
          <text x={x(0)} y={em * 2.5} textAnchor="middle">
            {words.none}
          </text>
          <text x={width} y={middle} dominantBaseline="central" textAnchor="end">
            {words.rise}
          </text>
        </g>
      </svg>
    </Picture>
  );
}
