import { describe, expect, it } from "vitest";
import { individualsChart, modifiedZScores, pointedAtLaps, runTrend } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";

const steady = [84_000, 84_100, 84_050, 84_020, 84_080, 84_030, 84_060, 84_010];

describe("modified z-scores", () => {
  it("of one to three, by hand: 0.6745 either side of the median", () => {
    expect(modifiedZScores([1, 2, 3])).toEqual([-0.6745, 0, 0.6745]);
  });

  it("where most laps are equal, the mean distance stands in and nothing becomes infinite", () => {
    const scores = modifiedZScores([...new Array<number>(9).fill(84_000), 84_100]);
    expect(scores.slice(0, 9)).toEqual(new Array(9).fill(0));
    expect(scores[9]).toBeCloseTo(100 / (1.2533141373155 * 10), 9);
  });
});

describe("individuals chart", () => {
  it("points at the eighth lap in a row on one side, and a lap on the centre ends the row", () => {
    const chart = individualsChart([...new Array<number>(9).fill(1), ...new Array<number>(9).fill(3)]);
    expect(chart?.sameSide).toEqual([7, 8, 16, 17]);
    const broken = individualsChart([1, 1, 1, 1, 2, 1, 1, 1, 1, 3, 3, 3, 3, 2, 3, 3, 3, 3]);
    expect(broken?.sameSide).toEqual([]);
  });

  it("of equal laps points at none", () => {
    expect(individualsChart(new Array(10_000).fill(84_123.4))).toMatchObject({
      centre: 84_123.4,
      sigma: 0,
      outside: [],
      sameSide: [],
    });
  });
});

describe("laps worth a second look", () => {
  it("are none in a steady run", () => {
    expect(pointedAtLaps(steady)).toEqual([]);
  });

  it("are a lap far out, whose driver decides what it means", () => {
    expect(pointedAtLaps([...steady, 90_000])).toEqual([
      { index: 8, reasons: ["far out", "outside the limits"] },
    ]);
  });

  it("are the laps after the level has moved", () => {
    const moved = [...steady, ...steady.map((ms) => ms + 200)];
    expect(pointedAtLaps(moved).map(({ reasons }) => reasons)).toContainEqual(["eight in a row on one side"]);
  });

  it("are never named under five laps", () => {
    expect(pointedAtLaps([84_000, 84_001, 99_000, 84_002])).toEqual([]);
  });
});

describe("trend inside a run", () => {
  const laps = (slope: number, count: number) =>
    Array.from({ length: count }, (_, index) => ({
      number: index + 1,
      ms: 84_000 + slope * index + 30 * normalAt(2, index),
    }));

  it("finds 25 ms a lap lost to tyres", () => {
    const trend = runTrend(laps(25, 20), 0.9);
    expect(trend.known && trend.value.low < 25 && 25 < trend.value.high && trend.value.low > 0).toBe(true);
  });

  it("goes by the number of the lap, so gaps in the run do not matter", () => {
    const exact = [1, 2, 5, 9, 10, 12].map((number) => ({ number, ms: 84_000 + 20 * number }));
    expect(runTrend(exact, 0.9)).toEqual({
      known: true,
      value: { msPerLap: 20, low: 20, high: 20, laps: 6 },
    });
  });

  it("needs six laps", () => {
    expect(runTrend(laps(0, 5), 0.9)).toEqual({ known: false, reason: { needs: 6, of: "pace lap", has: 5 } });
    expect(runTrend([], 0.9)).toEqual({ known: false, reason: { needs: 6, of: "pace lap", has: 0 } });
  });
});
