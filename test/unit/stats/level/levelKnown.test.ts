import { describe, expect, test } from "vitest";
import { levelChange, pageHistory } from "#stats";
import { changeOfLevel } from "../../../../src/stats/level/changeOfLevel.ts";
import { futureLevels } from "../../../../src/stats/level/futureLevels.ts";
import { levelCurve } from "../../../../src/stats/level/levelCurve.ts";
import { levelGain } from "../../../../src/stats/level/levelGain.ts";
import { levelAfter, levelKnown } from "../../../../src/stats/level/levelKnown.ts";
import { levelModel } from "../../../../src/stats/level/levelModel.ts";
import { levelNow } from "../../../../src/stats/level/levelNow.ts";
import { levelOutlook } from "../../../../src/stats/level/levelOutlook.ts";
import { levelsOff } from "../../../../src/stats/level/levelsOff.ts";
import { typicalError } from "../../../../src/stats/level/typicalError.ts";
import { bandOf } from "../../../../src/stats/weeks/bands.ts";
import { falling, sessionsOf } from "../../../support/levelSessions.ts";
import { aDigest } from "../period/manySessions.ts";
import { aPosterior } from "./aPosterior.ts";

describe("what was known of a level after each session", () => {
  test("by hand: a level 1 % over the usual lap, known to 0.2 %", () => {
    const posterior = aPosterior([{ end: { l: 0.01, ll: 4e-6 } }]);
    const near = (deviations: number) => expect.closeTo(90_900 + 180 * deviations, 1);
    expect(levelAfter(posterior)).toEqual({
      low: near(-1.6449),
      lowHalf: near(-0.6745),
      mid: near(0),
      highHalf: near(0.6745),
      high: near(1.6449),
    });
  });

  test("does not know what came later, and is worked out once", () => {
    const asked: number[] = [];
    const eventsUpTo = (session: number) => {
      asked.push(session);
      return [];
    };
    const level = levelKnown(sessionsOf(falling(4)), eventsUpTo);
    const early = levelKnown(sessionsOf(falling(3)), () => []);
    expect(level.after(0)).toBeUndefined();
    expect(level.chanceUnder(0, 99_000)).toBeUndefined();
    expect(level.after(2)).toEqual(early.after(2));
    expect(level.after(1)?.mid).toBeGreaterThan(level.after(3)?.mid ?? Number.NaN);
    expect(level.chanceUnder(2, level.after(2)?.mid ?? 0)).toBeCloseTo(0.5, 6);
    expect(level.chanceUnder(2, level.after(2)?.low ?? 0)).toBeCloseTo(0.05, 6);
    expect(asked).toEqual([2, 1, 3]);
  });
});

describe("how much faster than at the beginning of some days", () => {
  const ms = [92_000, 91_000, 90_500, 90_300, 90_200];
  const historyOf = (days: readonly number[]) =>
    pageHistory(days.map((day, i) => aDigest(day, new Array<number>(5).fill(ms[i] ?? 90_000))));
  const near = [0, 2, 4, 6, 8];
  const change = (days: readonly number[], count: number, since: number, breakAfter?: number) => {
    const events = breakAfter === undefined ? [] : ([{ kind: "break", afterSession: breakAfter }] as const);
    const sessions = historyOf(days).slice(0, count);
    const found = levelChange({ sessions, since, confidence: 0.9, events });
    if (!found.known) throw new Error(JSON.stringify(found.reason));
    const { change: moved, low, high, chanceFaster } = found.value;
    return { change: moved, low, high, chanceFaster };
  };

  test("rests on all sessions up to the last of the days, from the first within them", () => {
    expect(levelGain(historyOf(near), { from: "2026-01-03", to: "2026-01-08" })).toEqual({
      known: true,
      value: { ...change(near, 4, 1), from: "2026-01-03", to: "2026-01-07", sessions: 3 },
    });
    expect(levelGain(historyOf(near), {})).toEqual({
      known: true,
      value: { ...change(near, 5, 0), from: "2026-01-01", to: "2026-01-09", sessions: 5 },
    });
  });

  test("knows the breaks between them", () => {
    const days = [0, 2, 4, 20, 22];
    expect(levelGain(historyOf(days), {})).toMatchObject({ known: true, value: change(days, 5, 0, 3) });
  });

  test("needs two sessions in the days, and four in all", () => {
    const each = { needs: 5, of: "pace lap" };
    const history = historyOf(near);
    const lacking = (needs: number, has: number) => ({
      known: false,
      reason: { needs, of: "session", each, has },
    });
    expect(levelGain(history, { from: "2026-01-09" })).toEqual(lacking(2, 1));
    expect(levelGain(history, { from: "2026-02-01" })).toEqual(lacking(2, 0));
    expect(levelGain(history, { to: "2025-12-31" })).toEqual(lacking(4, 0));
    expect(levelGain([], {})).toEqual(lacking(4, 0));
    expect(levelGain(history, { from: "2026-01-05", to: "2026-01-05" })).toEqual(lacking(4, 3));
    expect(levelGain(history, { to: "2026-01-06" })).toEqual(lacking(4, 3));
    expect(levelGain(history, { to: "2026-01-07" }).known).toBe(true);
    expect(levelGain(history, { from: "2026-01-07" })).toMatchObject({ known: true, value: { sessions: 2 } });
  });
});

describe("every answer at once", () => {
  const question = { sessions: sessionsOf(falling(5)), events: [{ kind: "step", afterSession: 2 }] as const };

  test("is what each question is answered by itself", () => {
    const model = levelModel(question);
    if (!model.known) throw new Error("five sessions have a model");
    const { posterior } = model.value;
    const outlook = levelOutlook({ ...question, since: [0, 3], future: [{ laps: 20 }], seed: 5 });
    expect(outlook).toEqual({
      known: true,
      value: {
        sessions: 5,
        sessionsLeftOut: 0,
        now: levelAfter(posterior),
        curve: levelCurve(model.value),
        changes: [changeOfLevel(model.value, 0), changeOfLevel(model.value, 3)],
        ...levelNow(posterior),
        bands: futureLevels(posterior, [{ laps: 20 }], 5).medians.map(bandOf),
        levelsOff: levelsOff(model.value, 5),
        ...typicalError(posterior),
        isMostlyAssumption: false,
      },
    });
    expect(outlook.known && outlook.value.curve.at(-1)).toEqual(outlook.known && outlook.value.now);
  });

  test("needs two sessions, says little of three, and has no bands where nothing is planned", () => {
    const of = (count: number) => levelOutlook({ sessions: sessionsOf(falling(count)), since: [], seed: 1 });
    expect(of(1)).toEqual({
      known: false,
      reason: { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 },
    });
    expect(of(3)).toMatchObject({ known: true, value: { isMostlyAssumption: true, bands: [], changes: [] } });
    expect(of(4)).toMatchObject({ known: true, value: { isMostlyAssumption: false } });
  });
});
