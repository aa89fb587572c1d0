import { describe, expect, test } from "vitest";
import { fitExponential } from "../../../src/stats/weeks/fitExponential.ts";
import { fitPower } from "../../../src/stats/weeks/fitPower.ts";
import reference from "./nist-strd-nonlinear.json";

const { data, expected } = reference;
const relative = (value: number, wanted: number, tolerance = 1e-6) =>
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(tolerance);

describe("curve fits against NIST StRD", () => {
  test("DanWood: the certified power curve", () => {
    const fit = fitPower(data.DanWood.x, data.DanWood.y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    const { b1, b2, residualStandardDeviation, residualSumOfSquares } = expected.DanWood.certified;
    relative(fit.value.scale, b1);
    relative(fit.value.exponent, b2);
    relative(fit.value.residualSD, residualStandardDeviation);
    relative(fit.value.residualSD ** 2 * 4, residualSumOfSquares, 1e-8);
  });

  test("Misra1a: the free exponential as by R, closer than the certified one held at the origin", () => {
    const { x, y } = data.Misra1a;
    const fit = fitExponential(x, y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    const { a, b, h, residualSumOfSquares } = expected.Misra1a.threeParameterFitComputedWithR;
    relative(fit.value.floor, a);
    relative(fit.value.span, b);
    relative(fit.value.halfLife, h);
    const squares = fit.value.residualSD ** 2 * (x.length - 3);
    relative(squares, residualSumOfSquares, 1e-8);
    expect(squares).toBeLessThan(expected.Misra1a.certified.residualSumOfSquares);
  });
});
