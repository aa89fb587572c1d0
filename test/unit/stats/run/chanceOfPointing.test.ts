import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chanceOfPointing, pointedAtLaps } from "#stats";
import { chanceFrom, skewed } from "../../../../demo-data/drivers.ts";

/** Share of runs of laps that are all alike in which a lap is pointed at. */
function simulate(laps: number, runs: number): number {
  const chance = chanceFrom(31 * laps);
  let found = 0;
  for (let run = 0; run < runs; run++) {
    const times = Array.from({ length: laps }, () => 84_000 + 400 * skewed(chance));
    if (pointedAtLaps(times).length > 0) found++;
  }
  return found / runs;
}

describe("how often chance alone points at a lap", () => {
  it.each([5, 6, 8, 10, 16, 20, 25, 37, 45, 70, 120])("is what simulated runs of %i laps say", (laps) => {
    const runs = laps < 50 ? 4000 : 1000;
    const error = Math.sqrt((0.25 * 1) / runs);
    expect(Math.abs(chanceOfPointing(laps) - simulate(laps, runs))).toBeLessThan(0.015 + 3 * error);
  });

  it("grows with the laps from eight on, and stays where no longer run was simulated", () =>
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 400 }), fc.integer({ min: 0, max: 400 }), (laps, more) => {
        expect(chanceOfPointing(laps + more)).toBeGreaterThanOrEqual(chanceOfPointing(laps));
        expect(chanceOfPointing(laps + more)).toBeLessThan(1);
      }),
    ));

  it("lies on a line between two lengths", () => {
    expect(chanceOfPointing(20)).toBe(0.31);
    expect(chanceOfPointing(25)).toBeCloseTo(0.385, 9);
    expect(chanceOfPointing(5)).toBe(0.16);
  });
});
