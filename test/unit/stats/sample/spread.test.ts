import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  lag1Autocorrelation,
  mean,
  median,
  medianAbsoluteDeviation,
  quantile,
  standardDeviation,
  summary,
} from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";

const laps = fc.array(fc.integer({ min: 20_000, max: 600_000 }), { minLength: 2, maxLength: 60 });
const runs = { seed: 7, numRuns: 200 };
const places = { mean, median, lower: (values: number[]) => quantile(values, 0.25) };
const spreads = { standardDeviation, medianAbsoluteDeviation };

describe("figures of place", () => {
  it.each(Object.entries(places))("%s moves with the laps and with their unit", (_, figure) => {
    fc.assert(
      fc.property(
        laps,
        fc.integer({ min: -9999, max: 9999 }),
        fc.integer({ min: 1, max: 9 }),
        (values, by, times) => {
          const moved = values.map((value) => times * value + by);
          expect(figure(moved)).toBeCloseTo(times * (figure(values) ?? Number.NaN) + by, 5);
        },
      ),
      runs,
    );
  });
});

describe("figures of spread", () => {
  it.each(Object.entries(spreads))("%s stays when all laps move, and grows with their unit", (_, figure) => {
    fc.assert(
      fc.property(
        laps,
        fc.integer({ min: -9999, max: 9999 }),
        fc.integer({ min: 1, max: 9 }),
        (values, by, times) => {
          const moved = values.map((value) => times * value + by);
          expect(figure(moved)).toBeCloseTo(times * (figure(values) ?? Number.NaN), 5);
        },
      ),
      runs,
    );
  });

  it.each(Object.entries({ ...places, ...spreads }))(
    "the order of the laps does not matter to %s",
    (_, figure) => {
      fc.assert(
        fc.property(laps, (values) => {
          expect(figure(values.toReversed())).toBeCloseTo(figure(values) ?? Number.NaN, 6);
          expect(figure(values.toSorted())).toBeCloseTo(figure(values) ?? Number.NaN, 6);
        }),
        runs,
      );
    },
  );

  it("10,000 equal laps have no spread at all", () => {
    const equal = new Array<number>(10_000).fill(84_123.4);
    expect(mean(equal)).toBe(84_123.4);
    expect(standardDeviation(equal)).toBe(0);
    expect(medianAbsoluteDeviation(equal)).toBe(0);
    expect(lag1Autocorrelation(equal)).toBeUndefined();
  });
});

describe("quantile", () => {
  it("interpolates between neighbours: a quarter of the way through 1 to 4 is 1.75", () => {
    expect(quantile([4, 2, 3, 1], 0.25)).toBe(1.75);
    expect(quantile([4, 2, 3, 1], 0)).toBe(1);
    expect(quantile([4, 2, 3, 1], 1)).toBe(4);
  });

  it("never falls as the share grows, and stays within the laps", () => {
    fc.assert(
      fc.property(
        laps,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (values, a, b) => {
          const low = quantile(values, Math.min(a, b)) ?? Number.NaN;
          const high = quantile(values, Math.max(a, b)) ?? Number.NaN;
          expect(low).toBeLessThanOrEqual(high);
          expect(low).toBeGreaterThanOrEqual(Math.min(...values));
          expect(high).toBeLessThanOrEqual(Math.max(...values));
        },
      ),
      runs,
    );
  });

  it("agrees with sorting on long, partly sorted and tied columns", () => {
    for (const values of [
      Array.from({ length: 5001 }, (_, index) => Math.round(300 * normalAt(1, index))),
      Array.from({ length: 5000 }, (_, index) => index % 7),
      Array.from({ length: 4000 }, (_, index) => -index),
    ]) {
      const sorted = values.toSorted((a, b) => a - b);
      for (const p of [0, 0.003, 0.25, 0.5, 0.77, 1]) {
        const place = (values.length - 1) * p;
        const below = sorted[Math.floor(place)] ?? Number.NaN;
        const above = sorted[Math.ceil(place)] ?? Number.NaN;
        expect(quantile(values, p)).toBeCloseTo(below + (place % 1) * (above - below), 9);
      }
    }
  });

  it.each([-0.1, 1.1, Number.NaN])("refuses the share %d", (p) => {
    expect(() => quantile([1, 2], p)).toThrow(RangeError);
  });
});

describe("one outlier", () => {
  it("moves the mean but hardly the median and the scaled MAD", () => {
    const even = Array.from({ length: 21 }, (_, index) => 84_000 + 10 * index);
    const spun = [...even.slice(0, -1), 160_000];
    expect((mean(spun) ?? 0) - (mean(even) ?? 0)).toBeGreaterThan(3000);
    expect(median(spun)).toBe(median(even));
    expect(medianAbsoluteDeviation(spun)).toBe(medianAbsoluteDeviation(even));
  });
});

describe("summary", () => {
  it("gives what each function gives by itself", () => {
    fc.assert(
      fc.property(laps, (values) => {
        expect(summary(values)).toEqual({
          count: values.length,
          mean: mean(values),
          standardDeviation: standardDeviation(values),
          lowerQuartile: quantile(values, 0.25),
          median: median(values),
          upperQuartile: quantile(values, 0.75),
          medianAbsoluteDeviation: medianAbsoluteDeviation(values),
        });
      }),
      runs,
    );
  });
});

describe("100,000 large values", () => {
  const large = Float64Array.from({ length: 100_000 }, (_, index) => 1e15 + (index % 3) - 1);

  it("keep their digits: a third each of 1e15 − 1, 1e15 and 1e15 + 1, nearly", () => {
    expect(mean(large)).toBeCloseTo(1e15, 0);
    expect(standardDeviation(large)).toBeCloseTo(Math.sqrt(2 / 3), 4);
  });

  it("keep their spread where no number can hold their mean", () => {
    expect(standardDeviation([1e16, 1e16 + 2, 1e16 + 2])).toBeCloseTo(Math.sqrt(4 / 3), 12);
  });

  it("do not overflow even next to the largest number", () => {
    expect(mean([1.7e308, 1.7e308, 1.7e308])).toBeCloseTo(1.7e308, -300);
  });
});
