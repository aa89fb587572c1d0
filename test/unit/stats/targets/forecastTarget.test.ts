import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fairTargets, forecastTarget, type TargetQuestion } from "#stats";

const ahead = (count: number) => Array.from({ length: count }, () => ({ laps: 20 }));
const history = [86_800, 85_900, 85_700, 85_200, 84_900, 84_800].map((medianMs, i) => ({
  lapsBefore: 20 * i,
  laps: 20,
  medianMs,
  bestMs: medianMs - 700,
}));
const question: TargetQuestion = {
  history,
  future: ahead(6),
  targetMs: 83_700,
  kind: "best",
  seed: 5,
  draws: 500,
};
const forecastOf = (changes: Partial<TargetQuestion> = {}) => {
  const figure = forecastTarget({ ...question, ...changes });
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};

describe("the chance to reach a target", () => {
  test("never falls when the target gets easier or there are more sessions", () => {
    const times = fc.array(fc.integer({ min: 84_000, max: 87_000 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(
        times,
        fc.integer({ min: 0, max: 3000 }),
        fc.integer({ min: 0, max: 20 }),
        fc.nat(5),
        (medians, easier, more, seed) => {
          const past = medians.map((medianMs, i) => ({
            lapsBefore: 15 * i,
            laps: 15,
            medianMs,
            bestMs: medianMs - 500,
          }));
          for (const kind of ["best", "median"] as const) {
            const ask = { history: past, kind, seed, draws: 100 };
            const hard = forecastOf({ ...ask, targetMs: 80_000 }).chance;
            expect(forecastOf({ ...ask, targetMs: 80_000 + easier }).chance).toBeGreaterThanOrEqual(hard);
            expect(
              forecastOf({ ...ask, targetMs: 80_000, future: ahead(6 + more) }).chance,
            ).toBeGreaterThanOrEqual(hard);
          }
        },
      ),
      { seed: 11, numRuns: 30 },
    );
  });

  test("a best lap is never less likely than a median at the same time", () => {
    for (const targetMs of [82_000, 83_000, 84_000]) {
      const best = forecastOf({ targetMs }).chance;
      expect(best).toBeGreaterThanOrEqual(forecastOf({ targetMs, kind: "median" }).chance);
    }
  });

  test("the same seed gives the same forecast", () => {
    expect(forecastOf()).toEqual(forecastOf());
  });

  test("a target that a past session reached gives a reason, not a chance", () => {
    expect(forecastTarget({ ...question, targetMs: 84_100 })).toEqual({
      known: false,
      reason: { because: "already reached" },
    });
    expect(forecastTarget({ ...question, targetMs: 84_100, kind: "median" }).known).toBe(true);
  });

  test("no session before the date means no chance", () => {
    expect(forecastOf({ future: [] })).toMatchObject({
      chance: 0,
      bands: [],
      expectedSession: { mid: undefined },
    });
  });

  test("needs two sessions", () => {
    expect(forecastTarget({ ...question, history: history.slice(0, 1) })).toEqual({
      known: false,
      reason: { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 },
    });
  });

  test("the expected session: 10, 50 and 90 % in order, and not reached for what is out of reach", () => {
    const { expectedSession } = forecastOf({ future: ahead(60), targetMs: 83_900 });
    const { low = 0, mid = 0, high = Number.POSITIVE_INFINITY } = expectedSession;
    expect(low).toBeGreaterThanOrEqual(1);
    expect(mid).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(mid);
    expect(forecastOf({ targetMs: 60_000 }).expectedSession).toEqual({
      low: undefined,
      mid: undefined,
      high: undefined,
    });
  });

  test("half of the futures have reached it at the expected session", () => {
    const { mid } = forecastOf({ future: ahead(60), targetMs: 83_900 }).expectedSession;
    if (mid === undefined) throw new Error("this target comes");
    expect(forecastOf({ future: ahead(mid), targetMs: 83_900 }).chance).toBeGreaterThanOrEqual(0.5);
    expect(forecastOf({ future: ahead(mid - 1), targetMs: 83_900 }).chance).toBeLessThan(0.5);
  });

  test("a fair target is reached in half of the futures, a stretch one in a fifth", () => {
    const { seed, draws } = { seed: 5, draws: 2000 };
    for (const kind of ["best", "median"] as const) {
      const targets = fairTargets({ history, future: ahead(6), kind, seed, draws });
      if (!targets.known) throw new Error(JSON.stringify(targets.reason));
      const chance = (targetMs: number) => forecastOf({ targetMs, kind, seed, draws }).chance;
      expect(chance(targets.value.fair)).toBeCloseTo(0.5, 1);
      expect(chance(targets.value.stretch)).toBeCloseTo(0.2, 1);
    }
    expect(fairTargets({ history, future: [], kind: "best", seed: 1 })).toMatchObject({ known: false });
  });

  test("the bands are those of the usual lap, for a best lap as well, from low to high", () => {
    expect(forecastOf().bands).toEqual(forecastOf({ kind: "median" }).bands);
    expect(forecastOf().bands).toHaveLength(6);
    for (const { low, lowHalf, mid, highHalf, high } of forecastOf().bands) {
      const inOrder = [low, lowHalf, mid, highHalf, high];
      expect(inOrder).toEqual(inOrder.toSorted((a, b) => a - b));
      expect(mid).toBeGreaterThan(83_000);
      expect(mid).toBeLessThan(86_000);
    }
  });

  test("under four sessions it is mostly assumption", () => {
    expect(forecastOf({ history: history.slice(0, 3) }).isMostlyAssumption).toBe(true);
    expect(forecastOf({ history: history.slice(0, 4) }).isMostlyAssumption).toBe(false);
  });

  test("a best lap driven just at the target is reached, one a millisecond over is not", () => {
    expect(forecastTarget({ ...question, targetMs: 84_100 }).known).toBe(false);
    expect(forecastTarget({ ...question, targetMs: 84_099 }).known).toBe(true);
  });

  test("a fair target without a session to come, or from one session, gives the reason", () => {
    const ask = { history, kind: "best", seed: 1, draws: 20 } as const;
    expect(fairTargets({ ...ask, future: [] })).toEqual({
      known: false,
      reason: { needs: 1, of: "session to come", has: 0 },
    });
    expect(fairTargets({ ...ask, history: history.slice(0, 1), future: ahead(1) })).toMatchObject({
      known: false,
      reason: { needs: 2, of: "session", has: 1 },
    });
  });

  test("a value that is not a number is named", () => {
    expect(() => forecastTarget({ ...question, targetMs: Number.NaN })).toThrow(/targetMs is NaN/);
    const [first, ...rest] = history;
    if (first === undefined) throw new Error("no session");
    const broken = [{ ...first, bestMs: Number.NEGATIVE_INFINITY }, ...rest];
    expect(() => forecastTarget({ ...question, history: broken })).toThrow(/history\[0\]\.bestMs/);
  });
});
