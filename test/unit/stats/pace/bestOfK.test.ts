import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bestOfK, mean } from "#stats";

const laps = fc.array(fc.integer({ min: 20_000, max: 600_000 }), { minLength: 1, maxLength: 12 });
const runs = { seed: 31, numRuns: 150 };

/** Mean best lap over every choice of k laps, one by one. */
function byEveryChoice(values: readonly number[], k: number): number {
  let sum = 0;
  let choices = 0;
  for (let mask = 0; mask < 2 ** values.length; mask++) {
    const chosen = values.filter((_, index) => (mask >> index) & 1);
    if (chosen.length !== k) continue;
    sum += Math.min(...chosen);
    choices++;
  }
  return sum / choices;
}

describe("best of k", () => {
  it("is the mean best lap over every choice of k laps", () => {
    fc.assert(
      fc.property(laps, fc.integer({ min: 1, max: 12 }), (values, k) => {
        if (k > values.length) expect(bestOfK(values, k)).toBeUndefined();
        else expect((bestOfK(values, k) ?? Number.NaN) / byEveryChoice(values, k)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });

  it("is the best of all with k = n and the mean with k = 1", () => {
    fc.assert(
      fc.property(laps, (values) => {
        expect(bestOfK(values, values.length)).toBe(Math.min(...values));
        expect(bestOfK(values, 1)).toBeCloseTo(mean(values) ?? Number.NaN, 6);
      }),
      runs,
    );
  });

  it("never rises with k, and moves with the laps", () => {
    fc.assert(
      fc.property(laps, fc.integer({ min: -5000, max: 5000 }), (values, by) => {
        let before = Number.POSITIVE_INFINITY;
        for (let k = 1; k <= values.length; k++) {
          const best = bestOfK(values, k) ?? Number.NaN;
          expect(best).toBeLessThanOrEqual(before + 1e-6);
          const moved = bestOfK(
            values.map((value) => value + by),
            k,
          );
          expect(moved).toBeCloseTo(best + by, 6);
          before = best;
        }
      }),
      runs,
    );
  });

  it("does not overflow with 100,000 laps", () => {
    const many = Float64Array.from({ length: 100_000 }, (_, index) => 84_000 + (index % 1000));
    expect(bestOfK(many, 50_000)).toBeCloseTo(84_000, 6);
    expect(bestOfK(many, 10)).toBeGreaterThan(84_050);
    expect(bestOfK(many, 10)).toBeLessThan(84_130);
  });

  it.each([0, -1, 1.5, Number.NaN])("refuses k = %d", (k) => {
    expect(() => bestOfK([1, 2], k)).toThrow(RangeError);
  });
});
