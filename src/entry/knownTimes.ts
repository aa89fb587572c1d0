import { insertSorted } from "#numbers";
import type { EntryContext } from "./context.ts";

/** The session's times that are known when a line is read, sorted; while pasting they grow line by line. */
export interface KnownTimes {
  /** What short forms are completed from. */
  readonly pace: number[];
  /** Laps like the one typed: of the session, and of its run alone. */
  readonly session: number[];
  readonly run: number[];
}

const sorted = (times: readonly number[]) => times.toSorted((a, b) => a - b);

/** The times a context holds. */
export function knownTimes({ paceTimes, likeTimes = paceTimes, runTimes = [] }: EntryContext): KnownTimes {
  return { pace: sorted(paceTimes), session: sorted(likeTimes), run: sorted(runTimes) };
}

/** Puts the time of a clean lap in its places. */
export function learn({ pace, session, run }: KnownTimes, ms: number, { isPaceRun }: EntryContext): void {
  insertSorted(session, ms);
  insertSorted(run, ms);
  if (isPaceRun !== false) insertSorted(pace, ms);
}
