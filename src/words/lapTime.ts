import { differenceShown, formatLapTime, formatSeconds, type ShownTime } from "#domain";

/**
 * A lap time as far as it is known.
 * @example sayLapTime(83400, 1) // "about 1:23.4"
 */
export function sayLapTime(ms: number, decimals: number): string {
  return `${decimals < 3 ? "about " : ""}${formatLapTime(ms, decimals)}`;
}

/**
 * How far apart two lap times are, as far as both are known.
 * @example sayApart({ ms: 84_900 }, { ms: 83_704 }) // "1.196 s"
 * @example sayApart({ ms: 84_900 }, { ms: 84_400, decimals: 1 }) // "about 0.5 s"
 */
export function sayApart(from: ShownTime, to: ShownTime): string {
  const { ms, decimals } = differenceShown(from, to);
  return `${decimals < 3 ? "about " : ""}${formatSeconds(Math.abs(ms), decimals)}`;
}
