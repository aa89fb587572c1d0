import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import type { RigTestReport } from "#stats";
import { sayRigTest, shiftOf } from "#words";

const report = (verdict: RigTestReport["verdict"], isQuestioned = false): RigTestReport => ({
  isOver: true,
  figure: "usual",
  progress: {
    pairs: [],
    complete: 8,
    planned: 8,
    voided: [],
    inHand: undefined,
    next: undefined,
    isOver: true,
  },
  pairs: [],
  complete: 8,
  planned: 8,
  verdict,
  estimate: undefined,
  check: undefined,
  isQuestioned,
});
const found = (estimate: number, low: number, high: number) => {
  const finding = high < 0 ? "B" : low > 0 ? "A" : "no clear difference";
  return report(known({ estimate, low, high, finding, order: 0, freedom: 6 } as never));
};

test("a rig test says of each of its settings how it drives against the other", () => {
  expect(sayRigTest(found(-310, -500, -125), "B")).toBe("Faster by 0.31 s, very likely at least 0.12 s");
  expect(sayRigTest(found(-310, -500, -125), "A")).toBe("Slower by 0.31 s, very likely at least 0.12 s");
  expect(shiftOf({ estimate: -310, low: -500, high: -125 }, "A")).toEqual({
    estimate: 310,
    low: 125,
    high: 500,
  });
});

test("an interval that holds zero is no clear difference, and too few pairs are too few", () => {
  expect(sayRigTest(found(20, -96, 140), "B")).toBe(
    "Not clearly faster or slower: between 0.10 s faster and 0.14 s slower",
  );
  expect(sayRigTest(report(unknown({ needs: 8, of: "pair of runs", has: 3 })), "B")).toMatch(/3 of 8/);
});

test("a difference too large for a rig is asked about", () => {
  const { verdict } = found(-9000, -9500, -8500);
  expect(sayRigTest(report(verdict, true), "B")).toMatch(/are two combos mixed up\?$/);
});
