import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type OrderedPair, orderedPairsTTest, pairedTTest, pairOrder, pairsNeeded } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";

/** Pairs with a true difference, a drift inside each pair that helps what is driven second, and noise. */
function drivenPairs(count: number, trial: number, difference: number, drift: number): OrderedPair[] {
  return pairOrder(count, trial).map((first, pair) => ({
    first,
    difference: difference + (first === "A" ? -drift : drift) + 100 * normalAt(19, trial, pair),
  }));
}

describe("t test of ordered pairs", () => {
  it("by hand: pairs of 1 and 3 with A first, of 5 and 7 with B first", () => {
    const test = orderedPairsTTest(
      [
        { first: "A", difference: 1 },
        { first: "A", difference: 3 },
        { first: "B", difference: 5 },
        { first: "B", difference: 7 },
      ],
      0.9,
    );
    expect(test).toMatchObject({ estimate: 4, orderEffect: -2, degreesOfFreedom: 2 });
    // Variance inside the orders 2, standard error √(2·(1/2 + 1/2))/2; 2.919986 is t(0.95) for 2 degrees.
    expect(test?.t).toBeCloseTo(4 / (Math.SQRT2 / 2), 12);
    expect((test?.high ?? 0) - 4).toBeCloseTo((2.919986 * Math.SQRT2) / 2, 5);
  });

  it("a drift inside the pairs neither moves nor widens it, but widens the plain paired t test", () => {
    const still = drivenPairs(10, 4, 60, 0);
    const drifting = still.map((pair) => ({
      ...pair,
      difference: pair.difference + (pair.first === "A" ? -400 : 400),
    }));
    const [without, withDrift] = [orderedPairsTTest(still, 0.9), orderedPairsTTest(drifting, 0.9)];
    expect(withDrift?.estimate).toBeCloseTo(without?.estimate ?? Number.NaN, 9);
    expect(withDrift?.low).toBeCloseTo(without?.low ?? Number.NaN, 9);
    const width = (pairs: OrderedPair[]) => {
      const test = pairedTTest(
        pairs.map((pair) => pair.difference),
        0.9,
      );
      return (test?.high ?? 0) - (test?.low ?? 0);
    };
    expect(width(drifting)).toBeGreaterThan(2 * width(still));
  });

  it("claims a difference that is none in about one test of ten, whatever the drift", () => {
    for (const drift of [0, 300]) {
      let claims = 0;
      for (let trial = 0; trial < 1500; trial++) {
        const test = orderedPairsTTest(drivenPairs(8, trial, 0, drift), 0.9);
        if (test !== undefined && (test.low > 0 || test.high < 0)) claims++;
      }
      expect(claims / 1500).toBeGreaterThan(0.075);
      expect(claims / 1500).toBeLessThan(0.125);
    }
  });

  it("needs three pairs and both orders", () => {
    expect(
      orderedPairsTTest(
        [
          { first: "A", difference: 1 },
          { first: "B", difference: 2 },
        ],
        0.9,
      ),
    ).toBeUndefined();
    expect(orderedPairsTTest([], 0.9)).toBeUndefined();
  });
});

describe("order of the pairs", () => {
  it("has as many of each, or one more of either, and is the seed's", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer(), (pairs, seed) => {
        const order = pairOrder(pairs, seed);
        const beginsA = order.filter((first) => first === "A").length;
        expect(order).toHaveLength(pairs);
        expect(Math.abs(2 * beginsA - pairs)).toBeLessThanOrEqual(1);
        expect(pairOrder(pairs, seed)).toEqual(order);
      }),
      { seed: 1, numRuns: 200 },
    );
  });

  it("begins with A as often as with B, also when the number is odd", () => {
    for (const place of [0, 2, 4]) {
      const beginsA = Array.from({ length: 2000 }, (_, seed) => pairOrder(5, seed)[place]).filter(
        (first) => first === "A",
      ).length;
      expect(beginsA).toBeGreaterThan(900);
      expect(beginsA).toBeLessThan(1100);
    }
  });

  it.each([-1, 2.5, Number.NaN])("refuses %d pairs", (pairs) => {
    expect(() => pairOrder(pairs, 1)).toThrow(RangeError);
  });
});

describe("pairs needed", () => {
  const plan = { difference: 150, standardDeviation: 250, power: 0.8, level: 0.1 };

  it.each([
    [0.2, 5],
    [0.1, 6],
    [0.05, 7],
    [0.01, 9],
  ])("are never fewer than can decide: level %d needs %i", (level, least) => {
    expect(pairsNeeded({ ...plan, level, difference: 5000 })).toBe(least);
  });

  it("are more for a smaller difference, a wider spread, more power or a stricter level; the sign does not count", () => {
    const pairs = pairsNeeded(plan);
    expect(pairsNeeded({ ...plan, difference: -150 })).toBe(pairs);
    for (const harder of [{ difference: 100 }, { standardDeviation: 300 }, { power: 0.9 }, { level: 0.05 }]) {
      expect(pairsNeeded({ ...plan, ...harder })).toBeGreaterThan(pairs);
    }
  });

  it("find the difference four times in five", () => {
    const pairs = pairsNeeded({ difference: 80, standardDeviation: 100, power: 0.8, level: 0.1 });
    let found = 0;
    for (let trial = 0; trial < 1000; trial++) {
      const test = orderedPairsTTest(drivenPairs(pairs, trial, 80, 0), 0.9);
      if (test !== undefined && test.low > 0) found++;
    }
    expect(found / 1000).toBeGreaterThan(0.75);
    expect(found / 1000).toBeLessThan(0.95);
  });

  it.each([
    [{ difference: 0 }, "difference is 0"],
    [{ standardDeviation: 0 }, "standardDeviation is 0"],
    [{ power: 1 }, "power is 1"],
    [{ level: Number.NaN }, "level is NaN"],
    [{ difference: Number.POSITIVE_INFINITY }, "difference is Infinity"],
  ])("refuse %o", (wrong, words) => {
    expect(() => pairsNeeded({ ...plan, ...wrong })).toThrow(words);
  });
});
