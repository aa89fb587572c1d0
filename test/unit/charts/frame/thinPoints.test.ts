import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { thinPoints } from "../../../../src/charts/frame/thinPoints.ts";

const line = (ys: readonly number[]) => ys.map((y, x) => ({ x, y }));

describe("thinPoints", () => {
  it("leaves a short list as it is", () => {
    const points = line([1, 2, 3]);
    expect(thinPoints(points, 3)).toBe(points);
    expect(thinPoints([], 3)).toEqual([]);
  });

  it("keeps the peak of each bucket, by hand: 8 points to 4", () => {
    // Two buckets of three points between the ends; the spikes span the largest triangles.
    const thinned = thinPoints(line([0, 0, 9, 0, 0, -7, 0, 0]), 4);
    expect(thinned.map(({ y }) => y)).toEqual([0, 9, -7, 0]);
  });

  it("gives exactly the limit, in order, from the list, with both ends", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -5000, max: 5000 }), { minLength: 4, maxLength: 300 }),
        fc.integer({ min: 3, max: 60 }),
        (ys, limit) => {
          const points = line(ys);
          const thinned = thinPoints(points, limit);
          expect(thinned).toHaveLength(Math.min(limit, points.length));
          expect(thinned[0]).toBe(points[0]);
          expect(thinned.at(-1)).toBe(points.at(-1));
          thinned.forEach((point, at) => {
            expect(points[point.x]).toBe(point);
            expect(point.x).toBeGreaterThan(thinned[at - 1]?.x ?? -1);
          });
        },
      ),
      { seed: 20261014, numRuns: 200 },
    );
  });

  it("refuses a limit that leaves no room between the ends", () => {
    expect(() => thinPoints(line([1, 2, 3, 4]), 2)).toThrow(RangeError);
  });
});
