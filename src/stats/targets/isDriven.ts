import { latestMs } from "#domain";
import type { PastSession } from "../weeks/history.ts";

/** Whether one of the sessions surely has a lap at a time or under it, whatever the digits that are not known. */
export function isDriven(targetMs: number, history: readonly PastSession[]): boolean {
  return history.some(
    ({ bestMs, bestDecimals = 3 }) => latestMs({ ms: bestMs, decimals: bestDecimals }) <= targetMs,
  );
}
