import { describe, expect, test } from "vitest";
import { fuelNeeded, type RaceQuestion, raceDistance } from "#stats";
import { chanceFrom, normal, skewed } from "../../../../demo-data/drivers.ts";
import { cleanRunChance } from "../../../../src/stats/race/cleanRunChance.ts";
import { centreRuns } from "../../../../src/stats/race/raceLaps.ts";

const laps = [90_100, 89_900, 90_400, 90_000, 89_800, 90_300, 90_050, 89_950];
const raceOf = (changes: Partial<RaceQuestion> = {}) => {
  const figure = raceDistance({
    laps,
    seed: 3,
    ...(changes.minutes === undefined ? { count: 20 } : {}),
    ...changes,
  });
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};

describe("race distance", () => {
  test("the middle is laps times the usual lap, the range lies around it", () => {
    const { low, mid, high } = raceOf();
    expect(mid / (20 * 90_062.5)).toBeCloseTo(1, 2);
    expect(low).toBeLessThan(mid);
    expect(high).toBeGreaterThan(mid);
  });

  test("a race of minutes ends with the lap after the time is full", () => {
    const race = raceOf({ minutes: 30 });
    expect(race.low).toBeGreaterThanOrEqual(30 * 60_000);
    expect(race.high).toBeLessThan(30 * 60_000 + 93_000);
    expect(race.laps.mid).toBe(20);
  });

  test("a race of minutes that could end with either of two laps is told with the time of one of them", () => {
    // Twenty laps of 90.0625 s are 1,801.25 s: about half of the races need one more.
    for (const seed of [1, 2, 3, 4, 5]) {
      const { mid, laps: driven } = raceOf({ seed, minutes: 1801.25 / 60 });
      expect(mid / driven.mid / 90_062.5).toBeCloseTo(1, 2);
    }
  });

  test("the same seed gives the same race", () => {
    expect(raceOf()).toEqual(raceOf());
    expect(raceOf({ seed: 4 }).high).not.toBe(raceOf().high);
  });

  test("ahead of a slow rival nearly always, of a fast one hardly ever", () => {
    expect(raceOf().aheadChance).toBeUndefined();
    expect(raceOf({ rivalMeanMs: 92_000 }).aheadChance).toBeGreaterThan(0.9);
    expect(raceOf({ rivalMeanMs: 88_500 }).aheadChance).toBeLessThan(0.1);
  });

  test("laps with an off and laps without a time count as mistakes", () => {
    const mixed = [
      ...laps.map((ms) => ({ ms, run: 1 })),
      { ms: 97_000, run: 1, remarks: [{ kind: "off" }] as const },
      { run: 1 },
    ];
    const race = raceOf({ laps: mixed });
    expect(race.mistakes.share).toBeCloseTo(0.2, 12);
    expect(race.cleanChance).toBeLessThan(raceOf().cleanChance);
  });

  test("chance of a clean run by hand (Jeffreys' prior)", () => {
    expect(cleanRunChance(0, 0, 1)).toBe(0.5);
    expect(cleanRunChance(2, 10, 2)).toBeCloseTo(((8.5 / 11) * 9.5) / 12, 12);
    expect(cleanRunChance(0, 20, 10)).toBeGreaterThan(cleanRunChance(0, 20, 30));
  });

  test("eight in ten simulated races end inside the range", () => {
    const chance = chanceFrom(17);
    let inside = 0;
    const trials = 150;
    for (let trial = 0; trial < trials; trial++) {
      const run = () => {
        const shift = 300 * normal(chance);
        return Array.from({ length: 15 }, () => Math.round(90_000 + shift + 400 * skewed(chance)));
      };
      const past = [1, 2, 3, 4].flatMap((name) => run().map((ms) => ({ ms, run: name })));
      const { low, high } = raceOf({ laps: past, count: 15, seed: trial });
      const total = run().reduce((sum, ms) => sum + ms, 0);
      if (total >= low && total <= high) inside++;
    }
    expect(inside / trials).toBeGreaterThan(0.7);
    expect(inside / trials).toBeLessThan(0.93);
  });

  test("needs five timed laps, and exactly one of count and minutes", () => {
    for (const count of [0, 1, 4]) {
      expect(raceDistance({ laps: laps.slice(0, count), count: 10, seed: 1 })).toEqual({
        known: false,
        reason: { needs: 5, of: "timed lap", has: count },
      });
    }
    expect(() => raceDistance({ laps, seed: 1 })).toThrow(/exactly one/);
    expect(() => raceDistance({ laps, count: 2.5, seed: 1 })).toThrow(/count is 2.5/);
    expect(() => raceDistance({ laps: [...laps, Number.NaN], count: 2, seed: 1 })).toThrow(/laps\[8\]/);
  });

  test("five laps are enough, and what is no number is refused by its name", () => {
    expect(raceDistance({ laps: laps.slice(0, 5), count: 3, seed: 1 }).known).toBe(true);
    expect(() => raceDistance({ laps, count: 2, seed: Number.NaN })).toThrow(/^seed is NaN/);
    expect(() => raceDistance({ laps, count: 2, seed: 1, rivalMeanMs: Number.NaN })).toThrow(
      /^rivalMeanMs is NaN/,
    );
    for (const value of [0, -1]) {
      expect(() => raceDistance({ laps, count: value, seed: 1 })).toThrow(
        new RangeError(`count is ${value}: more than 0 is needed`),
      );
      expect(() => raceDistance({ laps, minutes: value, seed: 1 })).toThrow(
        new RangeError(`minutes is ${value}: more than 0 is needed`),
      );
      expect(() => raceDistance({ laps: [...laps, value], count: 2, seed: 1 })).toThrow(
        new RangeError(`laps[8].ms is ${value}: a lap time is needed`),
      );
    }
    expect(() => raceDistance({ laps, minutes: Number.NaN, seed: 1 })).toThrow(/minutes/);
  });

  test("runs that lie far apart leave a wide range, and alike ones a narrow one", () => {
    const runsAt = (...bases: readonly number[]) =>
      bases.flatMap((base, run) => [0, 100, 200, 300, 400].map((more) => ({ ms: base + more, run })));
    const rangeOf = (...bases: readonly number[]) => {
      const { low, high, mid } = raceOf({ laps: runsAt(...bases) });
      return { width: high - low, mid };
    };
    const [alike, apart] = [rangeOf(90_000, 90_000, 90_000, 90_000), rangeOf(88_000, 89_000, 91_000, 92_000)];
    expect(apart.width).toBeGreaterThan(2 * alike.width);
    // The usual lap of either is 90.2 s; the race takes twenty of it.
    expect(alike.mid / (20 * 90_200)).toBeCloseTo(1, 2);
    expect(apart.mid / (20 * 90_200)).toBeCloseTo(1, 1);
  });

  test("of equal laps the range is that of the t distribution of the runs' means alone", () => {
    const alike = (runs: number) =>
      Array.from({ length: 8 * runs }, (_, lap) => ({ ms: 90_000, run: lap % runs }));
    const halfWidth = (runs: number) => {
      const { low, high } = raceOf({ laps: alike(runs) });
      return (high - low) / 2;
    };
    // By hand: twenty laps of 0.3 % of 90 s, times √(3/ν)·√(1 + 1/runs)·t, ν = 2 + runs. Student's t at 0.90 is 1.638
    // for 3 degrees of freedom and 1.440 for 6 (NIST/SEMATECH e-Handbook 1.3.6.7.2).
    const unit = 20 * 0.003 * 90_000;
    expect(halfWidth(1) / (unit * Math.SQRT2 * 1.638)).toBeCloseTo(1, 1);
    expect(halfWidth(4) / (unit * Math.sqrt(0.5 * 1.25) * 1.44)).toBeCloseTo(1, 1);
  });

  test("one lap of a race is as likely slow as laps have been", () => {
    const { mid, high } = raceOf({ laps: [90_000, 90_000, 90_000, 90_000, 100_000], count: 1 });
    expect(Math.abs(mid - 90_000)).toBeLessThan(300);
    expect(Math.abs(high - 100_000)).toBeLessThan(600);
  });

  test("laps come in blocks as they were driven: after a slow one the quick one that followed", () => {
    const turns = Array.from({ length: 10 }, (_, lap) => (lap % 2 === 0 ? 88_000 : 92_000));
    const { low, mid, high } = raceOf({ laps: turns, count: 2 });
    expect(Math.abs(mid - 180_000)).toBeLessThan(200);
    // What is left is the shift of the whole race, as of equal laps.
    expect((high - low) / 2 / (2 * 0.003 * 90_000 * Math.SQRT2 * 1.638)).toBeCloseTo(1, 1);
  });

  test("a race is no single stretch of laps in a row", () => {
    const halves = Array.from({ length: 40 }, (_, lap) => (lap < 20 ? 88_000 : 92_000));
    const { low, high } = raceOf({ laps: halves });
    // Seven blocks of three laps, each 6 s to either side: 20 s at 0.90, and 13 s of the shift; one stretch would be 40 s.
    expect((high - low) / 2).toBeGreaterThan(20_000);
    expect((high - low) / 2).toBeLessThan(29_000);
  });

  test("laps are centred on the mean of their run, those without a time left out", () => {
    const laps = [
      { ms: 90_000, run: "a" },
      { ms: 80_000, run: "b" },
      { run: "a" },
      { ms: 92_000, run: "a", remarks: [{ kind: "spin" }] as const },
      { ms: 94_000, run: "a", remarks: [{ kind: "traffic" }] as const },
    ];
    expect(centreRuns(laps)).toEqual({
      residuals: [[-2000, 0, 2000], [0]],
      means: [92_000, 80_000],
      timed: 4,
      mistakes: 2,
      all: 5,
    });
    expect(centreRuns([90_000, 92_000])).toMatchObject({ residuals: [[-1000, 1000]], timed: 2, mistakes: 0 });
  });

  test("fuel needs no reserve, and nothing below 0", () => {
    expect(fuelNeeded({ perLap: 2, laps: 0, reserve: 0 })).toBe(0);
    expect(() => fuelNeeded({ perLap: 2, laps: 1, reserve: -0.5 })).toThrow(
      "reserve is -0.5: 0 or more is needed",
    );
    expect(() => fuelNeeded({ perLap: 2, laps: Number.NaN, reserve: 0 })).toThrow(/^laps is NaN/);
  });

  test("equal laps still leave a range, and fuel is added up", () => {
    const { low, high } = raceOf({ laps: Array(10).fill(90_000) });
    expect(high).toBeGreaterThan(low);
    expect(fuelNeeded({ perLap: 2.4, laps: 20, reserve: 2 })).toBeCloseTo(50, 12);
    expect(() => fuelNeeded({ perLap: -1, laps: 20, reserve: 2 })).toThrow(/perLap/);
  });
});
