import { formatLapTime } from "#domain";
import type { TypedLap } from "#entry";

/** What a typed lap was read as: "Read as 1:23.456." */
export function readAs({ ms, decimals }: Pick<TypedLap, "ms" | "decimals">): string {
  return `Read as ${ms === undefined ? "a lap without a time" : formatLapTime(ms, decimals)}.`;
}
