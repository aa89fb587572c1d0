import { describe, expect, test } from "vitest";
import { fitExponential } from "../../../src/stats/weeks/fitExponential.ts";
import { fitPower } from "../../../src/stats/weeks/fitPower.ts";
import reference from "./curve-fits-exponential-power.json";

const { data, expected } = reference;
const relative = (value: number, wanted: number, tolerance = 1e-5) =>
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(tolerance);

describe("curve fits against Modern Applied Statistics with S, R and Wright's learning curve", () => {
  test.each(["wtloss", "loblolly301"] as const)("a + b·2^(−x/h): %s as by R", (name) => {
    const { x, y } = data[name];
    const fit = fitExponential(x, y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    const { a, b, h, residualSumOfSquares } = expected[name].fit;
    relative(fit.value.floor, a);
    relative(fit.value.span, b);
    relative(fit.value.halfLife, h);
    relative(fit.value.residualSD ** 2 * (x.length - 3), residualSumOfSquares, 1e-7);
  });

  test("weight loss as printed in the book", () => {
    const fit = fitExponential(data.wtloss.x, data.wtloss.y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    const { a, b, h } = expected.wtloss.published;
    expect(Math.abs(fit.value.floor - a)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(fit.value.span - b)).toBeLessThanOrEqual(0.005);
    expect(Math.abs(fit.value.halfLife - h)).toBeLessThanOrEqual(0.005);
  });

  test("an 80 % learning curve", () => {
    const fit = fitPower(data.wright80.x, data.wright80.y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    relative(fit.value.scale, expected.wright80.b1);
    relative(fit.value.exponent, expected.wright80.b2);
    expect(fit.value.residualSD).toBeCloseTo(0, 6);
  });
});
