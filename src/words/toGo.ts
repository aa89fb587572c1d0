import type { ToGo } from "#stats";
import { hundredths, sayAmount } from "./amount.ts";

/**
 * How far it is to a target or a reference lap, as a list wants it.
 * @example "0.15 s to target", "0.30 s under reference"
 */
export function sayToGo({ to, ms }: ToGo): string {
  if (ms === 0) return `at ${to}`;
  return `${sayAmount(ms, hundredths)} ${ms > 0 ? "to" : "under"} ${to}`;
}

/** How much laps differ: "0.31 s". */
export function sayScatterAsTime(scatterMs: number): string {
  return sayAmount(scatterMs, hundredths);
}
