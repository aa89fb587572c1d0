import { expect, test } from "vitest";
import { nextSetting } from "../../../../src/stats/verdict/nextSetting.ts";

test("the first run that is lacking comes next, in the order of its pair", () => {
  expect(nextSetting({ pairs: [{ first: "A" }, { first: "B" }] })).toBe("A");
  expect(nextSetting({ pairs: [{ first: "A", runA: "1" }, { first: "B" }] })).toBe("B");
  expect(nextSetting({ pairs: [{ first: "B", runA: "1" }, { first: "A" }] })).toBe("B");
  expect(nextSetting({ pairs: [{ first: "A", runA: "1", runB: "2" }, { first: "B" }] })).toBe("B");
  expect(nextSetting({ pairs: [{ first: "A", runA: "1" }, { first: "A" }] })).toBe("B");
  expect(nextSetting({ pairs: [{ first: "B", runB: "1" }, { first: "B" }] })).toBe("A");
});

test("a complete or ended test has no run to come", () => {
  expect(nextSetting({ pairs: [{ first: "A", runA: "1", runB: "2" }] })).toBeUndefined();
  expect(nextSetting({ pairs: [{ first: "A" }], endedAt: 1 })).toBeUndefined();
});
