import { insertSorted } from "#numbers";
import type { EntryContext } from "./context.ts";

/** The session's times that are known when a line is read, sorted but for `last`; while pasting they grow line by line. */
export interface KnownTimes {
  /** Of the session's laps that say what is usual in this run; short forms are completed from them. */
  readonly pace: number[];
  /** Of the run, in the order driven. */
  readonly last: number[];
  /** Laps like the one typed: of the session, and of its run alone. */
  readonly session: number[];
  readonly run: number[];
}

const sorted = (times: readonly number[]) => times.toSorted((a, b) => a - b);

type Times = Pick<EntryContext, "paceTimes" | "likeTimes" | "runTimes">;

/** The times a context holds. */
export function knownTimes({ paceTimes, likeTimes = paceTimes, runTimes = [] }: Times): KnownTimes {
  return { pace: sorted(paceTimes), last: [...runTimes], session: sorted(likeTimes), run: sorted(runTimes) };
}

/** Puts the time of a clean lap in its places. */
export function learn({ pace, last, session, run }: KnownTimes, ms: number): void {
  last.push(ms);
  insertSorted(session, ms);
  insertSorted(run, ms);
  insertSorted(pace, ms);
}
