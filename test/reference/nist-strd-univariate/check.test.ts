import { describe, expect, it } from "vitest";
import { lag1Autocorrelation, mean, median, standardDeviation, successiveScatter } from "#stats";
import reference from "./nist-strd-univariate.json" with { type: "json" };

/** The decimals of these two sets are not binary numbers, so the data differ from the published ones by rounding. */
const relative = {
  Lew: 1e-12,
  Lottery: 1e-12,
  PiDigits: 1e-12,
  NumAcc1: 1e-12,
  NumAcc2: 1e-10,
  NumAcc3: 1e-8,
};
const names = Object.keys(relative) as (keyof typeof relative)[];

function expectNear(actual: number | undefined, wanted: number, tolerance: number) {
  expect(Math.abs((actual ?? Number.NaN) - wanted)).toBeLessThanOrEqual(
    tolerance * Math.max(1, Math.abs(wanted)),
  );
}

describe.each(names)("NIST StRD, univariate summary statistics, %s", (name) => {
  const values = reference.data[name];
  const { certified, computedExactly } = reference.expected[name];
  const tolerance = relative[name];

  it("mean, as certified", () => expectNear(mean(values), certified.mean, 1e-14));

  it("standard deviation, as certified", () =>
    expectNear(standardDeviation(values), certified.standardDeviation, tolerance));

  it("lag-1 autocorrelation, as certified", () =>
    expectNear(lag1Autocorrelation(values), certified.lag1Autocorrelation, tolerance));

  it("median and scatter, computed with exact fractions", () => {
    expectNear(median(values), computedExactly.median, 1e-15);
    const scatter = computedExactly.scatter_sqrtHalfMeanSquaredSuccessiveDifference;
    expectNear(successiveScatter([values]), scatter, tolerance);
  });
});

it("NIST StRD NumAcc4, built from its rule, certified values from memory", () => {
  const values = [10000000.2];
  for (let i = 0; i < 500; i++) values.push(10000000.1, 10000000.3);
  expectNear(mean(values), 10000000.2, 1e-15);
  expectNear(standardDeviation(values), 0.1, 1e-7);
  expectNear(lag1Autocorrelation(values), -0.999, 1e-7);
});
