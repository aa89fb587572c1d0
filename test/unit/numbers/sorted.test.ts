import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { insertSorted, medianAbsoluteDeviationOfSorted, medianOfSorted } from "#numbers";

const middle = (values: readonly number[]) => {
  const sorted = values.toSorted((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2;
};

describe("sorted numbers", () => {
  it("have the median, and 1.4826 values the median of the distances from it", () => {
    // By hand: median 84, distances 2 1 0 2 16, their median 2.
    expect(medianOfSorted([82, 83, 84, 86, 100])).toBe(84);
    expect(medianAbsoluteDeviationOfSorted([82, 83, 84, 86, 100])).toBeCloseTo(2.9652, 10);
    expect(medianAbsoluteDeviationOfSorted([])).toBeUndefined();
    expect(medianOfSorted([])).toBeUndefined();
  });

  it("agree with the definition on any values, put in one by one", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 5, maxLength: 40 }), (values) => {
        const sorted: number[] = [];
        for (const value of values) insertSorted(sorted, value);
        expect(sorted).toEqual(values.toSorted((a, b) => a - b));
        const median = middle(values);
        expect(medianOfSorted(sorted)).toBe(median);
        expect(medianAbsoluteDeviationOfSorted(sorted)).toBeCloseTo(
          1.4826 * middle(values.map((value) => Math.abs(value - median))),
          9,
        );
      }),
      { seed: 41 },
    );
  });
});
