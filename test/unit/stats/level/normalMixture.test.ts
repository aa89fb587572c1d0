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
