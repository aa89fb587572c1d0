import { describe, expect, it } from "vitest";
import { wilsonInterval } from "#stats";
import reference from "./wilson-score-interval.json" with { type: "json" };

describe("Newcombe 1998, Table I, method 3", () => {
  it.each(reference.expected.published95)("$k of $n: 95 % limits as printed", ({ k, n, low, high }) => {
    const interval = wilsonInterval(k, n, 0.95);
    expect(Math.abs((interval?.low ?? Number.NaN) - low)).toBeLessThan(0.00006);
    expect(Math.abs((interval?.high ?? Number.NaN) - high)).toBeLessThan(0.00006);
  });
});

describe("scipy 1.10.1, binomtest().proportion_ci(method wilson)", () => {
  it.each(reference.expected.computed)("$k of $n", ({ k, n, p, low90, high90, low95, high95 }) => {
    const ninety = wilsonInterval(k, n, 0.9);
    const ninetyFive = wilsonInterval(k, n, 0.95);
    expect(ninety?.share).toBe(p);
    expect(ninety?.low).toBeCloseTo(low90, 10);
    expect(ninety?.high).toBeCloseTo(high90, 10);
    expect(ninetyFive?.low).toBeCloseTo(low95, 10);
    expect(ninetyFive?.high).toBeCloseTo(high95, 10);
  });
});
