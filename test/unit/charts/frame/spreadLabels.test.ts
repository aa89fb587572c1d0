import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadLabels } from "../../../../src/charts/frame/spreadLabels.ts";

const heights = (ys: readonly number[], height = 16) => ys.map((y) => ({ y, height }));

describe("spreadLabels", () => {
  it("leaves labels that do not touch where they are", () => {
    expect(spreadLabels(heights([20, 80, 140]), 0, 200)).toEqual([20, 80, 140]);
  });

  it("moves two that overlap apart by the same", () => {
    expect(spreadLabels(heights([100, 104]), 0, 200)).toEqual([94, 110]);
  });

  it("keeps labels inside, in the order given", () => {
    expect(spreadLabels(heights([199, 3]), 0, 200)).toEqual([192, 8]);
  });

  it("never lets two overlap nor leaves the space where there is room", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -20, max: 420 }), { minLength: 1, maxLength: 10 }), (ys) => {
        const middles = [...spreadLabels(heights(ys), 0, 400)].sort((a, b) => a - b);
        expect(middles[0]).toBeGreaterThanOrEqual(8 - 1e-9);
        expect(middles.at(-1)).toBeLessThanOrEqual(392 + 1e-9);
        middles.slice(1).forEach((middle, at) => {
          expect(middle - (middles[at] ?? 0)).toBeGreaterThanOrEqual(16 - 1e-9);
        });
      }),
      { seed: 20261014, numRuns: 300 },
    );
  });
});
