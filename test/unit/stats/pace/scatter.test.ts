import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { consistency, shareWithinMargin, standardDeviation, successiveScatter, threeInARow } from "#stats";
import { bestInARow } from "../../../../src/stats/pace/bestInARow.ts";
import { normalAt } from "../../../../src/stats/random/draws.ts";

const laps = fc.array(fc.integer({ min: 60_000, max: 150_000 }), { minLength: 2, maxLength: 40 });
const settings = { seed: 5, numRuns: 200 };

describe("scatter", () => {
  it("of laps 0.2 s up and down is 0.2 s over the square root of two", () => {
    expect(successiveScatter([[84_000, 84_200, 84_000, 84_200]])).toBeCloseTo(200 / Math.SQRT2, 9);
  });

  it("never bridges two runs", () => {
    expect(
      successiveScatter([
        [84_000, 84_100],
        [90_000, 90_100],
      ]),
    ).toBeCloseTo(100 / Math.SQRT2, 9);
    expect(successiveScatter([[84_000], [90_000]])).toBeUndefined();
  });

  it("hardly feels a steady gain that doubles the standard deviation", () => {
    const noise = Array.from({ length: 200 }, (_, lap) => 100 * normalAt(4, lap));
    const falling = noise.map((value, lap) => 84_000 + value - 4 * lap);
    expect(standardDeviation(falling)).toBeGreaterThan(2 * (standardDeviation(noise) ?? 0));
    const ratio = (successiveScatter([falling]) ?? 0) / (successiveScatter([noise]) ?? 1);
    expect(ratio).toBeGreaterThan(0.98);
    expect(ratio).toBeLessThan(1.02);
  });

  it("stays when laps move or turn round, and grows with their unit", () => {
    fc.assert(
      fc.property(laps, (values) => {
        const scatter = successiveScatter([values]) ?? Number.NaN;
        expect(successiveScatter([values.map((value) => value + 777)])).toBeCloseTo(scatter, 8);
        expect(successiveScatter([values.toReversed()])).toBeCloseTo(scatter, 8);
        expect(successiveScatter([values.map((value) => 3 * value)])).toBeCloseTo(3 * scatter, 6);
      }),
      settings,
    );
  });
});

describe("consistency", () => {
  it("needs five laps and says how many there are", () => {
    expect(consistency([[84_000, 84_100, 84_000, 84_100]], 0.9)).toEqual({
      known: false,
      reason: { needs: 5, of: "pace lap", has: 4 },
    });
    expect(consistency([[1], [1], [1], [1], [1]], 0.9)).toEqual({
      known: false,
      reason: { because: "no two laps in a row" },
    });
  });

  it("is the scatter in percent of the median, inside its interval", () => {
    const found = consistency([[84_000, 84_200, 84_000, 84_200, 84_000]], 0.9);
    expect(found).toMatchObject({ known: true, value: { laps: 5 } });
    if (!found.known) return;
    expect(found.value.scatterMs).toBeCloseTo(200 / Math.SQRT2, 9);
    expect(found.value.percent).toBeCloseTo((100 * found.value.scatterMs) / 84_000, 12);
    expect(found.value.lowMs).toBeLessThan(found.value.scatterMs);
    expect(found.value.highMs).toBeGreaterThan(found.value.scatterMs);
  });

  it("holds the true scatter of skewed laps in about nine of ten sessions", () => {
    // One half normal, one half exponential noise; the truth is its standard deviation.
    const truth = 300 * Math.sqrt(0.25 + 0.25);
    let held = 0;
    const sessions = 1500;
    for (let session = 0; session < sessions; session++) {
      const runs = [0, 1, 2].map((run) =>
        Array.from({ length: 9 }, (_, lap) => {
          const [a, b, c] = [0, 1, 2].map((key) => normalAt(8, session, run, lap, key)) as [
            number,
            number,
            number,
          ];
          return 84_000 + 150 * a + 150 * ((b * b + c * c) / 2 - 1);
        }),
      );
      const found = consistency(runs, 0.9);
      if (found.known && found.value.lowMs <= truth && truth <= found.value.highMs) held++;
    }
    expect(held / sessions).toBeGreaterThan(0.88);
    expect(held / sessions).toBeLessThan(0.98);
  });

  it("of equal laps is zero, not unknown", () => {
    expect(consistency([new Array(10).fill(84_000)], 0.9)).toMatchObject({
      known: true,
      value: { scatterMs: 0, lowMs: 0, highMs: 0, percent: 0 },
    });
  });
});

describe("share within a margin of the best", () => {
  it("counts the best itself and laps exactly on the limit", () => {
    expect(shareWithinMargin([80_000, 80_400, 80_401, 82_000], 0.5, 0.9)).toMatchObject({
      within: 2,
      laps: 4,
    });
    expect(shareWithinMargin([80_000], 0, 0.9)).toMatchObject({ within: 1, share: 1, high: 1 });
    expect(shareWithinMargin([], 0.5, 0.9)).toBeUndefined();
    expect(() => shareWithinMargin([80_000], -1, 0.9)).toThrow(RangeError);
  });
});

describe("laps in a row", () => {
  it("takes the best three that follow each other in one run", () => {
    const runs = [
      [84_000, 84_300, undefined, 83_000, 83_100],
      [84_500, 84_200, 84_100, 84_000, undefined],
    ];
    expect(threeInARow(runs)).toEqual({ meanMs: 84_100, run: 1, lap: 1 });
    expect(bestInARow(runs, 1)).toEqual({ meanMs: 83_000, run: 0, lap: 3 });
    expect(bestInARow(runs, 5)).toBeUndefined();
    expect(threeInARow([])).toBeUndefined();
  });

  it("agrees with trying every place", () => {
    const lap = fc.option(fc.integer({ min: 80_000, max: 90_000 }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.array(fc.array(lap, { maxLength: 15 }), { maxLength: 4 }),
        fc.integer({ min: 1, max: 4 }),
        (runs, count) => {
          const sums = runs.flatMap((run) =>
            run.flatMap((_, start) => {
              const row = run.slice(start, start + count).filter((ms) => ms !== undefined);
              return row.length === count ? [row.reduce((sum, ms) => sum + ms, 0) / count] : [];
            }),
          );
          expect(bestInARow(runs, count)?.meanMs).toEqual(sums.length === 0 ? undefined : Math.min(...sums));
        },
      ),
      settings,
    );
  });
});
