import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insertSorted, medianOf, scaledDeviation } from "../../../src/entry/usual.ts";

const middle = (values: readonly number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
};

describe("what is usual", () => {
  it("is the median, and 1.4826 times the median of the distances from it", () => {
    // By hand: median 84, distances 2 1 0 2 16, their median 2.
    expect(medianOf([82, 83, 84, 86, 100])).toBe(84);
    expect(scaledDeviation([82, 83, 84, 86, 100])).toBeCloseTo(2.9652, 10);
    expect(scaledDeviation([82, 83, 84, 86])).toBeUndefined();
    expect(medianOf([])).toBeUndefined();
  });

  it("agrees with the definition on any times, put in one by one", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 5, maxLength: 40 }), (times) => {
        const sorted: number[] = [];
        for (const ms of times) insertSorted(sorted, ms);
        expect(sorted).toEqual(times.toSorted((a, b) => a - b));
        const median = middle(times);
        expect(medianOf(sorted)).toBe(median);
        expect(scaledDeviation(sorted)).toBeCloseTo(
          1.4826 * middle(times.map((ms) => Math.abs(ms - median))),
          9,
        );
      }),
      { seed: 41 },
    );
  });
});
