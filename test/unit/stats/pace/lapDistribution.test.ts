import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lapDistribution } from "#stats";

const times = fc.integer({ min: 60_000, max: 120_000 });

describe("the distribution of laps", () => {
  it("counts every lap once, in a bin or as slower", () =>
    fc.assert(
      fc.property(fc.array(times), fc.array(times), (now, before) => {
        const found = lapDistribution(now, before);
        const sum = (side: "now" | "before") =>
          found.bins.reduce((total, bin) => total + bin[side], 0) + (found[side]?.slower ?? 0);
        expect([sum("now"), sum("before")]).toEqual([now.length, before.length]);
        expect(found.bins.length).toBeLessThanOrEqual(19);
      }),
    ));

  it("gives the quartiles of each period (Hyndman & Fan 1996, type 7)", () => {
    const { now, before } = lapDistribution([80_000, 80_100, 80_200, 80_300, 80_400], []);
    expect(now).toEqual({ laps: 5, lowerQuartile: 80_100, median: 80_200, upperQuartile: 80_300, slower: 0 });
    expect(before).toBeUndefined();
  });

  it("does not let one lap far out press the others together", () => {
    const { bins, now } = lapDistribution([80_000, 80_100, 80_200, 80_300, 80_400, 110_000], []);
    expect(now?.slower).toBe(1);
    expect(bins.length).toBeGreaterThan(4);
  });

  it("has bins of one round width that begin at a multiple of it, by hand", () => {
    const { bins } = lapDistribution([84_003, 84_005, 84_012, 84_039], [84_039, 84_041]);
    expect(bins).toEqual([
      { from: 84_000, to: 84_010, now: 2, before: 0 },
      { from: 84_010, to: 84_020, now: 1, before: 0 },
      { from: 84_020, to: 84_030, now: 0, before: 0 },
      { from: 84_030, to: 84_040, now: 1, before: 1 },
      { from: 84_040, to: 84_050, now: 0, before: 1 },
    ]);
  });

  it("has wider bins the farther the laps lie apart: eighteen steps of a width still fit, a millisecond more does not", () => {
    const widthOf = (spread: number) => {
      const [first] = lapDistribution([80_000, 80_000 + spread], []).bins;
      return (first?.to ?? 0) - (first?.from ?? 0);
    };
    expect([0, 180, 181, 360, 361, 900, 901].map(widthOf)).toEqual([10, 10, 20, 20, 50, 50, 100]);
    expect([18_000, 180_000, 1_080_001].map(widthOf)).toEqual([1000, 10_000, 300_000]);
  });

  it("counts as slower what lies beyond three times the quartiles' distance above the upper one, and not at it", () => {
    // Quartiles 80 100 and 80 300 of the first five; of six the upper one moves, so the sixth is put where it stays.
    const six = (last: number) => lapDistribution([80_000, 80_000, 80_000, 80_000, 80_000, last], []);
    // All quartiles are 80 000: the least distance counted is a tenth of a second, so the limit is 80 300.
    expect(six(80_300).now?.slower).toBe(0);
    expect(six(80_301).now?.slower).toBe(1);
    // Quartiles 80 100 and 80 300: the limit is 80 900.
    const wide = (last: number) =>
      lapDistribution([80_000, 80_100, 80_100, 80_200, 80_200, 80_300, 80_300, last, 80_000], []);
    expect(wide(80_900).now).toMatchObject({ lowerQuartile: 80_100, upperQuartile: 80_300, slower: 0 });
    expect(wide(80_901).now?.slower).toBe(1);
  });

  it("has no bins without laps, and the laps of the period before alone have theirs", () => {
    expect(lapDistribution([], [])).toEqual({ bins: [], now: undefined, before: undefined });
    const { bins, now, before } = lapDistribution([], [80_005]);
    expect(bins).toEqual([{ from: 80_000, to: 80_010, now: 0, before: 1 }]);
    expect([now, before?.laps]).toEqual([undefined, 1]);
  });
});
