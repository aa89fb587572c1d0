import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sectorSplit } from "#stats";
import { largestRemainder } from "../../../../src/stats/targets/largestRemainder.ts";

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe("sector split", () => {
  test("by hand: in proportion to median less best", () => {
    const sectors = [
      { medianMs: 30_200, bestMs: 30_000 },
      { medianMs: 40_400, bestMs: 40_000 },
    ];
    expect(sectorSplit(300, sectors)).toEqual({ known: true, value: [100, 200] });
  });

  test("what the best sectors do not cover goes by the sectors' length", () => {
    const sectors = [
      { medianMs: 30_000, bestMs: 29_900 },
      { medianMs: 60_000, bestMs: 60_000 },
    ];
    expect(sectorSplit(400, sectors)).toEqual({ known: true, value: [200, 200] });
  });

  test("the shares add up to the gain to the millisecond", () => {
    const sector = fc.tuple(fc.integer({ min: 5000, max: 60_000 }), fc.integer({ min: 0, max: 900 }));
    fc.assert(
      fc.property(
        fc.array(sector, { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 1, max: 20_000 }),
        (given, gain) => {
          const split = sectorSplit(
            gain,
            given.map(([medianMs, reserve]) => ({ medianMs, bestMs: medianMs - reserve })),
          );
          if (!split.known) throw new Error(JSON.stringify(split.reason));
          expect(sum(split.value)).toBe(gain);
          expect(split.value.every((share) => Number.isInteger(share) && share >= 0)).toBe(true);
        },
      ),
      { seed: 12 },
    );
  });

  test("a best slower than the median leaves that sector nothing to find, and parts of a millisecond stay out", () => {
    const sectors = [
      { medianMs: 30_000, bestMs: 30_500 },
      { medianMs: 30_000, bestMs: 29_899.4 },
      { medianMs: 30_000, bestMs: 29_949.4 },
    ];
    expect(sectorSplit(151, sectors)).toEqual({ known: true, value: [0, 100, 51] });
    expect(sectorSplit(100, sectors.slice(0, 2))).toEqual({ known: true, value: [0, 100] });
    expect(sectorSplit(30, sectors.slice(0, 1))).toEqual({ known: true, value: [30] });
  });

  test("what is wrong is told by its name", () => {
    const sector = { medianMs: 30_000, bestMs: 29_000 };
    expect(sectorSplit(100, [])).toEqual({ known: false, reason: { needs: 1, of: "sector", has: 0 } });
    for (const gainMs of [0, -5])
      expect(sectorSplit(gainMs, [sector])).toEqual({
        known: false,
        reason: { because: "nothing to find", gainMs },
      });
    expect(() => sectorSplit(0.5, [sector])).toThrow("gainMs is 0.5: whole milliseconds are needed");
    expect(() => sectorSplit(5, [sector, { ...sector, medianMs: 0 }])).toThrow(
      "sectors[1].medianMs is 0: a time is needed",
    );
    expect(() => sectorSplit(5, [{ ...sector, bestMs: Number.NaN }])).toThrow(/^sectors\[0\]\.bestMs is NaN/);
    expect(sectorSplit(1, [{ medianMs: 1, bestMs: 1 }])).toEqual({ known: true, value: [1] });
  });

  test("no sectors or nothing to find give a reason; a wrong value is named", () => {
    expect(sectorSplit(100, []).known).toBe(false);
    expect(sectorSplit(0, [{ medianMs: 30_000, bestMs: 29_000 }]).known).toBe(false);
    expect(() => sectorSplit(Number.NaN, [])).toThrow(/gainMs/);
    expect(() => sectorSplit(10, [{ medianMs: Number.NaN, bestMs: 1 }])).toThrow(/sectors\[0\]\.medianMs/);
  });
});

test("largest remainder adds up and stays within one of the exact share", () => {
  const weights = fc.array(fc.nat(1000), { minLength: 1, maxLength: 10 }).filter((given) => sum(given) > 0);
  fc.assert(
    fc.property(fc.nat(100_000), weights, (total, given) => {
      const shares = largestRemainder(total, given);
      expect(sum(shares)).toBe(total);
      for (const [i, share] of shares.entries()) {
        expect(Math.abs(share - (total * (given[i] ?? 0)) / sum(given))).toBeLessThan(1 + 1e-9);
      }
    }),
    { seed: 13 },
  );
});

test("largest remainder by hand: the largest first, of equal ones the first", () => {
  expect(largestRemainder(10, [1, 1, 1])).toEqual([4, 3, 3]);
  expect(largestRemainder(5, [1, 2, 4])).toEqual([1, 1, 3]);
  expect(largestRemainder(11, [1, 1, 1])).toEqual([4, 4, 3]);
  expect(largestRemainder(0, [1, 2])).toEqual([0, 0]);
});
