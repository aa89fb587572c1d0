import { describe, expect, it } from "vitest";
import type { Run } from "#domain";
import { sessionDigest } from "#stats";
import { sessionLaps } from "../../../../src/stats/laps/sessionLaps.ts";
import { exactChains } from "../../../../src/stats/pace/paceFigures.ts";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const paceOf = (...runs: readonly Run[]) => sessionDigest(aSession(0), runs, choices).pace;
const ofLaps = (...laps: readonly Told[]) => paceOf(aRun(1, laps));
const five = [84_000, 84_100, 84_200, 84_300, 84_900];

describe("the figures of pace laps", () => {
  it("by hand for five laps", () => {
    expect(ofLaps(...five)).toMatchObject({
      laps: 5,
      exactLaps: 5,
      best: 84_000,
      mean: 84_300,
      median: 84_200,
      medianDecimals: 3,
      lowerQuartile: 84_100,
      upperQuartile: 84_300,
      medianForTrend: 84_200,
      bestOfTen: undefined,
    });
    // Distances from the mean 300 200 100 0 600, squares 50 · 10⁴, over four; from the median 200 100 0 100 700.
    expect(ofLaps(...five).standardDeviation).toBeCloseTo(Math.sqrt(500_000 / 4), 9);
    expect(ofLaps(...five).medianAbsoluteDeviation).toBeCloseTo(148.26, 9);
    expect(ofLaps(...five).consistency.known).toBe(true);
  });

  it("of four laps have no quartiles, no spread and no figure for the trend, but a best, a mean and a median", () => {
    expect(ofLaps(...five.slice(0, 4))).toMatchObject({
      laps: 4,
      best: 84_000,
      mean: 84_150,
      median: 84_150,
      lowerQuartile: undefined,
      upperQuartile: undefined,
      standardDeviation: undefined,
      medianAbsoluteDeviation: undefined,
      medianForTrend: undefined,
      consistency: { known: false, reason: { needs: 5, of: "pace lap", has: 4 } },
    });
    expect(ofLaps()).toMatchObject({ laps: 0, exactLaps: 0, best: undefined, mean: undefined });
  });

  it("leave the first three laps out of the figure for the trend from ten on", () => {
    const nine = [90_000, 90_000, 90_000, 84_000, 84_000, 84_000, 84_000, 84_000, 84_000].map(
      (ms, lap) => ms + lap,
    );
    expect(ofLaps(...nine).medianForTrend).toBe(ofLaps(...nine).median);
    expect(ofLaps(...nine, 84_009)).toMatchObject({ medianForTrend: 84_006, median: 84_007.5 });
    expect(ofLaps(...nine, 84_009).bestOfTen).toBeCloseTo(84_003, 9);
  });

  it("know the best to the decimals its lap was typed with, of equally fast ones the most exact", () => {
    const tenths = { ms: 83_900, decimals: 1 };
    expect(ofLaps(tenths, ...five)).toMatchObject({ best: 83_900, bestDecimals: 1, medianDecimals: 3 });
    expect(ofLaps(tenths, ...five, 83_900)).toMatchObject({ best: 83_900, bestDecimals: 3 });
    expect(ofLaps(...five, { ms: 84_900, decimals: 0 })).toMatchObject({ best: 84_000, bestDecimals: 3 });
    expect(ofLaps({ ...tenths, isNotBest: true }, ...five)).toMatchObject({ best: 84_000, bestDecimals: 3 });
    expect(ofLaps()).toMatchObject({ best: undefined, bestDecimals: 3 });
  });

  it("take a lap that is not the driver's best into all but the best", () => {
    const { best, laps, median, mean } = ofLaps({ ms: 80_000, isNotBest: true }, ...five);
    expect({ best, laps, median, mean }).toEqual({
      best: 84_000,
      laps: 6,
      median: 84_150,
      mean: 83_583 + 1 / 3,
    });
  });

  it("take laps in tenths into the usual lap and into no spread, and say so where too few are left", () => {
    const tenths = { ms: 84_500, decimals: 1 };
    expect(ofLaps(...five.slice(0, 4), tenths, tenths)).toMatchObject({
      laps: 6,
      exactLaps: 4,
      standardDeviation: undefined,
      consistency: { known: false, reason: { needs: 5, of: "exact pace lap", has: 4, rough: 2 } },
    });
    expect(ofLaps(...five, tenths)).toMatchObject({ laps: 6, exactLaps: 5, consistency: { known: true } });
  });

  it("leave out laps with a mistake, laps of a warm-up and laps without a time", () => {
    const warmUp = aRun(1, [83_000, 83_000], { kind: "warm-up" });
    expect(paceOf(warmUp, aRun(2, [...five, [99_000, "off"], [undefined, "spin"]]))).toMatchObject({
      laps: 5,
      best: 84_000,
    });
  });
});

describe("chains of laps one after another", () => {
  const chainsOf = (...runs: readonly Run[]) => exactChains(sessionLaps(aSession(0), runs, choices).laps);

  it("end with the run and at a lap without a time, and go on over a lap that does not count", () => {
    expect(
      chainsOf(
        aRun(1, [84_000, [86_000, "off"], 84_100, [undefined, "spin"], 84_200]),
        aRun(2, [84_300, { ms: 84_400, decimals: 1 }, 84_500]),
        aRun(3, [[undefined, "off"]]),
      ),
    ).toEqual([[84_000, 84_100], [84_200], [84_300, 84_500]]);
  });
});
