import { expect, it } from "vitest";
import { orderedPairsTTest, pairedTTest } from "#stats";
import reference from "./crossover-enuresis.json" with { type: "json" };

const { drugFirst, placeboFirst, published, computed } = reference;

/** Dry nights with the drug less those with the placebo; each pair as driven, the first period first. */
const pairs = [
  ...drugFirst.map(([first = 0, second = 0]) => ({ first: "B" as const, difference: first - second })),
  ...placeboFirst.map(([first = 0, second = 0]) => ({ first: "A" as const, difference: second - first })),
];

it("the effect of the drug as Hills & Armitage 1979 give it", () => {
  const found = orderedPairsTTest(pairs, 0.95);
  expect(found?.estimate).toBeCloseTo(published.effect, 2);
  expect(found?.t).toBeCloseTo(published.t, 2);
  expect(found?.degreesOfFreedom).toBe(published.degreesOfFreedom);
});

it("as the two-sample t test of the two orders' differences", () => {
  const found = orderedPairsTTest(pairs, 0.95);
  expect(found?.t).toBeCloseTo(computed.t, 9);
  expect(found?.p).toBeCloseTo(computed.p, 9);
  const reach = computed.t975 * computed.standardError;
  expect((found?.high ?? 0) - (found?.estimate ?? 0)).toBeCloseTo(reach, 9);
  expect(found?.t, "the paired test is another one").not.toBeCloseTo(
    pairedTTest(
      pairs.map(({ difference }) => difference),
      0.95,
    )?.t ?? 0,
    2,
  );
});
