import type { Effort, PlannedRun, RunKind } from "#domain";
import { counted } from "./counted.ts";

/** Kinds of a run, as they are called everywhere. */
export const kindWords: Readonly<Record<RunKind, string>> = {
  "warm-up": "warm-up",
  drill: "drill",
  pace: "pace",
  race: "race",
};

/** Efforts of a run, as they are called everywhere. */
export const effortWords: Readonly<Record<Effort, string>> = {
  easy: "easy",
  learning: "learning effort",
  brisk: "brisk",
  full: "full effort",
};

/**
 * What is driven in a line of a plan: how many laps, of which kind, how hard. Pace goes without saying, and so does the effort
 * of a race.
 * @example "8 laps, learning effort", "3 laps, warm-up, easy"
 */
export function sayRunTask({
  kind = "pace",
  laps,
  effort = "full",
}: Pick<PlannedRun, "kind" | "laps" | "effort">): string {
  return [
    ...(laps === undefined ? [] : [counted(laps, "lap")]),
    ...(kind === "pace" ? [] : [kindWords[kind]]),
    ...(kind === "race" ? [] : [effortWords[effort]]),
  ].join(", ");
}
