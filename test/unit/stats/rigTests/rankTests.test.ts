import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rankSumTest, signedRankTest } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";

const whole = fc.integer({ min: -30, max: 30 });
const settings = { seed: 8, numRuns: 150 };

describe("signed-rank test", () => {
  it("without ties its probability is that of all signs tried, one by one", () => {
    const distinct = fc.uniqueArray(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 10 });
    fc.assert(
      fc.property(distinct, fc.integer({ min: 0, max: 1023 }), (sizes, signs) => {
        const differences = sizes.map((size, index) => ((signs >> index) & 1 ? size : -size));
        const order = sizes.toSorted((a, b) => a - b);
        const rankOf = (size: number) => order.indexOf(size) + 1;
        const statistic = differences.reduce((sum, value) => sum + (value > 0 ? rankOf(value) : 0), 0);
        let below = 0;
        let above = 0;
        for (let mask = 0; mask < 2 ** sizes.length; mask++) {
          const sum = sizes.reduce(
            (total, size, index) => total + ((mask >> index) & 1 ? rankOf(size) : 0),
            0,
          );
          if (sum <= statistic) below++;
          if (sum >= statistic) above++;
        }
        const test = signedRankTest(differences, 0.9);
        expect(test?.statistic).toBe(statistic);
        expect(test?.p).toBeCloseTo(Math.min(1, (2 * Math.min(below, above)) / 2 ** sizes.length), 12);
      }),
      settings,
    );
  });

  it("turned round, estimate and interval change sign and the probability stays", () => {
    fc.assert(
      fc.property(fc.array(whole, { minLength: 1, maxLength: 20 }), (differences) => {
        const there = signedRankTest(differences, 0.9);
        const back = signedRankTest(
          differences.map((value) => -value),
          0.9,
        );
        fc.pre(there !== undefined && back !== undefined);
        expect(back?.p).toBeCloseTo(there?.p ?? Number.NaN, 12);
        expect(back?.estimate).toBeCloseTo(-(there?.estimate ?? Number.NaN), 9);
        if (there?.exact) expect(back?.high).toBeCloseTo(-there.low, 9);
      }),
      settings,
    );
  });

  it("five pairs reach 0.9375, four do not reach 0.9 and say so", () => {
    expect(signedRankTest([1, 2, 3, 4, 5], 0.9)).toMatchObject({
      low: 1,
      high: 5,
      achievedConfidence: 0.9375,
      p: 0.0625,
    });
    expect(signedRankTest([1, 2, 3, 4], 0.9)).toMatchObject({ low: 1, high: 4, achievedConfidence: 0.875 });
  });

  it("goes over to the normal score at fifty differences without a jump", () => {
    const values = Array.from({ length: 50 }, (_, index) => 40 + 100 * normalAt(15, index));
    const exact = signedRankTest(values.slice(0, 49), 0.9);
    const normal = signedRankTest(values, 0.9);
    expect(exact?.exact).toBe(true);
    expect(normal?.exact).toBe(false);
    expect(Math.abs((exact?.low ?? 0) - (normal?.low ?? 99))).toBeLessThan(8);
    expect(Math.abs((exact?.high ?? 0) - (normal?.high ?? 99))).toBeLessThan(8);
  });

  it("an interval of 90 % leaves out the truth in about one test of ten", () => {
    let missed = 0;
    for (let trial = 0; trial < 1500; trial++) {
      const test = signedRankTest(
        Array.from({ length: 12 }, (_, pair) => 50 + 80 * normalAt(16, trial, pair)),
        0.9,
      );
      if (test === undefined || test.low > 50 || test.high < 50) missed++;
    }
    expect(missed / 1500).toBeGreaterThan(0.07);
    expect(missed / 1500).toBeLessThan(0.12);
  });
});

describe("rank-sum test", () => {
  it("without ties its probability is that of all ways to deal the places, one by one", () => {
    const distinct = fc.uniqueArray(fc.integer({ min: 1, max: 500 }), { minLength: 2, maxLength: 9 });
    fc.assert(
      fc.property(distinct, fc.integer({ min: 1, max: 8 }), (values, cut) => {
        fc.pre(cut < values.length);
        const [a, b] = [values.slice(0, cut), values.slice(cut)];
        const pairsAbove = (first: number[], second: number[]) =>
          first.reduce((sum, x) => sum + second.filter((y) => x > y).length, 0);
        const statistic = pairsAbove(a, b);
        let [below, above, all] = [0, 0, 0];
        for (let mask = 0; mask < 2 ** values.length; mask++) {
          const first = values.filter((_, index) => (mask >> index) & 1);
          if (first.length !== cut) continue;
          const pairs = pairsAbove(
            first,
            values.filter((_, index) => !((mask >> index) & 1)),
          );
          all++;
          if (pairs <= statistic) below++;
          if (pairs >= statistic) above++;
        }
        const test = rankSumTest(a, b, 0.9);
        expect(test?.statistic).toBe(statistic);
        expect(test?.p).toBeCloseTo(Math.min(1, (2 * Math.min(below, above)) / all), 12);
      }),
      settings,
    );
  });

  it("a shift of one sample moves estimate and interval by as much", () => {
    const samples = fc.uniqueArray(fc.integer({ min: 0, max: 100_000 }), { minLength: 6, maxLength: 24 });
    fc.assert(
      fc.property(samples, (values) => {
        const [a, b] = [values.slice(0, 3), values.slice(3)];
        const test = rankSumTest(a, b, 0.9);
        const moved = rankSumTest(
          a.map((value) => value + 0.25),
          b,
          0.9,
        );
        expect(moved?.estimate).toBeCloseTo((test?.estimate ?? Number.NaN) + 0.25, 8);
        expect(moved?.low).toBeCloseTo((test?.low ?? Number.NaN) + 0.25, 8);
        expect(moved?.high).toBeCloseTo((test?.high ?? Number.NaN) + 0.25, 8);
      }),
      settings,
    );
  });

  it("takes 49 values a side exactly and 400 with the normal score", () => {
    const sample = (count: number, key: number) =>
      Array.from({ length: count }, (_, index) => 100 * normalAt(18, key, index) + 30 * key);
    expect(rankSumTest(sample(49, 0), sample(49, 1), 0.9)?.exact).toBe(true);
    const large = rankSumTest(sample(400, 0), sample(400, 1), 0.9);
    expect(large?.exact).toBe(false);
    expect((large?.low ?? 0) < -30 && (large?.high ?? -99) > -30).toBe(true);
  });
});
