import { describe, expect, it } from "vitest";
import { bestOfK, mean, standardDeviation } from "#stats";
import { normalAt } from "../../../src/stats/random/draws.ts";
import reference from "./best-of-k.json" with { type: "json" };

const { data, expected } = reference;

describe.each(["five", "ties", "twelve", "one"] as const)("every choice enumerated: %s", (name) => {
  it.each(expected.meanBestOverAllChoices[name])("best of $k", ({ k, numerator, denominator }) => {
    expect((bestOfK(data.sets[name], k) ?? Number.NaN) / (numerator / denominator)).toBeCloseTo(1, 12);
  });
});

it.each(expected.meanBestOverAllChoices.big400)("400 laps, best of $k, by exact integers", ({ k, value }) => {
  expect((bestOfK(data.big400, k) ?? Number.NaN) / value).toBeCloseTo(1, 12);
});

it("the best of ten of normal laps lies 1.5388 deviations under their mean (Harter 1961), whatever their number", () => {
  const tenth = expected.expectedMinimumOfNStandardNormals.find(({ n }) => n === 10);
  for (const laps of [10, 25, 60]) {
    const bests = Array.from({ length: 1500 }, (_, session) =>
      bestOfK(
        Array.from({ length: laps }, (_, lap) => normalAt(61, session, lap, laps)),
        10,
      ),
    ) as number[];
    const error = (standardDeviation(bests) ?? 0) / Math.sqrt(bests.length);
    expect(Math.abs((mean(bests) ?? Number.NaN) - (tenth?.printed ?? Number.NaN))).toBeLessThan(4 * error);
  }
});
