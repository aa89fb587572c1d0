import { expect, it } from "vitest";
import { linearFit } from "#stats";
import reference from "./nist-strd-linear.json" with { type: "json" };

const { x, y } = reference.data.Norris;
const { certified, computedWithR } = reference.expected.Norris;
const fit = linearFit(x, y);

it.each([
  ["slope", fit?.slope, certified.slope, 1e-12],
  ["intercept", fit?.intercept, certified.intercept, 1e-10],
  ["standard error of the slope", fit?.slopeSE, certified.slopeStandardError, 1e-10],
  ["standard error of the intercept", fit?.interceptSE, certified.interceptStandardError, 1e-10],
  ["R²", fit?.rSquared, certified.rSquared, 1e-14],
  ["residual standard deviation (from memory)", fit?.residualSD, certified.residualStandardDeviation, 1e-10],
])("NIST StRD Norris: %s, as certified", (_, actual, wanted, tolerance) => {
  expect(Math.abs((actual ?? Number.NaN) / wanted - 1)).toBeLessThan(tolerance);
});

it("residual sum of squares, computed with R 4.2.2 lm()", () => {
  const squares = (fit?.residualSD ?? Number.NaN) ** 2 * (x.length - 2);
  expect(squares / computedWithR.residualSumOfSquares).toBeCloseTo(1, 10);
});
