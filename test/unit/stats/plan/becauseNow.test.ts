import { expect, test } from "vitest";
import { becauseNow } from "#stats";
import { steadyFacts } from "../../../support/planFacts.ts";

test("a rule that would speak today says why, one that would not says nothing", () => {
  const rigTest = { id: "t", laps: 6, runs: 3 };
  expect(becauseNow("rig test", { ...steadyFacts, rigTest })).toEqual([
    { because: "rig test waits", runs: 3 },
  ]);
  expect(becauseNow("rig test", steadyFacts)).toEqual([]);
  expect(becauseNow("learn the layout", steadyFacts)).toEqual([]);
  const driven = { sessions: 1, laps: 6, before: 0 };
  expect(becauseNow("learn the layout", { ...steadyFacts, driven })[0]).toEqual({
    because: "new here",
    laps: 6,
  });
});
