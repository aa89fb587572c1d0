import { describe, expect, it } from "vitest";
import { chiSquaredCdf, normalCdf } from "#numbers";
import { mean, standardDeviation } from "#stats";
import { chiSquaredAt, normalAt, uniformAt } from "../../../../src/stats/random/draws.ts";

const draws = 20_000;

/** Greatest distance between the drawn and the wanted distribution (Kolmogorov 1933). */
function distance(values: number[], cdf: (x: number) => number): number {
  return values
    .toSorted((a, b) => a - b)
    .reduce((most, value, index) => {
      const wanted = cdf(value);
      return Math.max(most, wanted - index / values.length, (index + 1) / values.length - wanted);
    }, 0);
}

describe.each([
  ["over the first key", (draw: number) => [draw, 0]],
  ["over the second key", (draw: number) => [3, draw]],
])("draws %s", (_, keys) => {
  const at = (draw: (seed: number, ...key: number[]) => number) =>
    Array.from({ length: draws }, (_, index) => draw(11, ...keys(index)));
  /** Exceeded by chance once in a thousand (from memory: 1.95/√n). */
  const limit = 1.95 / Math.sqrt(draws);

  it("uniform ones are uniform and never 0 or 1", () => {
    const values = at(uniformAt);
    expect(distance(values, (x) => x)).toBeLessThan(limit);
    expect(Math.min(...values)).toBeGreaterThan(0);
    expect(Math.max(...values)).toBeLessThan(1);
  });

  it("normal ones are normal", () => {
    expect(distance(at(normalAt), normalCdf)).toBeLessThan(limit);
  });

  it.each([0.5, 1, 3, 14])("chi-squared ones with %d degrees of freedom are", (df) => {
    const values = at((seed, ...key) => chiSquaredAt(df, seed, ...key));
    expect(distance(values, (x) => chiSquaredCdf(x, df))).toBeLessThan(limit);
  });

  it("neighbours are not alike", () => {
    const values = at(normalAt);
    const products = values.slice(1).map((value, index) => value * (values[index] ?? 0));
    const error = (standardDeviation(products) ?? 0) / Math.sqrt(products.length);
    expect(Math.abs(mean(products) ?? 1)).toBeLessThan(4 * error);
  });
});

describe("keys", () => {
  it("the same seed and keys give the same draw, whatever was drawn before", () => {
    const first = normalAt(5, 1, 2);
    uniformAt(5, 9);
    chiSquaredAt(3, 5, 1, 2);
    expect(normalAt(5, 1, 2)).toBe(first);
  });

  it("another seed, another key, another order or one key more gives another draw", () => {
    const all = [
      uniformAt(1, 2, 3),
      uniformAt(2, 2, 3),
      uniformAt(1, 3, 2),
      uniformAt(1, 2),
      uniformAt(1, 2, 3, 0),
      uniformAt(1, 2, 4),
      uniformAt(0),
      uniformAt(0, 0),
      uniformAt(0, 0, 0),
    ];
    expect(new Set(all).size).toBe(all.length);
  });
});
