import { expect, test } from "vitest";
import {
  mean,
  quantile,
  requireFinite,
  requireFraction,
  requireNumber,
  requireNumberAt,
  requireSameLength,
  squaredDeviations,
} from "#numbers";

test("a value that is no finite number is refused, with its name, its place and what it was", () => {
  expect(() => requireFinite([1, 2, Number.NaN])).toThrow(
    new RangeError("values[2] is NaN: a finite number is needed"),
  );
  expect(() => requireFinite([Number.POSITIVE_INFINITY], "laps")).toThrow(/^laps\[0\] is Infinity/);
  expect(() => requireFinite([])).not.toThrow();
  expect(() => requireFinite([0, -1])).not.toThrow();
  expect(() => requireNumberAt(undefined, "x", 3)).toThrow(/^x\[3\] is undefined/);
  expect(() => requireNumberAt(0, "x", 3)).not.toThrow();
  expect(() => requireNumber(Number.NaN, "mean")).toThrow(/^mean is NaN/);
  expect(() => requireNumber(0, "mean")).not.toThrow();
});

test("a confidence of 0 or 1 is refused by its name, and columns of different lengths with both lengths", () => {
  for (const value of [0, 1, -1, 2, Number.NaN])
    expect(() => requireFraction(value, "level")).toThrow(
      new RangeError(`level is ${value}: a fraction between 0 and 1 is needed`),
    );
  expect(() => requireFraction(0.9, "level")).not.toThrow();
  expect(() => requireSameLength([1, 2], [1, 2, 3])).toThrow(/^x has 2 values and y has 3/);
  expect(() => requireSameLength([1], [2])).not.toThrow();
});

test("the mean of values whose sum is beyond the largest number is still theirs", () => {
  const large = 1.5e308;
  expect(Number(mean([large, large, large])) / large).toBeCloseTo(1, 12);
  expect(mean([large, large, -large, -large])).toBe(0);
});

test("a mean of many large values keeps its digits, and so do their squared deviations", () => {
  const values = Array.from({ length: 1000 }, (_, index) => 1e9 + 0.1 + (index % 2));
  expect(mean(values)).toBeCloseTo(1e9 + 0.6, 6);
  // About any other centre the deviations are the same: what the centre is off by is taken off again.
  for (const off of [0, 0.25, -3]) expect(squaredDeviations([1, 2, 4, 9], 4 + off)).toBeCloseTo(38, 10);
});

test("a share outside 0 to 1 has no quantile; 0 and 1 are the least and the greatest", () => {
  for (const p of [-0.01, 1.01, Number.NaN])
    expect(() => quantile([1, 2], p)).toThrow(new RangeError(`p is ${p}: a share from 0 to 1 is needed`));
  expect([quantile([3, 1, 2], 0), quantile([3, 1, 2], 1)]).toEqual([1, 3]);
  expect(quantile([], 0.5)).toBeUndefined();
});
