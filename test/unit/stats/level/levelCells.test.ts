import { describe, expect, test } from "vitest";
import { levelGrid } from "../../../../src/stats/level/levelCells.ts";
import { levelSeries } from "../../../../src/stats/level/levelSeries.ts";
import { levelSettings } from "../../../../src/stats/level/levelSettings.ts";
import { flat, sessionsOf } from "../../../support/levelSessions.ts";

const gridOf = (count: number) => levelGrid(levelSeries(sessionsOf(flat(count)), []), levelSettings);
const weigh = (logs: readonly number[]) => logs.reduce((sum, log) => sum + Math.exp(log), 0);

describe("what a driver may be doing", () => {
  test.each([1, 2, 3, 4, 5, 11, 12, 13, 20, 40, 250])("adds up to one after %i sessions", (count) => {
    const { stillLog, movingLog, stoppedLogs, startedLogs, spreads, noises, motions, trends } = gridOf(count);
    expect(weigh([stillLog, movingLog, ...stoppedLogs, ...startedLogs])).toBeCloseTo(1, 12);
    expect(weigh(spreads.map(({ log }) => log))).toBeCloseTo(1, 12);
    expect(weigh(noises.map(({ log }) => log))).toBeCloseTo(1, 12);
    expect(weigh(motions.map(({ log }) => log))).toBeCloseTo(1, 12);
    expect(weigh(trends.map(({ log }) => log))).toBeCloseTo(1, 12);
  });

  test.each([4, 5, 11, 12, 13, 20, 40, 250])(
    "both phases of %i sessions have two, at places that differ",
    (count) => {
      const { places } = gridOf(count);
      expect(places[0]).toBe(2);
      expect(places.at(-1)).toBe(count - 2);
      expect(new Set(places).size).toBe(places.length);
      expect(places.toSorted((a, b) => a - b)).toEqual(places);
    },
  );

  test("the places crowd towards the last session, where there are more than eight", () => {
    const { places } = gridOf(60);
    const gaps = places.slice(1).map((place, i) => place - (places[i] ?? 0));
    expect(gaps[0]).toBeGreaterThan(3 * (gaps.at(-1) ?? 0));
    expect(gaps.at(-1)).toBeLessThanOrEqual(2);
  });

  test("the longer the history, the fewer drivers have moved all along", () => {
    const moving = [5, 20, 40, 80].map((count) => gridOf(count).movingLog);
    expect(moving).toEqual(moving.toSorted((a, b) => b - a));
    expect(Math.exp(moving[0] ?? 0) / Math.exp(moving[2] ?? 0)).toBeGreaterThan(2);
  });
});
