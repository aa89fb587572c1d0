import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import type { FinishedTestReport, RigTestReport } from "#stats";
import {
  saidSides,
  sayPairsFallen,
  sayRigTest,
  sayTestCheck,
  sayTestEstimate,
  sayTestInShort,
  shiftOf,
} from "#words";

const gain = { sayA: "gain 72 %", sayB: "gain 54 %", level: 0.1, smallestMs: 120 };

const report = (
  verdict: RigTestReport["verdict"],
  more: Partial<FinishedTestReport> = {},
): FinishedTestReport => ({
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
  isQuestioned: false,
  ...more,
});
const found = (estimate: number, low: number, high: number, more: Partial<FinishedTestReport> = {}) => {
  const finding = high < 0 ? "B" : low > 0 ? "A" : "no clear difference";
  return report(known({ estimate, low, high, finding, order: 0, freedom: 6 } as never), more);
};

test("a rig test says which setting is faster, by how much, and between which bounds the truth lies", () => {
  expect(sayRigTest(found(-310, -500, -125), gain)).toBe(
    "B (gain 54 %) is 0.31 s a lap faster; with 8 pairs the true difference is between 0.12 and 0.50 s, 9 in 10",
  );
  expect(sayRigTest(found(-310, -500, -125), gain, "A")).toBe(
    "A (gain 72 %) is 0.31 s a lap slower; with 8 pairs the true difference is between 0.12 and 0.50 s, 9 in 10",
  );
  expect(shiftOf({ estimate: -310, low: -500, high: -125 }, "A")).toEqual({
    estimate: 310,
    low: 125,
    high: 500,
  });
});

test("a clear difference under the smallest that matters says so", () => {
  expect(sayRigTest(found(50, 5, 95), gain)).toBe(
    "B (gain 54 %) is 0.05 s a lap slower; with 8 pairs the true difference is up to 0.10 s, 9 in 10: less than the 0.12 s that would matter",
  );
});

test("an interval that holds zero rules out what would matter, or says that it is not clear", () => {
  expect(sayRigTest(found(20, -76, 116), gain)).toBe(
    "No difference of more than 0.12 s: with 8 pairs B (gain 54 %) is between 0.08 s faster and 0.12 s slower, 9 in 10",
  );
  expect(sayRigTest(found(20, -96, 140), gain)).toBe(
    "Not clearly faster or slower: with 8 pairs B (gain 54 %) is between 0.10 s faster and 0.14 s slower, 9 in 10",
  );
  expect(sayRigTest(found(20, -96, 140), { ...gain, level: 0.05 })).toMatch(/19 in 20$/);
});

test("a test of how far laps differ says steadier, not faster", () => {
  expect(sayRigTest(found(-80, -150, -12, { figure: "scatter" }), gain)).toBe(
    "B (gain 54 %) is 0.08 s steadier from lap to lap; with 8 pairs the true difference is between 0.01 and 0.15 s, 9 in 10",
  );
});

test("too few pairs are too few, and a stopped test gives an estimate and claims nothing", () => {
  expect(sayRigTest(report(unknown({ needs: 8, of: "pair of runs", has: 3 })), gain)).toMatch(/3 of 8/);
  const stopped = report(unknown({ because: "test stopped early", pairs: 3, planned: 8 }), {
    complete: 3,
    estimate: { estimate: -120, low: -300, high: 60 } as never,
  });
  expect(sayRigTest(stopped, gain)).toBe("Stopped after 3 of 8 pairs: an estimate, no claim");
  expect(sayTestEstimate(stopped, gain)).toMatch(/^B \(gain 54 %\) was 0\.12 s a lap faster .* chance/);
  expect(sayTestEstimate(found(-310, -500, -125), gain)).toBe("");
  const partly = report(unknown({ because: "pairs not here", pairs: 6, planned: 7 }), {
    complete: 6,
    estimate: { estimate: -120, low: -300, high: 60 } as never,
  });
  expect(sayRigTest(partly, gain)).toBe("6 of 7 pairs are in this logbook: an estimate, no claim");
  expect(sayTestEstimate(partly, gain)).toMatch(/may be chance\..* merge the whole logbook\.$/);
});

test("a difference too large for a rig is asked about", () => {
  expect(sayRigTest(found(-9000, -9500, -8500, { isQuestioned: true }), gain)).toMatch(
    /are two combos mixed up\?$/,
  );
});

test("in short the settings go by their names", () => {
  expect(sayTestInShort(found(-310, -500, -125), gain)).toBe(
    "Gain 54 % is 0.31 s a lap faster than gain 72 %",
  );
  expect(sayTestInShort(found(310, 125, 500), gain)).toBe("Gain 72 % is 0.31 s a lap faster than gain 54 %");
  expect(sayTestInShort(found(20, -96, 140), gain)).toBe(
    "Gain 54 % or gain 72 %: not clearly faster or slower",
  );
  expect(sayTestInShort(found(20, -76, 116), gain)).toBe(
    "Gain 54 % or gain 72 %: no difference of more than 0.12 s",
  );
});

test("settings of old rows go by their records, and by their letters where those are gone", () => {
  const records = [
    { id: "a", name: "gain up", from: "2026-10-01" },
    { id: "b", name: "", from: "2026-10-14" },
  ];
  expect(saidSides({ rigA: "a", rigB: "b" }, records)).toEqual({
    sayA: "gain up",
    sayB: "the record from Wed 14 Oct 2026",
  });
  expect(saidSides({ rigA: "x" })).toEqual({ sayA: "setting A", sayB: "setting B" });
});

test("the check by ranks agrees or does not, and never decides", () => {
  const ranks = (p: number) => ({ check: { p, exact: true } as never });
  expect(sayTestCheck(found(-310, -500, -125, ranks(0.016)), gain)).toBe(
    "Check by ranks alone (exact signed-rank test): of two equal settings, 2 tests in 100 look as different as these pairs. It agrees.",
  );
  expect(sayTestCheck(found(-310, -500, -125, ranks(0.2)), gain)).toMatch(/By itself it would not decide/);
  expect(sayTestCheck(found(20, -96, 140, ranks(0.05)), gain)).toMatch(/it would see a difference/);
  expect(sayTestCheck(found(20, -96, 140, ranks(0.5)), gain)).toMatch(/It agrees\.$/);
});

test("the chart counts the pairs that fall", () => {
  const pair = (difference: number) => ({ first: "A" as const, a: 0, b: difference, difference });
  expect(sayPairsFallen(found(0, -1, 1, { pairs: [pair(-5), pair(3), pair(-1)] }))).toMatch(
    /B was faster in 2 of 3 pairs\.$/,
  );
});
