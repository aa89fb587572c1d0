import { describe, expect, it } from "vitest";
import { lapDifferences } from "#stats";
import { aRun, type Told } from "../someRows.ts";

const rowsOf = (laps: readonly Told[], best?: { readonly ms: number; readonly decimals: number }) => {
  const run = aRun(1, laps);
  return lapDifferences([run], best, 84_000).get(run.id) ?? [];
};

describe("the differences of a lap", () => {
  it("are to the last clean lap, to the best as it stood, and to the target", () => {
    const rows = rowsOf([84_500, [90_000, "off"], 84_300], { ms: 84_400, decimals: 3 });
    expect(rows.map(({ toClean, toBest, toTarget }) => [toClean, toBest, toTarget])).toEqual([
      [undefined, 100, 500],
      [5_500, 5_600, 6_000],
      [-200, -100, 300],
    ]);
    expect(rows.map(({ isBest }) => isBest)).toEqual([false, false, true]);
  });

  it("have no more decimals than the coarser of their two times", () => {
    const laps: Told[] = [84_550, { ms: 98_000, decimals: 1 }, 84_600, { ms: 84_200, decimals: 2 }];
    expect(rowsOf(laps, { ms: 84_300, decimals: 1 }).map(({ decimals }) => decimals)).toEqual([
      { toClean: 3, toBest: 1, toTarget: 3 },
      { toClean: 1, toBest: 1, toTarget: 1 },
      { toClean: 1, toBest: 1, toTarget: 3 },
      { toClean: 2, toBest: 1, toTarget: 2 },
    ]);
  });

  it('make no best of a lap marked "not my PB"', () => {
    const rows = rowsOf([{ ms: 83_000, isNotBest: true }, 84_500], { ms: 85_000, decimals: 3 });
    expect(rows.map(({ isBest }) => isBest)).toEqual([false, true]);
  });
});
