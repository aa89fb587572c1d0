import { formatLapTime } from "#domain";

/**
 * The usual lap of laps that were driven, on every page: to the decimals that they are known to.
 * @param ms a median, which may be half of a millisecond
 * @param decimals from `usualDecimals`; three where not said
 * @example sayUsual(84_450, 1) // "1:24.4"
 */
export function sayUsual(ms: number, decimals?: number): string {
  return formatLapTime(ms, decimals);
}

/**
 * A level as a time, on every page: the level model knows none to the thousandth, so it is rounded to the hundredth.
 * @example sayLevel(84_317.4) // "1:24.32"
 */
export function sayLevel(ms: number): string {
  return formatLapTime(Math.round(ms / 10) * 10, 2);
}
