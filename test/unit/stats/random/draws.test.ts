import { describe, expect, it } from "vitest";
import { chiSquaredCdf, normalCdf } from "#numbers";
import { mean, standardDeviation } from "#stats";
import { chiSquaredAt, nextUniform, normalAt, uniformAt } from "../../../../src/stats/random/draws.ts";
import { seedOf } from "../../../../src/stats/random/seedOf.ts";

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

it("draws neither 0 nor 1, also where all bits are the same", () => {
  const drawn = (bits: number) => nextUniform({ next: () => bits } as Parameters<typeof nextUniform>[0]);
  expect(drawn(0)).toBeGreaterThan(0);
  expect(drawn(-1)).toBeLessThan(1);
});

it("draws what it drew in earlier versions, so that the same laps keep their chances", () => {
  // Written down on 28 November 2026; no outside source.
  const near = (value: number) => expect.closeTo(value, 12);
  expect([uniformAt(7), uniformAt(7, 1, 2)]).toEqual([near(0.3614406756401078), near(0.2522673940521191)]);
  expect([normalAt(7, 3), normalAt(-1, 4_294_967_295)]).toEqual([
    near(0.1432965624412639),
    near(-0.3764584568389824),
  ]);
  expect([0.5, 2, 9].map((degrees) => chiSquaredAt(degrees, 7, 1))).toEqual([
    near(2.255218420106224),
    near(3.512099164586785),
    near(12.754135631052643),
  ]);
});

describe("the number for a text", () => {
  // FNV-1a, 32 bits: "The FNV Non-Cryptographic Hash Algorithm" (draft-eastlake-fnv-14), its test vectors.
  it.each([
    ["", 0x811c9dc5],
    ["a", 0xe40c292c],
    ["foobar", 0xbf9cf968],
  ])("is the published hash of %j", (text, hash) => {
    expect(seedOf(text)).toBe(hash);
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
