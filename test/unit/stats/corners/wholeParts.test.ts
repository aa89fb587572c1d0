import fc from "fast-check";
import { expect, test } from "vitest";
import { wholeParts } from "../../../../src/stats/corners/wholeParts.ts";

test("what is left goes to the parts cut most", () => {
  expect(wholeParts(5, [2.5, 1.75, 0.25])).toEqual([3, 2, 0]);
  expect(wholeParts(4, [2.5, 1.75, 0.25])).toEqual([2, 2, 0]);
  expect(wholeParts(0, [])).toEqual([]);
  expect(wholeParts(5, [])).toEqual([]);
});

test("of parts cut alike the first gets what is left, and the last is taken from first", () => {
  expect(wholeParts(2, [0.5, 0.5, 0.5, 0.5])).toEqual([1, 1, 0, 0]);
  expect(wholeParts(3, [1.5, 1.5, 1.5])).toEqual([1, 1, 1]);
  expect(wholeParts(2, [1.5, 1.5, 1.5])).toEqual([1, 1, 0]);
});

test("parts may be below zero, and a total below what the parts make together takes from those cut least", () => {
  expect(wholeParts(-2, [-2.5, 0.75])).toEqual([-3, 1]);
  expect(wholeParts(2, [2.5, 1.75, 0.25])).toEqual([2, 1, -1]);
  expect(wholeParts(-3, [-2.5, 0.75])).toEqual([-3, 0]);
});

test("whole numbers that add up to the total, each within one of its part where the total is that of the parts", () => {
  const part = fc.double({ min: -500, max: 500, noNaN: true });
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 12 }), (parts) => {
      const total = Math.round(parts.reduce((sum, value) => sum + value, 0)) + 0;
      const whole = wholeParts(total, parts);
      expect(whole.reduce((sum, value) => sum + value, 0)).toBe(total);
      whole.forEach((value, index) => {
        expect(Number.isInteger(value)).toBe(true);
        expect(Math.abs(value - (parts[index] ?? 0))).toBeLessThanOrEqual(1);
      });
    }),
    { seed: 13, numRuns: 300 },
  );
});
