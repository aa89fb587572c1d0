import { describe, expect, test } from "vitest";
import { kinds } from "../../../../src/stats/level/levelCells.ts";
import { endOf, levelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import { type LevelSettings, levelSettings } from "../../../../src/stats/level/levelSettings.ts";
import { smoothLevels } from "../../../../src/stats/level/smoothLevels.ts";
import type { SessionEvent } from "../../../../src/stats/weeks/sessionEvents.ts";
import { atOnce, type Place } from "./atOnce.ts";

/** A small grid of 148 cells for seven sessions. */
const settings: LevelSettings = {
  ...levelSettings,
  sigmas: [0.002, 0.004],
  qls: [0, 0.3],
  qlw: [3, 2],
  phis: [0.7, 1],
  phiw: [1, 3],
  trends: [
    [-0.002, 0.001, 1],
    [0.001, 0.002, 2],
  ],
  stopping: 0,
  crowding: 1,
};
const laps = [20, 10, 24, 16, 30, 12, 28];
const medians = [90_000, 89_700, 89_900, 89_400, 89_200, 89_500, 89_000];
const sessions = medians.map((medianMs, i) => ({
  medianMs,
  laps: laps[i] ?? 0,
  lapsBefore: laps.slice(0, i).reduce((sum, some) => sum + some, 0) + (i >= 4 ? 3 : 0),
}));
const events: SessionEvent[] = [
  { kind: "break", afterSession: 0 },
  { kind: "break", afterSession: 2 },
  { kind: "step", afterSession: 3 },
  { kind: "break", afterSession: 5 },
  { kind: "break", afterSession: 5 },
];

/** The sessions by hand: the middle median is 89,500 ms, the mean session has 20 laps. */
const placesOf = (all: readonly SessionEvent[]): Place[] =>
  sessions.map(({ medianMs, laps: own, lapsBefore }, i) => {
    const before = sessions[i - 1];
    const apart = before === undefined ? 0 : lapsBefore + own / 2 - before.lapsBefore - before.laps / 2;
    const of = (kind: SessionEvent["kind"]) =>
      all.filter((event) => event.kind === kind && event.afterSession === i).length;
    return {
      y: medianMs / 89_500 - 1,
      w: apart / 20,
      apart,
      half: own / 2,
      steps: of("step"),
      breaks: of("break"),
    };
  });

const movesOf = (kind: number, since: number): [number, number] => {
  if (kind === kinds.moving) return [0, 7];
  if (kind === kinds.stopped) return [0, since];
  return kind === kinds.started ? [since, 7] : [7, 7];
};

describe.each([
  { name: "without events", all: [] },
  { name: "with a step", all: [{ kind: "step", afterSession: 2 }] as SessionEvent[] },
  { name: "with breaks and a step", all: events },
])("the filter $name", ({ all }) => {
  const made = () => {
    const posterior = levelPosterior({ sessions, events: all, settings });
    const places = placesOf(all);
    const cells = Array.from(posterior.weights, (weight, cell) => {
      const kind = posterior.kinds[cell] ?? 0;
      const since = posterior.since[cell] ?? 0;
      const [spread, noiseAt] = [posterior.spreads[cell] ?? 0, posterior.noises[cell] ?? 0];
      const [motion, trendAt] = [posterior.motions[cell] ?? 0, posterior.trends[cell] ?? 0];
      const [mean = 0, deviation = 0, trendWeight = 0] = settings.trends[trendAt] ?? [];
      const sigma = settings.sigmas[spread] ?? 0;
      const found = atOnce(places, {
        variance: sigma ** 2,
        noise: (settings.qls[noiseAt] ?? 0) ** 2,
        phi: settings.phis[motion] ?? 1,
        trend: [mean, deviation],
        moves: movesOf(kind, since),
      });
      // Still 0.15, moving 0.65, and 0.12 and 0.08 for two phases, shared by four places.
      const ofKind = [0.15, 0.65, 0.12 / 4, 0.08 / 4][kind] ?? 0;
      const ofTrend = kind === kinds.still ? 1 : (((settings.phiw[motion] ?? 0) / 4) * trendWeight) / 3;
      const prior =
        sigma ** -3 * Math.exp((-3 * 0.003 ** 2) / (2 * sigma ** 2)) * (settings.qlw[noiseAt] ?? 0);
      return { cell, weight, found, worth: prior * ofKind * ofTrend * Math.exp(found.logEvidence) };
    });
    return { posterior, cells };
  };

  test("weighs the cells by prior and evidence, and leaves out hardly any", () => {
    const { cells, posterior } = made();
    const total = cells.reduce((sum, { worth }) => sum + worth, 0);
    for (const { weight, worth } of cells) expect(weight / (worth / total)).toBeCloseTo(1, 9);
    expect(posterior.weights.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1, 12);
    expect(cells.length).toBeGreaterThan(60);
    expect(new Set(posterior.kinds)).toEqual(new Set([0, 1, 2, 3]));
    expect(new Set(posterior.since)).toEqual(new Set([0, 2, 3, 4, 5]));
  });

  test("ends in the level, trend and break of all medians taken at once", () => {
    const { cells, posterior } = made();
    const off = new Map<string, number>();
    for (const { cell, found } of cells) {
      const { levels, slope, loss, meanGiven, given } = found;
      const last = levels.at(-1) ?? slope;
      for (const [part, value] of [
        ["l", meanGiven(last)],
        ["b", meanGiven(slope)],
        ["o", meanGiven(loss)],
        ["ll", given(last, last)],
        ["lb", given(last, slope)],
        ["bb", given(slope, slope)],
        ["lo", given(last, loss)],
        ["bo", given(slope, loss)],
        ["oo", given(loss, loss)],
      ] as const)
        off.set(part, Math.max(off.get(part) ?? 0, Math.abs(endOf(posterior, cell, part) - value)));
    }
    for (const [part, most] of off) expect(most, part).toBeLessThan(part.length === 2 ? 1e-14 : 1e-11);
  });

  test("smooths to the levels of all sessions in the light of all", () => {
    const { cells, posterior } = made();
    const { means, variances, withLast } = smoothLevels(posterior);
    let [mean, variance, covariance] = [0, 0, 0];
    for (const { cell, found } of cells) {
      const { levels, meanGiven, given } = found;
      const last = levels.at(-1) ?? new Map();
      levels.forEach((level, session) => {
        const at = cells.length * session + cell;
        mean = Math.max(mean, Math.abs((means[at] ?? 9) - meanGiven(level)));
        variance = Math.max(variance, Math.abs((variances[at] ?? 9) - given(level, level)));
        covariance = Math.max(covariance, Math.abs((withLast[at] ?? 9) - given(level, last)));
      });
    }
    expect(mean).toBeLessThan(1e-11);
    expect(variance).toBeLessThan(1e-14);
    expect(covariance).toBeLessThan(1e-14);
  });

  test("finds the size of the first step, where there is one", () => {
    const { cells, posterior } = made();
    const before = all.find(({ kind }) => kind === "step")?.afterSession;
    if (before === undefined) {
      const { stepMeans, stepVariances } = smoothLevels(posterior);
      expect([stepMeans.length, stepVariances.length]).toEqual([0, 0]);
      return;
    }
    const { stepMeans, stepVariances } = smoothLevels(posterior, { before, variance: 16 });
    for (const { cell, found } of cells) {
      const { step, meanGiven, given } = found;
      if (step === undefined) throw new Error("a step was marked");
      expect(stepMeans[cell]).toBeCloseTo(meanGiven(step), 10);
      expect((stepVariances[cell] ?? 0) * 1000).toBeCloseTo(given(step, step) * 1000, 10);
    }
  });
});

test("the evidence of many sessions with steps between them is summed up in logarithms, beyond what a number holds", () => {
  const count = 60;
  const many = Array.from({ length: count }, (_, i) => ({
    medianMs: 90_000 + 9000 * Math.sin(7 * i),
    laps: 20,
    lapsBefore: 20 * i,
  }));
  const between = many.flatMap((_, i) =>
    Array.from({ length: i === 0 ? 0 : 255 }, (): SessionEvent => ({ kind: "step", afterSession: i })),
  );
  const still = { ...settings, sigmas: [0.001, 0.0011], qls: [0], qlw: [1], pMove: 0, pStop: 0, pStart: 0 };
  const { weights, series } = levelPosterior({ sessions: many, events: between, settings: still });
  const worths = still.sigmas.map((sigma) => {
    const places = Array.from(series.y, (y, i) => ({
      y,
      w: 1,
      steps: i === 0 ? 0 : 255,
      breaks: 0,
      half: 10,
      apart: 20,
    }));
    const cell = { variance: sigma ** 2, noise: 0, phi: 1, trend: [0, 0], moves: [count, count] } as const;
    return -3 * Math.log(sigma) - (3 * 0.003 ** 2) / (2 * sigma ** 2) + atOnce(places, cell).logEvidence;
  });
  expect(weights).toHaveLength(2);
  const [first = 0, second = 0] = worths;
  expect(Math.log((weights[0] ?? 0) / (weights[1] ?? 1))).toBeCloseTo(first - second, 6);
});
