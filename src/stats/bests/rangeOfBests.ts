import type { DatedBest } from "./datedBest.ts";

/** Fastest and slowest of the sessions' best laps of a page, ms; undefined for fewer than two. */
export function rangeOfBests({
  sessionBests,
}: {
  readonly sessionBests: readonly DatedBest[];
}): { readonly low: number; readonly high: number } | undefined {
  const times = sessionBests.map(({ ms }) => ms);
  return times.length < 2 ? undefined : { low: Math.min(...times), high: Math.max(...times) };
}
