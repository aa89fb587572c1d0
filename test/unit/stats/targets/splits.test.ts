import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { milestones, sectorSplit } from "#stats";
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

describe("milestones", () => {
  const floor = { low: 79_900, mid: 80_000, high: 80_100 };

  test("by hand: the gap to the floor halves at each step", () => {
    expect(milestones({ nowMs: 88_000, targetMs: 81_000, floor, steps: 3 })).toEqual({
      known: true,
      value: [84_000, 82_000, 81_000],
    });
  });

  test("without a floor of use the steps are equal in time", () => {
    const even = { known: true, value: [86_000, 84_000, 82_000] };
    const ask = { nowMs: 88_000, targetMs: 82_000, steps: 3 };
    expect(milestones(ask)).toEqual(even);
    expect(milestones({ ...ask, floor: { low: 83_000, mid: 84_000, high: 85_000 } })).toEqual(even);
    expect(milestones({ ...ask, floor: { low: 70_000, mid: 80_000, high: 90_000 } })).toEqual(even);
  });

  test("for a best-lap target the floor is moved by the mean of best less median", () => {
    const moved = milestones({ nowMs: 87_000, targetMs: 80_000, floor, meanGapMs: -1000, steps: 3 });
    expect(moved).toEqual({ known: true, value: [83_000, 81_000, 80_000] });
  });

  test("each is faster than the one before, and the last is the target", () => {
    const ms = fc.integer({ min: 60_000, max: 100_000 });
    fc.assert(
      fc.property(
        ms,
        fc.integer({ min: 1, max: 5000 }),
        ms,
        fc.nat(3000),
        fc.integer({ min: 1, max: 9 }),
        (now, gain, mid, half, steps) => {
          const targetMs = now - gain;
          const given = milestones({
            nowMs: now,
            targetMs,
            floor: { low: mid - half, mid, high: mid + half },
            steps,
          });
          if (!given.known) throw new Error(JSON.stringify(given.reason));
          expect(given.value.at(-1)).toBe(targetMs);
          expect([now, ...given.value]).toEqual(
            [...new Set([now, ...given.value])].toSorted((a, b) => b - a),
          );
        },
      ),
      { seed: 14 },
    );
  });

  test("a reached target gives a reason; a wrong value is named", () => {
    expect(milestones({ nowMs: 80_000, targetMs: 80_000 }).known).toBe(false);
    expect(() => milestones({ nowMs: Number.NaN, targetMs: 80_000 })).toThrow(/nowMs/);
    expect(() => milestones({ nowMs: 81_000, targetMs: 80_000, steps: 0 })).toThrow(/steps is 0/);
  });
});
