import { formatLapTime } from "#domain";

/**
 * A lap time as far as it is known.
 * @example sayLapTime(83400, 1) // "about 1:23.4"
 */
export function sayLapTime(ms: number, decimals: number): string {
  return `${decimals < 3 ? "about " : ""}${formatLapTime(ms, decimals)}`;
}
