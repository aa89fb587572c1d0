import type { Drive } from "./evening.ts";
import { lapsOfTestRun } from "./gainTest.ts";

/** A pace run at full effort in the dry. */
export const pace = (laps: number, more: Partial<Drive> = {}): Drive => ({ laps, ...more });
/** A warm-up run, easy. */
export const warmUp = (laps: number, more: Partial<Drive> = {}): Drive => ({
  laps,
  kind: "warm-up",
  effort: "easy",
  ...more,
});
/** A drill at learning effort. */
export const drill = (laps: number, more: Partial<Drive> = {}): Drive => ({
  laps,
  kind: "drill",
  effort: "learning",
  ...more,
});
/** A run in the rain. */
export const wet = (laps: number, more: Partial<Drive> = {}): Drive => ({ laps, surface: "wet", ...more });
/** Two runs of a rig test, one with each setting: long enough that five of their laps are clean. */
export const pair: readonly Drive[] = [
  pace(lapsOfTestRun, { isPairOfTest: true }),
  pace(lapsOfTestRun, { isPairOfTest: true }),
];
