import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  chiSquaredCdf,
  chiSquaredQuantile,
  normalCdf,
  normalQuantile,
  studentTCdf,
  studentTQuantile,
} from "#numbers";
import { logGamma } from "../../../src/numbers/distributions/logGamma.ts";

const share = fc.double({ min: 1e-12, max: 1 - 1e-9, noNaN: true });
const degrees = fc.double({ min: 0.3, max: 2000, noNaN: true });
const runs = { seed: 99, numRuns: 500 };

describe("quantile and share undo each other", () => {
  it.each([
    ["normal", (p: number) => normalCdf(normalQuantile(p))],
    ["t", (p: number, df: number) => studentTCdf(studentTQuantile(p, df), df)],
    ["chi-squared", (p: number, df: number) => chiSquaredCdf(chiSquaredQuantile(p, df), df)],
  ])("%s, also far out in the tails", (_, there) => {
    fc.assert(
      fc.property(share, degrees, (p, df) => {
        expect(Math.abs(there(p, df) / p - 1)).toBeLessThan(1e-10);
      }),
      runs,
    );
  });
});

describe("distributions", () => {
  it("normal and t are symmetric about zero", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 8, noNaN: true }), degrees, (z, df) => {
        expect(normalCdf(z) + normalCdf(-z)).toBeCloseTo(1, 14);
        expect(studentTCdf(z, df) + studentTCdf(-z, df)).toBeCloseTo(1, 14);
      }),
      runs,
    );
  });

  it("t with one degree of freedom is Cauchy's, chi-squared with two is exponential", () => {
    for (const x of [0.1, 1, 3, 40]) {
      expect(studentTCdf(x, 1)).toBeCloseTo(0.5 + Math.atan(x) / Math.PI, 13);
      expect(chiSquaredCdf(x, 2)).toBeCloseTo(1 - Math.exp(-x / 2), 13);
    }
  });

  it("t comes near to the normal as its degrees of freedom grow", () => {
    expect(studentTQuantile(0.975, 1e7)).toBeCloseTo(normalQuantile(0.975), 6);
  });

  it("the logarithm of the gamma function follows the factorials", () => {
    let factorial = 1;
    for (let n = 1; n < 20; n++) {
      expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 11);
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 13);
  });

  it.each([0, 1, -0.1, 1.5, Number.NaN])("refuses the share %d", (p) => {
    expect(() => normalQuantile(p)).toThrow(RangeError);
    expect(() => studentTQuantile(p, 3)).toThrow(RangeError);
    expect(() => chiSquaredQuantile(p, 3)).toThrow(RangeError);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d degrees of freedom", (df) => {
    expect(() => studentTQuantile(0.9, df)).toThrow(RangeError);
    expect(() => chiSquaredCdf(1, df)).toThrow(RangeError);
  });
});
