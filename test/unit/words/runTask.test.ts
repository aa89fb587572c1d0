import { expect, test } from "vitest";
import type { PlannedRun } from "#domain";
import { sayRunTask } from "#words";

test.each<readonly [Pick<PlannedRun, "kind" | "laps" | "effort">, string]>([
  [{ laps: 8, effort: "learning" }, "8 laps, learning effort"],
  [{ kind: "warm-up", laps: 1, effort: "easy" }, "1 lap, warm-up, easy"],
  [{ kind: "drill", effort: "brisk" }, "drill, brisk"],
  [{ kind: "race", laps: 12, effort: "full" }, "12 laps, race"],
  [{}, "full effort"],
])("the task of a run in words: %o", (run, words) => {
  expect(sayRunTask(run)).toBe(words);
});
