/** Dots of equally likely races on a line of mean laps. */
export interface RaceDrawing {
  readonly radius: number;
  /** How many dots stand over each other at most. */
  readonly levels: number;
  readonly dots: readonly { readonly x: number; readonly level: number; readonly isFaster: boolean }[];
  /** Place of a mean lap, px. */
  readonly at: (ms: number) => number;
}

/** Dots stand close, yet can be counted. */
const GAP = 2;
const fewest = 5;
const most = 9;

/**
 * Lays equally likely mean laps out as dots: each over its place, those that would overlap over each other. The line reaches
 * from the fastest to the slowest, and to the mean lap that is to be beaten.
 * @param likely mean laps, ms, the fastest first
 * @param toBeat mean lap to be beaten, ms
 */
export function layRace(likely: readonly number[], toBeat: number | undefined, width: number): RaceDrawing {
  const radius = Math.min(most, Math.max(fewest, width / 60));
  const step = 2 * radius + GAP;
  const values = [...likely, ...(toBeat === undefined ? [] : [toBeat])];
  const [from, to] = [Math.min(...values), Math.max(...values)];
  const [left, right] = [step, width - step];
  const at = (ms: number) =>
    to === from ? (left + right) / 2 : left + ((ms - from) / (to - from)) * (right - left);
  const columns = new Map<number, number>();
  const dots = likely.map((ms) => {
    const column = Math.round(at(ms) / step);
    const level = columns.get(column) ?? 0;
    columns.set(column, level + 1);
    return { x: column * step, level, isFaster: toBeat === undefined || ms < toBeat };
  });
  return { radius, levels: Math.max(...columns.values()), dots, at };
}
