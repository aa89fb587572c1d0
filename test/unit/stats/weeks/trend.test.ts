import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mannKendall, sessionsNeededForChange, theilSen } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";

const values = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 2, maxLength: 30 });
const settings = { seed: 41, numRuns: 300 };

describe("Mann–Kendall", () => {
  it("counts pairs as trying each of them does", () => {
    fc.assert(
      fc.property(values, (y) => {
        let s = 0;
        y.forEach((later, j) => {
          for (const earlier of y.slice(0, j)) s += Math.sign(later - earlier);
        });
        expect(mannKendall(y)?.s).toBe(s);
      }),
      settings,
    );
  });

  it("turned round it is the same trend the other way", () => {
    fc.assert(
      fc.property(values, (y) => {
        const there = mannKendall(y);
        const back = mannKendall(y.toReversed());
        expect(back?.s).toBe(there?.s === 0 ? 0 : -(there?.s ?? Number.NaN));
        expect(back?.p).toBe(there?.p);
      }),
      settings,
    );
  });

  it("an outlier counts no more than its rank", () => {
    expect(mannKendall([5, 4, 3, 2, -1e9])).toEqual(mannKendall([5, 4, 3, 2, 1]));
    expect(mannKendall([5, 4, 3, 2, 1])?.p).toBeCloseTo(2 / 120, 12);
  });

  it("by hand, with a tie and without one", () => {
    // 5 pairs rise, 1 is tied: variance (4·3·13 − 2·1·9)/18.
    const tied = mannKendall([1, 2, 2, 3]);
    expect(tied).toMatchObject({ s: 5, exact: false });
    expect(tied?.tau).toBeCloseTo(5 / Math.sqrt(30), 12);
    expect(tied?.z).toBeCloseTo(4 / Math.sqrt(138 / 18), 12);
    // Of the 24 orders of four values one rises throughout and three miss it by one pair.
    expect(mannKendall([1, 2, 3, 4])).toMatchObject({ s: 6, p: 2 / 24, exact: true });
    expect(mannKendall([1, 2, 4, 3])?.p).toBeCloseTo(8 / 24, 12);
    expect(mannKendall([2, 1, 4, 3])?.p).toBeCloseTo(18 / 24, 12);
  });

  it("is counted exactly up to ten values, and is none of one", () => {
    const rising = (count: number) => Array.from({ length: count }, (_, index) => index);
    expect(mannKendall(rising(10))?.exact).toBe(true);
    expect(mannKendall(rising(11))).toMatchObject({ s: 55, exact: false });
    expect(mannKendall(rising(11))?.z).toBeCloseTo(54 / Math.sqrt(165), 12);
    expect(mannKendall([3])).toBeUndefined();
    expect(mannKendall([3, 4])).toMatchObject({ s: 1, p: 1 });
    expect(() => mannKendall([1, Number.NaN])).toThrow("values[1] is NaN");
  });

  it("of equal sessions finds nothing", () => {
    expect(mannKendall([3, 3, 3, 3, 3])).toEqual({ s: 0, tau: 0, z: 0, p: 1, exact: false });
  });

  it("takes 100,000 values without overflow", () => {
    const test = mannKendall(Float64Array.from({ length: 100_000 }, (_, index) => index));
    expect(test?.s).toBe((100_000 * 99_999) / 2);
    expect(test?.tau).toBe(1);
    expect(test?.p).toBe(0);
  });

  it("calls chance a trend about as often as it says", () => {
    let claims = 0;
    for (let trial = 0; trial < 2000; trial++) {
      const y = Array.from({ length: 12 }, (_, index) => normalAt(6, trial, index));
      if ((mannKendall(y)?.p ?? 1) < 0.1) claims++;
    }
    expect(claims / 2000).toBeGreaterThan(0.07);
    expect(claims / 2000).toBeLessThan(0.12);
  });
});

describe("Theil–Sen", () => {
  it("moves with a steady gain and with its unit", () => {
    fc.assert(
      fc.property(
        values,
        fc.integer({ min: -50, max: 50 }),
        fc.integer({ min: 1, max: 9 }),
        (y, gain, times) => {
          const x = y.map((_, index) => index);
          const line = theilSen(x, y, 0.9);
          const moved = theilSen(
            x,
            y.map((value, index) => times * value + gain * index + 7),
            0.9,
          );
          expect(moved?.slope).toBeCloseTo(times * (line?.slope ?? Number.NaN) + gain, 8);
        },
      ),
      settings,
    );
  });

  it("does not hang on the order of the points, and its interval holds the slope", () => {
    fc.assert(
      fc.property(values, (y) => {
        const x = y.map((_, index) => index);
        const line = theilSen(x, y, 0.9);
        expect(theilSen(x.toReversed(), y.toReversed(), 0.9)).toEqual(line);
        expect(line?.low).toBeLessThanOrEqual(line?.slope ?? Number.NaN);
        expect(line?.high).toBeGreaterThanOrEqual(line?.slope ?? Number.NaN);
      }),
      settings,
    );
  });

  it("one wild session in ten does not bend it", () => {
    const x = Array.from({ length: 10 }, (_, index) => index);
    const y = x.map((place) => 84_000 - 10 * place);
    y[9] = 99_000;
    expect(theilSen(x, y, 0.9)?.slope).toBeCloseTo(-10, 9);
  });

  it("the interval holds the true slope in about nine of ten", () => {
    let held = 0;
    for (let trial = 0; trial < 1000; trial++) {
      const x = Array.from({ length: 15 }, (_, index) => index);
      const line = theilSen(
        x,
        x.map((place) => 3 * place + 20 * normalAt(14, trial, place)),
        0.9,
      );
      if (line !== undefined && line.low <= 3 && 3 <= line.high) held++;
    }
    expect(held / 1000).toBeGreaterThan(0.87);
    expect(held / 1000).toBeLessThan(0.94);
  });

  it("refuses columns of different length and a confidence of 1", () => {
    expect(() => theilSen([1, 2], [1], 0.9)).toThrow("x has 2 values and y has 1");
    expect(() => theilSen([1, 2], [1, 2], 1)).toThrow("confidence is 1");
  });
});

describe("sessions needed to show a change", () => {
  const medians = (count: number, scatter: number, gain = 0) =>
    Array.from({ length: count }, (_, index) => 84_000 - gain * index + scatter * normalAt(21, index));

  it("are more the more the sessions scatter, and none when there are enough", () => {
    const few = sessionsNeededForChange(medians(6, 150), 420) ?? Number.NaN;
    const more = sessionsNeededForChange(medians(6, 600), 420) ?? Number.NaN;
    expect(few).toBeLessThan(more);
    expect(sessionsNeededForChange(medians(6, 0), 420)).toBe(0);
    expect(sessionsNeededForChange(medians(2, 0), 420)).toBeUndefined();
    expect(sessionsNeededForChange(medians(8, 90_000), 1)).toBeUndefined();
  });

  it("do not take a trend for scatter", () => {
    const flat = sessionsNeededForChange(medians(30, 200), 300);
    const falling = sessionsNeededForChange(medians(30, 200, 20), 300);
    expect(Math.abs((flat ?? 0) - (falling ?? 99))).toBeLessThanOrEqual(2);
  });

  it("as many as it says show the change four times in five", () => {
    const [scatter, change, trials] = [200, 420, 600];
    // Up and down by this much, successive sessions scatter by exactly 200 ms.
    const upAndDown = (count: number) =>
      Array.from({ length: count }, (_, index) => (index % 2 === 0 ? scatter : -scatter) / Math.SQRT2);
    let sessions = 3;
    while (sessionsNeededForChange(upAndDown(sessions), change) !== 0) sessions++;
    let shown = 0;
    for (let trial = 0; trial < trials; trial++) {
      const y = Array.from(
        { length: sessions },
        (_, index) => (-change * index) / (sessions - 1) + scatter * normalAt(31, trial, index),
      );
      if ((mannKendall(y)?.p ?? 1) < 0.1) shown++;
    }
    expect(shown / trials).toBeGreaterThan(0.7);
    expect(shown / trials).toBeLessThan(0.9);
  });

  it("refuse a change that is none", () => {
    expect(() => sessionsNeededForChange([1, 2, 3], 0)).toThrow("change is 0");
  });
});
