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
