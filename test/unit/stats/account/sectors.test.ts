import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { reachableLap, sectorAccount, sumOfBestSectors } from "#stats";

const laps = fc.integer({ min: 1, max: 5 }).chain((count) =>
  fc.array(fc.array(fc.integer({ min: 15_000, max: 60_000 }), { minLength: count, maxLength: count }), {
    minLength: 1,
    maxLength: 25,
  }),
);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const settings = { seed: 77, numRuns: 200 };

describe("sum of best sectors", () => {
  it("adds the best sector of each, from whatever lap", () => {
    expect(
      sumOfBestSectors([
        [30_000, 54_000],
        [30_100, 53_800],
      ]),
    ).toEqual({
      known: true,
      value: { ms: 83_800, sectors: [30_000, 53_800], laps: 2 },
    });
  });

  it("is never slower than any lap and never rises with more laps", () => {
    fc.assert(
      fc.property(laps, (times) => {
        const all = sumOfBestSectors(times);
        const fewer = sumOfBestSectors(times.slice(0, 1));
        expect(all.known && fewer.known && all.value.ms <= fewer.value.ms).toBe(true);
        expect(all.known && times.every((lap) => all.value.ms <= sum(lap))).toBe(true);
      }),
      settings,
    );
  });

  it("needs a lap with sectors", () => {
    expect(sumOfBestSectors([])).toEqual({
      known: false,
      reason: { needs: 1, of: "clean lap with sectors", has: 0 },
    });
    expect(() =>
      sumOfBestSectors([
        [1, 2],
        [1, 2, 3],
      ]),
    ).toThrow(RangeError);
    expect(() => sumOfBestSectors([[1, Number.NaN]])).toThrow("laps[0][1]");
  });
});

describe("reachable lap", () => {
  it("adds the lower quartiles, and its parts add up to it", () => {
    fc.assert(
      fc.property(laps, (times) => {
        const found = reachableLap(times);
        expect(found.known).toBe(times.length >= 8);
        if (found.known) expect(sum(found.value.sectors)).toBe(found.value.ms);
      }),
      settings,
    );
  });

  it("by hand: place 1.75 of eight sorted sector times, rounded", () => {
    const times = Array.from({ length: 8 }, (_, lap) => [30_000 + 100 * lap, 54_000 - 10 * lap]);
    expect(reachableLap(times)).toEqual({
      known: true,
      value: { ms: 84_123, sectors: [30_175, 53_948], laps: 8 },
    });
  });

  it("needs eight laps", () => {
    expect(reachableLap(new Array(7).fill([30_000, 54_000]))).toEqual({
      known: false,
      reason: { needs: 8, of: "pace lap with sectors", has: 7 },
    });
  });
});

describe("sector account", () => {
  it("splits the usual lap into best sectors and gaps that add up, and names the largest gap", () => {
    fc.assert(
      fc.property(laps, (times) => {
        const found = sectorAccount(times);
        expect(found.known).toBe(times.length >= 5);
        if (!found.known) return;
        const { sectors, best, usual, gap, largest } = found.value;
        expect(best + gap).toBe(usual);
        expect(sum(sectors.map((sector) => sector.gap))).toBe(gap);
        for (const sector of sectors) {
          expect(sector.best + sector.gap).toBe(sector.usual);
          expect(sector.gap).toBeGreaterThanOrEqual(0);
          expect(sectors[largest]?.gap).toBeGreaterThanOrEqual(sector.gap);
        }
      }),
      settings,
    );
  });
});
