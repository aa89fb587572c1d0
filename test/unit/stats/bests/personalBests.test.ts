import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LapForBest, personalBests } from "#stats";

let count = 0;
function lap(ms: number | undefined, fields: Partial<LapForBest> = {}): LapForBest {
  count++;
  return { id: `lap ${count}`, at: count, remarks: [], ...(ms !== undefined && { ms }), ...fields };
}
const steps = (laps: readonly LapForBest[]) => personalBests(laps).map((step) => step.ms);

describe("personal-best line", () => {
  it("steps down at each clean lap that is faster than all before it", () => {
    expect(steps([lap(84_200), lap(84_500), lap(83_900), lap(83_900), lap(83_899)])).toEqual([
      84_200, 83_900, 83_899,
    ]);
  });

  it.each(["cut", "off", "spin", "contact", "traffic", "slow", "out", "in"] as const)(
    "a lap with the remark %s never becomes a best",
    (kind) => {
      expect(steps([lap(84_200), lap(80_000, { remarks: [{ kind }] })])).toEqual([84_200]);
    },
  );

  it("leaves out laps without a time and those the driver has taken out", () => {
    expect(steps([lap(84_200), lap(undefined), lap(80_000, { isNotBest: true })])).toEqual([84_200]);
  });

  it("a time in tenths that may be level takes no best; one that is surely faster does", () => {
    expect(steps([lap(83_456), lap(83_400, { decimals: 1 })])).toEqual([83_456]);
    expect(steps([lap(83_456), lap(83_300, { decimals: 1 })])).toEqual([83_456, 83_300]);
    expect(steps([lap(83_456), lap(83_000, { decimals: 0 })])).toEqual([83_456]);
  });

  it("a lap inside the tenth of a best known in tenths does not take it", () => {
    expect(steps([lap(83_400, { decimals: 1 }), lap(83_450), lap(83_399)])).toEqual([83_400, 83_399]);
  });

  it("sorts by time and gives lap, instant and decimals", () => {
    const late = lap(83_000, { at: 9000 });
    const early = lap(84_000, { at: 8000, decimals: 2 });
    expect(personalBests([late, early])).toEqual([
      { lapId: early.id, at: 8000, ms: 84_000, decimals: 2 },
      { lapId: late.id, at: 9000, ms: 83_000, decimals: 3 },
    ]);
    expect(personalBests([])).toEqual([]);
  });

  it("always falls, and ends at the fastest where all digits are known", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 80_000, max: 90_000 }), { minLength: 1 }), (times) => {
        const line = steps(times.map((ms) => lap(ms)));
        expect(line).toEqual([...new Set(line)].toSorted((a, b) => b - a));
        expect(line.at(-1)).toBe(Math.min(...times));
      }),
      { seed: 2, numRuns: 200 },
    );
  });

  it("refuses a time that is no number, with the lap's name", () => {
    expect(() => personalBests([lap(Number.NaN, { id: "x7" })])).toThrow("ms of lap x7");
    expect(() => personalBests([lap(84_000, { id: "x8", at: Number.NaN })])).toThrow("at of lap x8");
  });
});
