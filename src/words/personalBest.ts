import { sayDate } from "#domain";
import type { DatedBest } from "#stats";
import { counted } from "./counted.ts";
import { sayApart, sayLapTime } from "./lapTime.ts";

/**
 * The PB and since when it stands.
 * @param bests the page's personal-best line, oldest first
 * @example "PB 1:23.704 since Wed 14 Oct 2026, 1.204 s faster than the first one, of Tue 1 Sep 2026"
 */
export function personalBestTitle(bests: readonly DatedBest[]): string {
  const [first, last] = [bests[0], bests.at(-1)];
  if (first === undefined || last === undefined) return "No PB yet";
  const pb = `PB ${sayLapTime(last.ms, last.decimals)} since ${sayDate(last.date)}`;
  if (bests.length === 1) return pb;
  return `${pb}, ${sayApart(first, last)} faster than the first one, of ${sayDate(first.date)}`;
}

/** How the PB came down, and what a best lap does not say. */
export function personalBestReading(bests: readonly DatedBest[]): string {
  const first = bests[0];
  if (first === undefined) return "The first clean lap with a time makes one.";
  const steps = `${counted(bests.length, "step")} since ${sayDate(first.date)}.`;
  return `${steps} More laps alone make a best lap faster: the best of ten compares sessions fairly.`;
}
