import { formatLapTime } from "#domain";

/** A time with its minute, whatever its length, so that it reads the same wherever it is typed: "0:59.120". */
export function wholeTime(ms: number, decimals: number): string {
  const shown = formatLapTime(ms, decimals);
  return ms >= 60_000 ? shown : `0:${ms < 10_000 ? "0" : ""}${shown}`;
}
