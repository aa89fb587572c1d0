import { describe, expect, test } from "vitest";
import { mean, standardDeviation } from "#stats";
import {
  cellsByShare,
  drawEnd,
  futureLevels,
  sessionsUntilStop,
} from "../../../../src/stats/level/futureLevels.ts";
import { stream } from "../../../../src/stats/random/stream.ts";
import { aPosterior, type ToldCell } from "./aPosterior.ts";

describe("what is to come, by hand", () => {
  const draws = 4000;
  /** Mean and deviation of what is drawn, as parts of the lap above the usual 1:30. */
  const partsOf = (values: Float64Array | undefined) => {
    const parts = Array.from(values ?? [], (ms) => ms / 90_000 - 1);
    return { mean: mean(parts) ?? Number.NaN, deviation: standardDeviation(parts) ?? Number.NaN };
  };
  const drawnOf = (
    cell: ToldCell,
    series: Parameters<typeof aPosterior>[1] = {},
    future = [{ laps: 20 }, { laps: 10 }, { laps: 40 }],
    stopping?: number,
  ) => {
    const { levels, medians } = futureLevels(aPosterior([cell], series, stopping), future, 3, draws);
    return { levels: levels.map(partsOf), medians: medians.map(partsOf) };
  };
  /** Four standard errors of a mean, and of a deviation about as wide. */
  const expectNear = (found: ReturnType<typeof partsOf> | undefined, wanted: number, variance: number) => {
    const deviation = Math.sqrt(variance);
    expect(Math.abs((found?.mean ?? Number.NaN) - wanted)).toBeLessThan(
      (4 * deviation) / Math.sqrt(draws) + 1e-12,
    );
    expect(Math.abs((found?.deviation ?? Number.NaN) - deviation)).toBeLessThan(0.05 * deviation + 1e-12);
  };

  test("a still level moves by its own noise alone, and each median scatters about it", () => {
    const { levels, medians } = drawnOf({ sigma: 0.002, noise: 0.25, end: { l: -0.01, ll: 1e-6, b: 0.1 } });
    // A quarter of σ² a session of practice: one, a half and two of them.
    [1e-6 + 1e-6, 1e-6 + 1.5e-6, 1e-6 + 3.5e-6].forEach((variance, k) => {
      expectNear(levels[k], -0.01, variance);
      expectNear(medians[k], -0.01, variance + 4e-6);
    });
    expectNear(drawnOf({ sigma: 0.002, end: { ll: 1e-6 } }).levels[2], 0, 1e-6);
  });

  test("a trend carries it on, ever less, and as far as level and trend go together", () => {
    const end = { l: 0.01, ll: 4e-6, b: -0.002, bb: 1e-6, lb: -1e-6 };
    const { levels } = drawnOf({ kind: "moving", phi: 0.5, end });
    // Of the trend 0.5 in the first session, then what half a session and two are worth of the half that is left.
    const halfSession = (0.5 * (1 - Math.SQRT1_2)) / 0.5;
    const left = 0.5 * Math.SQRT1_2;
    [0.5, 0.5 + 0.5 * halfSession, 0.5 + 0.5 * halfSession + left * 0.75].forEach((reach, k) => {
      expectNear(levels[k], 0.01 - 0.002 * reach, 4e-6 - 2e-6 * reach + 1e-6 * reach ** 2);
    });
    expectNear(drawnOf({ kind: "started", end }).levels[0], 0.008, 4e-6 - 2e-6 + 1e-6);
    expectNear(drawnOf({ kind: "stopped", end }).levels[2], 0.01, 4e-6);
  });

  test("a trend stops with the same chance each session", () => {
    const future = Array.from({ length: 3 }, () => ({ laps: 20 }));
    const { levels } = drawnOf({ kind: "moving", end: { b: -0.01 } }, {}, future, 0.2);
    const means = [0.8, 0.8 + 0.64, 0.8 + 0.64 + 0.512];
    expect(levels.map((level) => level.mean / -0.01)).toEqual(
      means.map((sessions) => expect.closeTo(sessions, 1)),
    );
  });

  test("a step just before the first of them is four spreads either way, for good", () => {
    const { levels } = drawnOf({ sigma: 0.002 }, { stepsAhead: 1 });
    for (const level of levels) expectNear(level, 0, 16 * 4e-6);
    expectNear(drawnOf({ sigma: 0.002 }, { stepsAhead: 2 }).levels[0], 0, 32 * 4e-6);
  });

  test("a break just before the first of them costs half a percent, which halves every twenty laps", () => {
    const { levels, medians } = drawnOf({ sigma: 0.002 }, { breaksAhead: 1 });
    // To the middle of the sessions 10, 25 and 50 laps.
    [10, 25, 50].forEach((laps, k) => {
      const left = 2 ** (-laps / 20);
      expectNear(levels[k], 0, 0);
      expectNear(medians[k], 0.005 * left, 4e-6 + 1.5625 * 4e-6 * left ** 2);
    });
  });

  test("what an earlier break still costs fades from the middle of the last session on", () => {
    const end = { o: 0.01, oo: 1e-6, ll: 1e-6, lo: -5e-7 };
    const { medians } = drawnOf({ end }, { hasBreaks: true, fadeToEnd: 0.5 });
    [10, 25, 50].forEach((laps, k) => {
      const left = 0.5 * 2 ** (-laps / 20);
      expectNear(medians[k], 0.01 * left, 1e-6 - 1e-6 * left + 1e-6 * left ** 2);
    });
    expectNear(drawnOf({ end }).medians[0], 0, 1e-6);
  });

  test("draws of the end have the spread of level, trend and break, and go together as these do", () => {
    const end = { l: 1, b: 2, o: 3, ll: 4, lb: -1, bb: 2, lo: 1, bo: -1, oo: 3 };
    const posterior = aPosterior([{ end }], { hasBreaks: true });
    const found = Array.from({ length: draws }, (_, draw) => drawEnd(posterior, 0, stream(3, draw)));
    const part = (index: 0 | 1 | 2) => found.map((one) => one[index] - (index + 1));
    const product = (a: 0 | 1 | 2, b: 0 | 1 | 2) => {
      const other = part(b);
      return mean(part(a).map((value, i) => value * (other[i] ?? 0)));
    };
    const wanted: [0 | 1 | 2, 0 | 1 | 2, number][] = [
      [0, 0, end.ll],
      [0, 1, end.lb],
      [1, 1, end.bb],
      [0, 2, end.lo],
      [1, 2, end.bo],
      [2, 2, end.oo],
    ];
    for (const [a, b, covariance] of wanted)
      expect(Math.abs((product(a, b) ?? 9) - covariance), `${a} with ${b}`).toBeLessThan(0.25);
    for (const index of [0, 1, 2] as const) expect(Math.abs(mean(part(index)) ?? 9)).toBeLessThan(0.13);
    // What is known for sure is not drawn.
    expect(drawEnd(aPosterior([{ end: { l: 1, b: 2, o: 3 } }]), 0, stream(3, 1))).toEqual([1, 2, 0]);
    expect(
      drawEnd(aPosterior([{ end: { l: 1, b: 2, o: 3 } }], { hasBreaks: true }), 0, stream(3, 1)),
    ).toEqual([1, 2, 3]);
  });

  test("cells are drawn by their weight, as evenly as can be", () => {
    const cells = [0.25, 0.75].map((weight, i): ToldCell => ({ weight, end: { l: i } }));
    const { levels } = futureLevels(aPosterior(cells), [{ laps: 20 }], 3, 400);
    const second = levels[0]?.filter((ms) => ms === 180_000).length ?? 0;
    expect(Math.abs(second - 300)).toBeLessThanOrEqual(1);
    const cellAt = cellsByShare(Float64Array.of(0.25, 0.5, 0.25));
    expect([0, 0.25, 0.26, 0.75, 0.76, 1].map(cellAt)).toEqual([0, 0, 1, 1, 2, 2]);
  });

  test("of two thousand draws where nothing else is said, none where nothing is planned", () => {
    expect(futureLevels(aPosterior([{}]), [{ laps: 20 }], 3).levels[0]).toHaveLength(2000);
    expect(futureLevels(aPosterior([{}]), [], 3)).toEqual({ levels: [], medians: [] });
  });

  test("a driver goes on for four sessions in the mean where one in five stops", () => {
    const sessions = Array.from({ length: draws }, (_, draw) => sessionsUntilStop(stream(4, draw), 0.2));
    expect(mean(sessions)).toBeCloseTo(4, 0);
    expect(Math.min(...sessions)).toBe(0);
    expect(sessions.filter((some) => some === 0).length / draws).toBeCloseTo(0.2, 1);
    expect(sessions.every(Number.isInteger)).toBe(true);
  });
});
