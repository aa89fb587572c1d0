import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
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

  it("leave out what there is nothing to compare with, and a lap without a time ends the chain to the clean lap before", () => {
    const run = aRun(1, [84_500, [undefined, "spin"], 84_600, 84_550]);
    const rows = lapDifferences([run], undefined, undefined).get(run.id) ?? [];
    expect(rows.map(({ lap: _, decimals: __, ...row }) => row)).toEqual([
      { number: 1, isBest: true },
      { number: 2, isBest: false },
      { number: 3, toBest: 100, isBest: false },
      { number: 4, toClean: -50, toBest: 50, isBest: false },
    ]);
  });

  it("go to a best taken a lap before, known to its own decimals, which a level lap does not take", () => {
    const rows = rowsOf([{ ms: 84_200, decimals: 1 }, 84_249, 84_199, 84_199]);
    expect(rows.map(({ isBest, toBest, decimals }) => [isBest, toBest, decimals.toBest])).toEqual([
      [true, undefined, 1],
      [false, 49, 1],
      [true, -1, 1],
      [false, 0, 3],
    ]);
  });

  it("go to no best and no target in a run that stands apart, but for a lap that took the best", () => {
    const apart: Partial<Run>[] = [
      { surface: "wet" },
      { kind: "warm-up" },
      { kind: "drill" },
      { effort: "learning" },
      { guest: "" },
    ];
    for (const fields of apart) {
      const run = aRun(1, [84_500, 84_600], fields);
      const rows = lapDifferences([run], { ms: 84_400, decimals: 3 }, 84_000).get(run.id) ?? [];
      expect(rows.map(({ toClean, toBest, toTarget }) => [toClean, toBest, toTarget])).toEqual([
        [undefined, undefined, undefined],
        [100, undefined, undefined],
      ]);
    }
    const warmUp = aRun(1, [84_300, 84_350], { kind: "warm-up" });
    const rows = lapDifferences([warmUp], { ms: 84_400, decimals: 3 }, 84_000).get(warmUp.id) ?? [];
    expect(rows.map(({ toBest, toTarget }) => [toBest, toTarget])).toEqual([
      [-100, undefined],
      [undefined, undefined],
    ]);
  });

  it("know no best of a guest's run, and none of a warm-up while the page has none", () => {
    const marks = (fields: Partial<Run>, best?: { readonly ms: number; readonly decimals: number }) => {
      const runs = [aRun(1, [84_000], fields), aRun(2, [84_500])];
      return [...lapDifferences(runs, best, undefined).values()].flat().map(({ isBest }) => isBest);
    };
    const pb = { ms: 85_000, decimals: 3 };
    expect(marks({ guest: "Ana" }, pb)).toEqual([false, true]);
    expect(marks({ kind: "warm-up" })).toEqual([false, true]);
    expect(marks({ kind: "warm-up" }, pb)).toEqual([true, false]);
    expect(marks({})).toEqual([true, false]);
  });

  it("go to the best of a run written as a whole, where that beats the one before", () => {
    const after = (summary: Run["summary"], fields: Partial<Run> = {}) => {
      const runs = [aRun(1, [], { ...(summary && { summary }), ...fields }), aRun(2, [84_500])];
      const [row] = lapDifferences(runs, { ms: 85_000, decimals: 3 }, undefined).get(runs[1]?.id ?? "") ?? [];
      return [row?.toBest, row?.decimals.toBest, row?.isBest];
    };
    expect(after({ laps: 9, bestMs: 84_000 })).toEqual([500, 3, false]);
    expect(after({ laps: 9, bestMs: 84_600, bestDecimals: 1 })).toEqual([-100, 1, true]);
    expect(after({ laps: 9, bestMs: 85_000, bestDecimals: 1 })).toEqual([-500, 3, true]);
    expect(after({ laps: 9 })).toEqual([-500, 3, true]);
    expect(after({ laps: 9, bestMs: 84_000 }, { guest: "Ana" })).toEqual([-500, 3, true]);
  });
});
