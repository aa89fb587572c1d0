import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type PracticeQuestion, practiceCurve } from "#stats";

/** Sessions of 20 laps with these medians, the best 1 % under each. */
const sessionsOf = (medians: readonly number[]) =>
  medians.map((medianMs, i) => ({ lapsBefore: 20 * i, laps: 20, medianMs, bestMs: 0.99 * medianMs }));
const ahead = (count: number) => Array.from({ length: count }, () => ({ laps: 20 }));
const improving = sessionsOf([86_800, 85_900, 85_700, 85_200, 84_900, 84_800]);
const curveOf = (question: Partial<PracticeQuestion>) => {
  const figure = practiceCurve({ history: improving, future: ahead(6), seed: 1, draws: 800, ...question });
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};

describe("the practice curve", () => {
  test("needs two sessions, and says with fewer than four that it is mostly assumption", () => {
    for (const [count, reason] of [
      [0, { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 0 }],
      [1, { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 }],
    ] as const) {
      expect(practiceCurve({ history: improving.slice(0, count), seed: 1 })).toEqual({
        known: false,
        reason,
      });
    }
    expect(curveOf({ history: improving.slice(0, 2) }).isMostlyAssumption).toBe(true);
    expect(curveOf({ history: improving.slice(0, 4) }).isMostlyAssumption).toBe(false);
  });

  test("the same seed gives the same answer, another one a slightly different one", () => {
    expect(curveOf({})).toEqual(curveOf({}));
    expect(curveOf({ seed: 2 }).floor.mid).not.toBe(curveOf({}).floor.mid);
  });

  test("a session planned at the end changes nothing before it", () => {
    const short = curveOf({ future: ahead(3) });
    expect(curveOf({ future: ahead(30) }).bands.slice(0, 3)).toEqual(short.bands);
  });

  test("bands lie inside each other, widen, and the line is given for each past session", () => {
    const { bands, line } = curveOf({});
    for (const { low, lowHalf, mid, highHalf, high } of [...bands, ...line]) {
      expect([low, lowHalf, mid, highHalf, high]).toEqual(
        [low, lowHalf, mid, highHalf, high].toSorted((a, b) => a - b),
      );
    }
    const width = (band = { low: 0, high: 0 }) => band.high - band.low;
    expect(width(bands.at(-1))).toBeGreaterThan(width(bands[0]));
    expect(line.map(({ place }) => place)).toEqual([10, 30, 50, 70, 90, 110]);
  });

  test("half-life in laps and in sessions at the planned rate", () => {
    const { halfLife } = curveOf({});
    if (halfLife === undefined) throw new Error("this driver moves");
    expect(halfLife.sessions.mid).toBeCloseTo(halfLife.mid / 20, 10);
    expect(halfLife.low).toBeGreaterThanOrEqual(15);
    expect(halfLife.high).toBeLessThanOrEqual(2000.001);
  });

  test("equal sessions are read as flat more likely than before, and stay where they are", () => {
    const { flatChance, bands } = curveOf({ history: sessionsOf(Array(8).fill(90_000)) });
    expect(flatChance).toBeGreaterThan(0.15);
    for (const { low, high } of bands) {
      expect(low).toBeLessThan(90_000);
      expect(high).toBeGreaterThan(90_000);
    }
  });

  test("a driver who gets slower makes flat likelier, and is not expected to jump back", () => {
    const { flatChance, bands } = curveOf({
      history: sessionsOf([90_000, 90_400, 90_700, 91_100, 91_500, 91_900]),
    });
    expect(flatChance).toBeGreaterThan(0.3);
    expect(bands[0]?.mid).toBeGreaterThan(90_500);
  });

  test("a break that goes on now slows the coming sessions, less with each", () => {
    const events = [{ kind: "break", afterSession: 6 } as const];
    const [without, after] = [curveOf({}), curveOf({ events })];
    const loss = after.bands.map((band, i) => band.mid - (without.bands[i]?.mid ?? 0));
    expect(loss[0]).toBeGreaterThan(100);
    expect(loss[5]).toBeLessThan((loss[0] ?? 0) / 4);
  });

  test("twice the lap time gives twice the figures", () => {
    const twice = curveOf({
      history: improving.map((each) => ({ ...each, medianMs: 2 * each.medianMs, bestMs: 2 * each.bestMs })),
    });
    const once = curveOf({});
    expect(twice.floor.mid).toBeCloseTo(2 * once.floor.mid, 3);
    expect(twice.flatChance).toBeCloseTo(once.flatChance, 9);
  });

  test("a value that is not a number is named", () => {
    const [first, ...rest] = improving;
    if (first === undefined) throw new Error("no session");
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY]) {
      const history = [{ ...first, medianMs: bad }, ...rest];
      expect(() => practiceCurve({ history, seed: 1 })).toThrow(/history\[0\]\.medianMs/);
      expect(() => practiceCurve({ history: improving, future: [{ laps: bad }], seed: 1 })).toThrow(
        /future\[0\]/,
      );
      expect(() => practiceCurve({ history: improving, seed: bad })).toThrow(/seed/);
    }
    const events = [{ kind: "step", afterSession: 7 } as const];
    expect(() => practiceCurve({ history: improving, events, seed: 1 })).toThrow(
      /events\[0\]\.afterSession is 7/,
    );
  });

  test("any sessions give finite figures", () => {
    const times = fc.array(fc.integer({ min: 20_000, max: 600_000 }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(times, (medians) => {
        const { bands, floor } = curveOf({ history: sessionsOf(medians), draws: 50 });
        return [...bands.flatMap((band) => Object.values(band)), ...Object.values(floor)].every(
          Number.isFinite,
        );
      }),
      { seed: 8, numRuns: 40 },
    );
  });
});
