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

  it("nothing lies below zero in chi-squared and half of t does, and all lies below infinity", () => {
    for (const df of [0.7, 1, 2, 30]) {
      expect([-1, 0, Number.POSITIVE_INFINITY].map((x) => chiSquaredCdf(x, df))).toEqual([0, 0, 1]);
      expect(studentTCdf(0, df)).toBe(0.5);
      expect(studentTQuantile(0.5, df)).toBe(0);
    }
    expect([normalCdf(0), normalQuantile(0.5)]).toEqual([0.5, 0]);
  });

  it("the normal quantile far out, as Wichura's algorithm AS 241 was checked with (1988; values from memory)", () => {
    expect(normalQuantile(0.25)).toBeCloseTo(-0.6744897501960817, 14);
    expect(normalQuantile(0.001)).toBeCloseTo(-3.090232306167814, 13);
    expect(normalQuantile(1e-20)).toBeCloseTo(-9.2623400897984, 12);
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
    // Γ(x + 1) = x·Γ(x), and near 0 it is 1/x, less Euler's constant.
    for (const x of [0.05, 0.2, 0.45, 0.7])
      expect(logGamma(x)).toBeCloseTo(logGamma(x + 1) - Math.log(x), 12);
    expect(Math.exp(logGamma(1e-6)) - 1e6).toBeCloseTo(-0.5772156649, 4);
  });

  it.each([0, 1, -0.1, 1.5, Number.NaN])("refuses the share %d", (p) => {
    const why = new RangeError(`p is ${p}: a fraction between 0 and 1 is needed`);
    expect(() => normalQuantile(p)).toThrow(why);
    expect(() => studentTQuantile(p, 3)).toThrow(why);
    expect(() => chiSquaredQuantile(p, 3)).toThrow(why);
  });

  it.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])("refuses %d degrees of freedom", (df) => {
    const why = new RangeError(`degreesOfFreedom is ${df}: a number above 0 is needed`);
    expect(() => studentTQuantile(0.9, df)).toThrow(why);
    expect(() => chiSquaredCdf(1, df)).toThrow(why);
  });
});
