import { describe, expect, it } from "vitest";
import { sessionReport, targetProgress } from "#stats";
import { aRun, aSession, choices, type Told } from "../someRows.ts";

const withSectors = (ms: number, first: number): Told => ({ ms, sectors: [first, ms - first] });

describe("session report", () => {
  const laps: Told[] = [
    withSectors(84_000, 30_000),
    withSectors(84_300, 30_300),
    withSectors(84_600, 30_600),
    withSectors(84_300, 30_300),
    withSectors(84_300, 30_300),
    [88_000, "off"],
    [83_000, "cut"],
    [undefined, "spin"],
    [86_000, "traffic"],
  ];
  const reported = () =>
    sessionReport({
      session: aSession(3),
      runs: [aRun(1, laps), aRun(2, [92_000, 92_100], { surface: "wet" })],
      preferences: choices,
      target: { ms: 83_900, from: "session" },
      pbBefore: { ms: 84_100, decimals: 3 },
    });

  it("measures the account against the target it names, and counts what stays out", () => {
    expect(reported().target?.from).toBe("session");
    expect(reported().account).toMatchObject({
      known: true,
      value: { pace: 100, repeatability: 300, mistakes: 617, cutLaps: 1, withoutTime: 1, laps: 7 },
    });
  });

  it("names the largest loss, and the sector only where it is one of pace or repeatability", () => {
    expect(reported().workOn).toEqual({ line: "mistakes", ms: 617, sector: undefined, isOddAside: false });
    const clean = sessionReport({
      session: aSession(3),
      runs: [aRun(1, laps.slice(0, 5))],
      preferences: choices,
      target: { ms: 84_000, from: "pb" },
    });
    expect(clean.workOn).toEqual({ line: "repeatability", ms: 300, sector: 0, isOddAside: false });
  });

  it("marks the steps of the personal-best line", () => {
    expect(reported().newBests.map((best) => best.ms)).toEqual([84_000]);
    expect(reported().best?.ms).toBe(84_000);
  });

  it("gives sectors, bound and reachable lap", () => {
    expect(reported().sectors).toMatchObject({ value: { best: 84_000, gap: 300, largest: 0 } });
    expect(reported().sumOfBestSectors).toMatchObject({ value: { ms: 84_000, laps: 5 } });
    expect(reported().reachableLap).toEqual({
      known: false,
      reason: { needs: 8, of: "pace lap with sectors", has: 5 },
    });
  });

  it("gives shares with the laps behind them, and three in a row", () => {
    expect(reported().cleanShare?.share).toBe(7 / 10);
    expect(reported().nearTheBest).toMatchObject({ within: 4, laps: 5 });
    expect(reported().threeInARow?.meanMs).toBe(84_300);
    expect(reported().chart.laps).toHaveLength(5);
  });

  it("without anything to measure against says so", () => {
    const bare = sessionReport({ session: aSession(3), runs: [], preferences: choices });
    expect(bare.account).toEqual({
      known: false,
      reason: { because: "nothing to measure a session against" },
    });
    expect(bare.workOn).toBeUndefined();
    expect(bare.cleanShare).toBeUndefined();
    expect(bare.chart.chart).toBeUndefined();
  });
});

describe("progress towards a target", () => {
  it("is the share of the way, unclamped", () => {
    expect(targetProgress(84_000, 84_250, 85_000)).toEqual({
      known: true,
      value: { progress: 0.75, left: 250 },
    });
    expect(targetProgress(84_000, 83_900, 85_000)).toMatchObject({ value: { progress: 1.1 } });
    expect(targetProgress(84_000, 85_500, 85_000)).toMatchObject({ value: { progress: -0.5 } });
  });

  it("goes up for shares as well", () => {
    expect(targetProgress(900, 800, 700)).toMatchObject({ value: { progress: 0.5, left: -100 } });
  });

  it("gives a reason where a figure is missing", () => {
    expect(targetProgress(84_000, undefined, 85_000).known).toBe(false);
    expect(targetProgress(84_000, 84_000, undefined).known).toBe(false);
    expect(targetProgress(84_000, 84_000, 84_000)).toEqual({
      known: false,
      reason: { because: "reached at the setting" },
    });
    expect(() => targetProgress(Number.NaN, 1, 2)).toThrow("target is NaN");
  });
});

describe("what a session says of its bests", () => {
  const of = (
    runs: Parameters<typeof sessionReport>[0]["runs"],
    pbBefore?: { ms: number; decimals?: number },
  ) =>
    sessionReport({
      session: aSession(3),
      runs,
      preferences: choices,
      pbBefore,
      target: { ms: 84_000, from: "pb" },
    });
  const five = [84_000, 84_100, 84_200, 84_300, 84_400];

  it("leaves out what the driver took back: three in a row, sectors and how near the best the laps were", () => {
    const takenBack: Told = { ms: 80_000, isNotBest: true, sectors: [28_000, 52_000] };
    const laps: Told[] = [...five.map((ms) => withSectors(ms, 30_000)), takenBack];
    const report = of([aRun(1, laps)]);
    expect(report.best?.ms).toBe(84_000);
    expect(report.threeInARow?.meanMs).toBe(84_100);
    expect(report.sumOfBestSectors).toMatchObject({ value: { ms: 84_000, laps: 5 } });
    expect(report.sectors).toMatchObject({ value: { best: 84_000, laps: 5 } });
    expect(report.nearTheBest).toMatchObject({ laps: 5 });
    expect(report.account).toMatchObject({ value: { notBestLaps: 1, laps: 5 } });
  });

  it("takes three in a row from one run, never over the end of one", () => {
    const runs = [aRun(1, [84_600, 84_600, 84_600, 84_000, 84_000]), aRun(2, [84_000, 84_900, 84_900])];
    expect(of(runs).threeInARow).toMatchObject({ meanMs: 84_200, run: 0, lap: 2 });
  });

  it("is a new best only where it surely beats the PB from before, known to its own decimals", () => {
    const bests = (pbBefore?: { ms: number; decimals?: number }) =>
      of([aRun(1, [84_150, 84_050])], pbBefore).newBests.map(({ ms }) => ms);
    expect(bests()).toEqual([84_150, 84_050]);
    expect(bests({ ms: 84_100 })).toEqual([84_050]);
    expect(bests({ ms: 84_000, decimals: 1 })).toEqual([]);
    expect(bests({ ms: 84_000 })).toEqual([]);
  });

  it("says what a lap confirmed as odd did to its account", () => {
    const report = of([aRun(1, [...five, { ms: 1_500_000, remarks: [{ kind: "off" }], isOdd: true }])]);
    expect(report.account).toMatchObject({ value: { odd: { parts: [{ line: "mistakes", laps: 1 }] } } });
    expect(of([aRun(1, [...five, [95_000, "off"]])]).account).toMatchObject({ value: { odd: undefined } });
  });

  it("draws its pace laps under the numbers their runs are called by", () => {
    const report = of([
      aRun(1, []),
      aRun(2, five.slice(0, 2)),
      aRun(3, [85_000], { guest: "Ana" }),
      aRun(4, five),
    ]);
    expect(report.chart.laps.map(({ run }) => run)).toEqual([1, 1, 3, 3, 3, 3, 3]);
  });
});
