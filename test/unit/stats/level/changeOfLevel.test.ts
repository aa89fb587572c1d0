import { describe, expect, test } from "vitest";
import { changeOfLevel } from "../../../../src/stats/level/changeOfLevel.ts";
import { levelCurve } from "../../../../src/stats/level/levelCurve.ts";
import { levelAfter } from "../../../../src/stats/level/levelKnown.ts";
import { aModel } from "./aPosterior.ts";

/** Quantiles of the normal distribution at 0.95 and 0.75 (tables). */
const [Z95, Z75] = [1.6449, 0.6745];

/** One that came 2 % faster: 1800 ms of 1:30, to 0.2 %. */
const gained = {
  kind: "moving",
  end: { l: -0.01, ll: 4e-6 },
  levels: [
    [0.01, 4e-6, 2e-6],
    [0, 9e-6, 6e-6],
    [-0.01, 4e-6, 4e-6],
  ],
} as const;

describe("the change of a level, by hand", () => {
  test("is the difference of two levels that are known together", () => {
    const change = changeOfLevel(aModel([gained]), 0);
    expect(change.change).toBeCloseTo(-1800, 2);
    // 4 + 4 − 2·2 millionths: a deviation of 0.002, 180 ms.
    expect(change.low).toBeCloseTo(-1800 - 180 * Z95, 1);
    expect(change.high).toBeCloseTo(-1800 + 180 * Z95, 1);
    expect(change.chanceFaster).toBeCloseTo(1, 6);
    const narrow = changeOfLevel(aModel([gained]), 0, 0.5);
    expect([narrow.low, narrow.high].map((ms) => ms + 1800)).toEqual([
      expect.closeTo(-180 * Z75, 1),
      expect.closeTo(180 * Z75, 1),
    ]);
    // 4 + 9 − 2·6: a deviation of 0.001 about −0.01.
    expect(changeOfLevel(aModel([gained]), 1).low).toBeCloseTo(-900 - 90 * Z95, 1);
  });

  test("is none for a driver who is still, half of which counts as faster", () => {
    const still = { levels: [[0.01, 4e-6, 4e-6]], end: { ll: 4e-6 } } as const;
    expect(changeOfLevel(aModel([still]), 0)).toEqual({ change: 0, low: 0, high: 0, chanceFaster: 0.5 });
    const model = aModel([
      { ...still, weight: 0.4 },
      { ...gained, weight: 0.6 },
    ]);
    expect(changeOfLevel(model, 0).chanceFaster).toBeCloseTo(0.8, 6);
    expect(changeOfLevel(model, 0).high).toBe(0);
  });

  test("counts sessions as the driver's list does, one too old for the model as its first", () => {
    const late = aModel([gained], { from: 10 });
    expect(changeOfLevel(late, 3)).toEqual(changeOfLevel(late, 10));
    expect(changeOfLevel(late, 11).change).toBeCloseTo(-900, 2);
    expect(changeOfLevel(late, 12).change).toBe(0);
    for (const since of [-1, 1.5, 13])
      expect(() => changeOfLevel(late, since)).toThrow(
        `since is ${since}: a whole number from 0 to 12 is needed`,
      );
    expect(() => changeOfLevel(late, 3, 0)).toThrow("confidence is 0");
  });
});

describe("the level of each session, by hand", () => {
  const bandAbout = (mid: number, deviation: number) => ({
    low: expect.closeTo(mid - deviation * Z95, -1),
    lowHalf: expect.closeTo(mid - deviation * Z75, -1),
    mid: expect.closeTo(mid, -1),
    highHalf: expect.closeTo(mid + deviation * Z75, -1),
    high: expect.closeTo(mid + deviation * Z95, -1),
  });

  test("lies about its mean, the last one as it is said beside the curve", () => {
    const model = aModel([gained]);
    const curve = levelCurve(model);
    expect(curve).toEqual([bandAbout(90_900, 180), bandAbout(90_000, 270), bandAbout(89_100, 180)]);
    expect(curve[2]).toEqual(levelAfter(model.posterior));
  });

  test("is that of all cells by their weight", () => {
    const model = aModel([
      { ...gained, weight: 0.5 },
      { ...gained, weight: 0.5, levels: [[0.03, 4e-6, 2e-6]] },
    ]);
    expect(levelCurve(model)[0]?.lowHalf).toBeCloseTo(90_900, -1);
    expect(levelCurve(model)[0]?.highHalf).toBeCloseTo(92_700, -1);
  });
});
