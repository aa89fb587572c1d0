import { describe, expect, test } from "vitest";
import { breakLeft, levelSeries, practiceOf } from "../../../../src/stats/level/levelSeries.ts";
import { decayOf, motionOf, reachOf } from "../../../../src/stats/level/motion.ts";
import { flat, sessionsOf } from "../../../support/levelSessions.ts";

const session = (lapsBefore: number, laps: number, medianMs: number) => ({ lapsBefore, laps, medianMs });
const three = [session(0, 20, 90_000), session(20, 10, 89_100), session(50, 30, 91_800)];

describe("sessions as the level model takes them, by hand", () => {
  test("are shares above the middle median, and practice in sessions of the mean length", () => {
    const series = levelSeries(three, []);
    expect(series).toMatchObject({ from: 0, count: 3, usual: 90_000, meanLaps: 20, hasBreaks: false });
    expect([...series.y]).toEqual([0, expect.closeTo(-0.01, 12), expect.closeTo(0.02, 12)]);
    // From middle to middle 15 and 40 laps; the first session comes after none.
    expect([...series.w]).toEqual([0.05, 0.75, 2]);
    expect([...series.fade]).toEqual([1, 2 ** -0.75, 0.25]);
    expect(series.fadeToEnd).toBeCloseTo(2 ** -0.75, 12);
    expect([...series.steps, ...series.onset, ...series.onsetSquares]).toEqual(new Array(9).fill(0));
    expect([series.stepsAhead, series.breaksAhead]).toEqual([0, 0]);
  });

  test("have their steps and breaks before them, each break fading over half of the session after it", () => {
    const series = levelSeries(three, [
      { kind: "step", afterSession: 2 },
      { kind: "step", afterSession: 3 },
      { kind: "step", afterSession: 2 },
      { kind: "break", afterSession: 0 },
      { kind: "break", afterSession: 2 },
      { kind: "break", afterSession: 2 },
      { kind: "break", afterSession: 3 },
    ]);
    expect([...series.steps]).toEqual([0, 0, 2]);
    expect([series.stepsAhead, series.breaksAhead, series.hasBreaks]).toEqual([1, 1, true]);
    expect([...series.onset]).toEqual([2 ** -0.5, 0, expect.closeTo(2 * 2 ** -0.75, 12)]);
    expect([...series.onsetSquares]).toEqual([expect.closeTo(0.5, 12), 0, expect.closeTo(2 * 2 ** -1.5, 12)]);
    expect(levelSeries(three, [{ kind: "break", afterSession: 3 }]).hasBreaks).toBe(true);
  });

  test("are the last 250, with the events between those", () => {
    const many = sessionsOf([...new Array<number>(3).fill(120_000), ...flat(250)]);
    const series = levelSeries(many, [
      { kind: "step", afterSession: 2 },
      { kind: "step", afterSession: 4 },
      { kind: "break", afterSession: 253 },
    ]);
    expect(series).toMatchObject({ from: 3, count: 250, meanLaps: 20, breaksAhead: 1 });
    expect(series.usual).toBeLessThan(91_000);
    expect([...series.steps].flatMap((some, place) => (some > 0 ? [place] : []))).toEqual([1]);
    expect(levelSeries(sessionsOf(flat(250)), []).from).toBe(0);
  });

  test("may have no laps at all", () => {
    const series = levelSeries([session(0, 0, 90_000), session(0, 0, 90_000)], []);
    expect(series.meanLaps).toBe(1);
    expect([...series.w]).toEqual([0.05, 0.05]);
  });

  test("are refused where a value is wrong, by its name", () => {
    const wrong = (fields: Partial<(typeof three)[0]>) => () =>
      levelSeries([...three, { ...session(80, 10, 90_000), ...fields }], []);
    expect(wrong({ laps: -1 })).toThrow("sessions[3].laps is -1: 0 or more is needed");
    expect(wrong({ lapsBefore: Number.NaN })).toThrow("sessions[3].lapsBefore is NaN");
    expect(wrong({ medianMs: 0 })).toThrow("sessions[3].medianMs is 0: a lap time is needed");
    expect(wrong({ medianMs: -5 })).toThrow("sessions[3].medianMs is -5: 0 or more is needed");
    expect(() => levelSeries([], [])).toThrow("sessions is empty: a level needs a session");
    for (const afterSession of [-1, 0.5, 4])
      expect(() => levelSeries(three, [{ kind: "step", afterSession }])).toThrow(
        `events[0].afterSession is ${afterSession}: a whole number from 0 to 3 is needed`,
      );
  });
});

describe("units of the level model, by hand", () => {
  test("what a break costs halves every 20 laps, and practice is a twentieth of a session at least", () => {
    expect([0, 20, 40].map(breakLeft)).toEqual([1, 0.5, 0.25]);
    expect([0, 0.5, 10, 40].map((laps) => practiceOf(laps, 20))).toEqual([0.05, 0.05, 0.5, 2]);
  });

  test("a trend of which half is left goes on by a half, then a quarter; one that stays by all of it", () => {
    expect([reachOf(0.5, 1), reachOf(0.5, 2), reachOf(1, 2.5)]).toEqual([0.5, 0.75, 2.5]);
    expect([decayOf(0.5, 2), decayOf(1, 7)]).toEqual([0.25, 1]);
    const { reach, decay } = motionOf(0.5, levelSeries(sessionsOf(flat(3)), []));
    expect([reach[1], decay[2]]).toEqual([0.5, 0.5]);
    expect(reach).toHaveLength(3);
  });
});
