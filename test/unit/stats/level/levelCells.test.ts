import { describe, expect, test } from "vitest";
import { normalCdf } from "#numbers";
import { levelGrid } from "../../../../src/stats/level/levelCells.ts";
import { levelSeries } from "../../../../src/stats/level/levelSeries.ts";
import { type LevelSettings, levelSettings } from "../../../../src/stats/level/levelSettings.ts";
import { flat, sessionsOf } from "../../../support/levelSessions.ts";

const gridOf = (count: number) => levelGrid(levelSeries(sessionsOf(flat(count)), []), levelSettings);
const gridBy = (count: number, more: Partial<LevelSettings>) =>
  levelGrid(levelSeries(sessionsOf(flat(count)), []), { ...levelSettings, ...more });
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

  test("by hand: of four sessions one place for a second phase, and a driver who has stopped once in forty sessions", () => {
    const { places, stillLog, movingLog, stoppedLogs, startedLogs, stopping } = gridOf(4);
    expect(places).toEqual([2]);
    expect(stopping).toBe(0.025);
    const weights = [stillLog, movingLog, ...stoppedLogs, ...startedLogs].map(Math.exp);
    expect(weights).toEqual(
      [0.15, 0.65 * 0.975, 0.12 + 0.65 * 0.025, 0.08].map((one) => expect.closeTo(one, 12)),
    );
  });

  test("by hand: of three sessions no place, and the two kinds without one share all", () => {
    const { places, stillLog, movingLog, stoppedLogs, startedLogs } = gridOf(3);
    expect([places, stoppedLogs, startedLogs]).toEqual([[], [], []]);
    expect([stillLog, movingLog].map(Math.exp)).toEqual([
      expect.closeTo(0.1875, 12),
      expect.closeTo(0.8125, 12),
    ]);
  });

  test("by hand: evenly spaced where they do not crowd, each with as much weight as sessions around it", () => {
    const even = gridBy(20, { crowding: 1, stopping: 0 });
    // Seventeen places, of which eight are taken: 2 + 16·i/7.
    expect(even.places).toEqual([2, 4, 7, 9, 11, 13, 16, 18]);
    expect(even.stoppedLogs.map(Math.exp)).toEqual(new Array(8).fill(expect.closeTo(0.12 / 8, 12)));
    expect(even.startedLogs.map(Math.exp)).toEqual(new Array(8).fill(expect.closeTo(0.08 / 8, 12)));
    expect(Math.exp(even.movingLog)).toBeCloseTo(0.65, 12);
  });

  test("by hand: crowded by a power that lets the last two be neighbours, or by the square", () => {
    // ln 16/ln 7 = 1.425: 2 + 16·(1 − (1 − i/7)^1.425).
    expect(gridOf(20).places).toEqual([2, 5, 8, 11, 13, 15, 17, 18]);
    expect(gridOf(80).places).toEqual([2, 22, 39, 53, 64, 72, 76, 78]);
    const { startedLogs } = gridOf(80);
    // By squares: of the first place 1 − (7/8)², of the last (1/8)² of all.
    expect(Math.exp(startedLogs[0] ?? 0)).toBeCloseTo(0.08 * (15 / 64), 12);
    expect(Math.exp(startedLogs[7] ?? 0)).toBeCloseTo(0.08 / 64, 12);
  });

  test("by hand: before any lap is known, seven in ten of who moves are taken to get faster", () => {
    // By tables of the normal distribution: 0.841, 0.933, 0.952, 0.238, 0.067 and 0.933 of the six kinds of trend lie
    // below 0; weighed by 0.8, 1.2, 1.3, 0.9, 0.6 and 0.4 that makes 0.703.
    const { trends } = gridOf(4);
    const faster = trends.map(
      ({ mean, variance, log }) => Math.exp(log) * normalCdf(-mean / Math.sqrt(variance)),
    );
    expect(faster.reduce((sum, share) => sum + share, 0)).toBeCloseTo(0.703, 3);
  });

  test("by hand: the priors of spread, noise, trend and what is left of it", () => {
    const { spreads, noises, motions, trends } = gridBy(4, {
      sigmas: [0.001, 0.003],
      qls: [0, 0.5],
      qlw: [3, 1],
      phis: [0.5, 1],
      phiw: [1, 4],
      trends: [
        [-0.002, 0.001, 1],
        [0.001, 0.0005, 3],
      ],
    });
    // σ⁻³·exp(−3·0.3²/2σ²), σ in percent: 1000·e^(−13.5) against 37.04·e^(−1.5).
    const [first, second] = [1000 * Math.exp(-13.5), (1000 / 27) * Math.exp(-1.5)];
    expect(spreads).toEqual([
      { sigma: 0.001, variance: 1e-6, log: expect.closeTo(Math.log(first / (first + second)), 9) },
      { sigma: 0.003, variance: 9e-6, log: expect.closeTo(Math.log(second / (first + second)), 9) },
    ]);
    expect(noises.map(({ squared, log }) => [squared, Math.exp(log)])).toEqual([
      [0, 0.75],
      [0.25, 0.25],
    ]);
    expect(motions.map(({ phi, log }) => [phi, Math.exp(log)])).toEqual([
      [0.5, expect.closeTo(0.2, 12)],
      [1, expect.closeTo(0.8, 12)],
    ]);
    expect(trends.map((trend) => [trend.mean, trend.variance, Math.exp(trend.log)])).toEqual([
      [-0.002, 1e-6, 0.25],
      [0.001, 2.5e-7, 0.75],
    ]);
  });
});
