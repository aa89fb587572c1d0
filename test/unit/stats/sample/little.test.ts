/** What every figure does with no, one or two laps, with wrong values, and with arrays that must not be changed. */
import { describe, expect, it } from "vitest";
import {
  bestOfK,
  consistency,
  individualsChart,
  lag1Autocorrelation,
  linearFit,
  mannKendall,
  mean,
  median,
  medianAbsoluteDeviation,
  modifiedZScores,
  type Numbers,
  orderedPairsTTest,
  pairedTTest,
  quantile,
  rankSumTest,
  shareWithinMargin,
  signedRankTest,
  standardDeviation,
  successiveScatter,
  summary,
  theilSen,
} from "#stats";

const figures: Record<string, (values: Numbers) => unknown> = {
  mean,
  median,
  standardDeviation,
  medianAbsoluteDeviation,
  lag1Autocorrelation,
  quantile: (values) => quantile(values, 0.3),
  summary,
  bestOfK: (values) => bestOfK(values, 1),
  successiveScatter: (values) => successiveScatter([values]),
  consistency: (values) => consistency([values], 0.9),
  shareWithinMargin: (values) => shareWithinMargin(values, 0.5, 0.9),
  modifiedZScores,
  individualsChart,
  linearFit: (values) => linearFit(values, values),
  theilSen: (values) => theilSen(values, values, 0.9),
  mannKendall,
  signedRankTest: (values) => signedRankTest(values, 0.9),
  rankSumTest: (values) => rankSumTest(values, [1, 2], 0.9),
  rankSumTestSecond: (values) => rankSumTest([1, 2], values, 0.9),
  pairedTTest: (values) => pairedTTest(values, 0.9),
  orderedPairsTTest: (values) =>
    orderedPairsTTest(
      Array.from(values, (difference, index) => ({ difference, first: index % 2 === 0 ? "A" : "B" })),
      0.9,
    ),
};

describe.each(Object.entries(figures))("%s", (_, figure) => {
  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "refuses %d and names it",
    (wrong) => {
      const values = [84_000, 84_100, 84_200, wrong, 84_300, 84_050, 84_150];
      expect(() => figure(values)).toThrow(RangeError);
      expect(() => figure(values)).toThrow(String(wrong));
      expect(() => figure(values)).toThrow("[3]");
      expect(() => figure(Float64Array.from(values))).toThrow(RangeError);
    },
  );

  it("leaves its laps as they are, plain or typed", () => {
    const values = Object.freeze([84_300, 84_000, 84_200, 83_900, 84_000, 84_777, 84_010, 83_950]);
    const typed = Int32Array.from(values);
    expect(figure(typed)).toEqual(figure(values));
    expect(Array.from(typed)).toEqual(values);
  });

  it("gives no NaN for none to three laps or for equal ones", () => {
    for (const values of [
      [],
      [84_000],
      [84_000, 84_100],
      [84_000, 84_100, 83_900],
      new Array(30).fill(84_000),
    ]) {
      expect(JSON.stringify(figure(values), nameNotNumbers) ?? "").not.toContain("not a number");
    }
  });
});

function nameNotNumbers(_: string, value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? "not a number" : value;
}

it.each([
  ["mean", mean([])],
  ["median", median([])],
  ["standard deviation of one lap", standardDeviation([84_000])],
  ["scaled MAD", medianAbsoluteDeviation([])],
  ["lag-1 autocorrelation of one lap", lag1Autocorrelation([84_000])],
  ["quantile", quantile([], 0.5)],
  ["summary", summary([])],
  ["best of ten of nine laps", bestOfK([1, 2, 3, 4, 5, 6, 7, 8, 9], 10)],
  ["scatter of one lap in each run", successiveScatter([[84_000], [84_100]])],
  ["chart of one lap", individualsChart([84_000])],
  ["line through one place", linearFit([3, 3], [1, 2])],
  ["slope through one place", theilSen([3, 3], [1, 2], 0.9)],
  ["trend of one session", mannKendall([84_000])],
  ["signed ranks of zeros", signedRankTest([0, 0], 0.9)],
  ["rank sum against nothing", rankSumTest([1], [], 0.9)],
  ["rank sum of equal laps", rankSumTest([5, 5], [5, 5], 0.9)],
  ["t test of equal differences", pairedTTest([7, 7, 7], 0.9)],
  [
    "ordered pairs of one order",
    orderedPairsTTest(
      [1, 2, 3].map((difference) => ({ difference, first: "A" })),
      0.9,
    ),
  ],
])("unknown: %s", (_, figure) => {
  expect(figure).toBeUndefined();
});
