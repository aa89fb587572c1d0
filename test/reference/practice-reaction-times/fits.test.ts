import { describe, expect, test } from "vitest";
import { fitExponential, fitPower } from "#stats";
import reference from "./practice-reaction-times.json";

const { x, blockMediansMs } = reference.data;
const people = Object.keys(blockMediansMs) as (keyof typeof blockMediansMs)[];
const relative = (value: number, wanted: number, tolerance = 1e-4) =>
  expect(Math.abs(value / wanted - 1)).toBeLessThanOrEqual(tolerance);

describe.each(people)("practice of %s: reaction times of Morey, fits by R and numpy", (person) => {
  const y = blockMediansMs[person];
  const expected = reference.expected[person];

  test("exponential, or a reason where there is no minimum", () => {
    const fit = fitExponential(x, y);
    const wanted = expected.leastSquaresExponential;
    if (typeof wanted === "string") {
      expect(fit.known).toBe(false);
      return;
    }
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    relative(fit.value.floor, wanted.a);
    relative(fit.value.span, wanted.b);
    relative(fit.value.halfLife, wanted.h);
    relative(fit.value.residualSD ** 2 * (x.length - 3), wanted.residualSumOfSquares, 1e-7);
  });

  test("power", () => {
    const fit = fitPower(x, y);
    if (!fit.known) throw new Error(JSON.stringify(fit.reason));
    const { b1, b2, residualSumOfSquares } = expected.leastSquaresPower;
    relative(fit.value.scale, b1);
    // Where practice hardly changes anything the given fit stopped early: refined in long double, sub057 is −0.00158554.
    expect(Math.abs(fit.value.exponent - b2)).toBeLessThanOrEqual(1e-4 * Math.abs(b2) + 1e-7);
    relative(fit.value.residualSD ** 2 * (x.length - 2), residualSumOfSquares, 1e-7);
  });
});
