import { expect, test } from "vitest";
import type { PlannedRun } from "#domain";
import { suggestionIn } from "#stats";

test.each<readonly [string, readonly Pick<PlannedRun, "rule" | "kind">[], number]>([
  ["the next run of a rig test", [{ rule: "warm-up" }, { rule: "mistakes" }, { rule: "rig test" }], 2],
  ["what costs most", [{ rule: "warm-up", kind: "warm-up" }, { rule: "again" }, { rule: "corner" }], 2],
  ["the driver's own run", [{ kind: "warm-up" }, { kind: "drill" }], 1],
  ["the way round a new circuit", [{ rule: "learn the layout", kind: "warm-up" }, { kind: "pace" }], 0],
  ["the first of all, where all are to get warm", [{ rule: "warm-up" }, { kind: "warm-up" }], 0],
])("the suggestion of a plan is %s", (_, lines, index) => {
  expect(suggestionIn(lines)).toBe(index);
});
