import { ribbonPath } from "../progress/ribbon.ts";
import styles from "./Small.module.css";
import { smallHeight, smallWidth, spread } from "./spread.ts";

/** A value on its day, and the range it lies in where that is known. */
export interface SmallPoint {
  readonly x: number;
  readonly mid: number;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
}

interface SmallLineProps {
  /** In order of x. */
  readonly points: readonly SmallPoint[];
  /** Only what was measured, as dots: too few for a line, let alone a band. */
  readonly isDots?: boolean;
  /** The least that the height stands for, so that what hardly moves looks flat. */
  readonly leastSpan?: number;
  /** What it shows may be chance: drawn in ink, not in the colour of a finding. */
  readonly isChance?: boolean;
}

const edge = 4;

const bandOf = ({ mid, low = mid, high = mid }: SmallPoint) => [low, mid, high];

/** A line of weeks as small as a word: band, line, and a dot where it ends. The words beside it say the same. */
export function SmallLine({ points, leastSpan = 0, isDots = false, isChance = false }: SmallLineProps) {
  const mids = points.map(({ mid }) => mid);
  const [low, high] = [Math.min(...mids), Math.max(...mids)];
  // One wide range is cut off rather than that the line becomes flat.
  const air = Math.max(isDots ? 0 : 0.35 * (high - low), (leastSpan - (high - low)) / 2);
  const values = air > 0 ? [low - air, high + air] : points.flatMap(bandOf);
  const x = spread(
    points.map((point) => point.x),
    [edge, smallWidth - edge],
  );
  const y = spread(values, [smallHeight - edge, edge]);
  const at = points.map(({ x: day, mid }) => `${x(day)} ${y(mid)}`);
  const dots = (isDots ? at : at.slice(-1)).map((place) => `M${place}h0`).join("");
  const band = points.flatMap(({ x: day, low, high }) =>
    low === undefined || high === undefined ? [] : [{ x: x(day), low: y(low), high: y(high) }],
  );
  const ink = isChance || isDots ? "Ink" : "";
  return (
    <svg viewBox={`0 0 ${smallWidth} ${smallHeight}`} aria-hidden="true" className={styles["cut"]}>
      {!isDots && (
        <>
          <path d={ribbonPath(band)} className={styles[`band${ink}`]} />
          <path d={at.length < 2 ? "" : `M${at.join("L")}`} className={styles[`line${ink}`]} />
        </>
      )}
      <path d={dots} className={styles[`dot${ink}`]} />
    </svg>
  );
}
