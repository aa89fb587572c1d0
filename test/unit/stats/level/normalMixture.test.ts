import { expect, test } from "vitest";
import { condensed, mixtureBelow, mixtureQuantile } from "../../../../src/stats/level/normalMixture.ts";
import { uniformAt } from "../../../../src/stats/random/draws.ts";

const mixtureOf = (seed: number, spread: number) => {
  const of = (key: number) => Float64Array.from({ length: 800 }, (_, i) => uniformAt(seed, key, i));
  const total = of(0).reduce((sum, weight) => sum + weight ** 8, 0);
  return {
    weights: of(0).map((weight) => weight ** 8 / total),
    means: of(1).map((share) => spread * (share - 0.5)),
    deviations: of(2).map((share) => 0.1 + share ** 2),
  };
};
const shares = [0.05, 0.25, 0.5, 0.75, 0.95];

test.each([0.1, 1, 5, 20])(
  "a condensed mixture has the same quantiles, to 0.002 of a share (spread %d)",
  (spread) => {
    for (const seed of [1, 2, 3]) {
      const whole = mixtureOf(seed, spread);
      const few = condensed(whole);
      expect(few.weights.length).toBeLessThan(whole.weights.length / 2);
      expect(few.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
      for (const share of shares)
        expect(Math.abs(mixtureBelow(whole, mixtureQuantile(few, share), 0) - share)).toBeLessThan(0.002);
    }
  },
);

test("a quantile is where that share lies below, and 0 where a point at 0 holds it", () => {
  const whole = mixtureOf(4, 3);
  for (const share of [0.001, ...shares, 0.999])
    expect(mixtureBelow(whole, mixtureQuantile(whole, share), 0)).toBeCloseTo(share, 6);
  const pointed = {
    weights: Float64Array.of(0.6, 0.4),
    means: Float64Array.of(0, -1),
    deviations: Float64Array.of(0, 0.2),
  };
  expect(mixtureQuantile(pointed, 0.5)).toBe(0);
  expect(mixtureQuantile(pointed, 0.2)).toBeCloseTo(-1, 6);
});

const mixed = (...told: (readonly [weight: number, mean: number, deviation: number])[]) => ({
  weights: Float64Array.from(told, ([weight]) => weight),
  means: Float64Array.from(told, ([, mean]) => mean),
  deviations: Float64Array.from(told, ([, , deviation]) => deviation),
});

test("by tables of the normal distribution: shares below and quantiles of one and of two", () => {
  const one = mixed([1, 1, 2]);
  expect(mixtureBelow(one, 1, 0)).toBeCloseTo(0.5, 6);
  expect(mixtureBelow(one, 3, 0)).toBeCloseTo(0.8413, 4);
  expect(mixtureQuantile(one, 0.975)).toBeCloseTo(1 + 2 * 1.96, 3);
  expect(mixtureQuantile(one, 0.05)).toBeCloseTo(1 - 2 * 1.6449, 3);
  const two = mixed([0.5, -100, 1], [0.5, 100, 3]);
  expect(mixtureQuantile(two, 0.25)).toBeCloseTo(-100, 4);
  expect(mixtureQuantile(two, 0.75)).toBeCloseTo(100, 4);
  expect(mixtureQuantile(two, 0.4875)).toBeCloseTo(-100 + 1.96, 3);
  expect(mixtureBelow(two, 0, 0)).toBeCloseTo(0.5, 9);
  const off = mixtureQuantile(two, 0.25, 0.01);
  expect(Math.abs(mixtureBelow(two, off, 0) - 0.25)).toBeLessThan(0.01);
});

test("a point at 0 counts as asked at 0, whole above and not at all below", () => {
  const pointed = mixed([0.6, 0, 0], [0.4, -1, 0.2]);
  expect([-0.001, 0, 0.001].map((value) => mixtureBelow(pointed, value, 0.5))).toEqual([
    expect.closeTo(0.4, 6),
    expect.closeTo(0.7, 6),
    expect.closeTo(1, 6),
  ]);
  expect([0, 1].map((ofPoints) => mixtureBelow(pointed, 0, ofPoints))).toEqual([
    expect.closeTo(0.4, 6),
    expect.closeTo(1, 6),
  ]);
  expect(mixtureQuantile(pointed, 0.41)).toBe(0);
  expect(mixtureQuantile(pointed, 0.39)).toBeLessThan(-0.5);
  const above = mixed([0.6, 0, 0], [0.4, 1, 0.2]);
  expect(mixtureQuantile(above, 0.59)).toBe(0);
  expect(mixtureQuantile(above, 0.8)).toBeCloseTo(1, 6);
});

test("by hand: what is alike becomes one with the moments of both, what is not stays apart", () => {
  const few = condensed(mixed([0.25, 0, 1], [0.25, 0.1, 1.05], [0.5, 10, 1]));
  const together = Math.sqrt((1 + 1.05 ** 2) / 2 + 0.05 ** 2);
  expect([...few.weights]).toEqual([0.5, 0.5]);
  expect([...few.means]).toEqual([expect.closeTo(0.05, 9), expect.closeTo(10, 9)]);
  expect([...few.deviations]).toEqual([expect.closeTo(together, 9), expect.closeTo(1, 9)]);
  // Of like mean, but twice as wide: three steps of a third of a doubling.
  expect(condensed(mixed([0.5, 0, 1], [0.5, 0, 2])).weights).toHaveLength(2);
  expect(condensed(mixed([0.5, 0, 1], [0.5, 0, 1])).weights).toHaveLength(1);
});
