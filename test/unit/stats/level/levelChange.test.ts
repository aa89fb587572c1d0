import { describe, expect, test } from "vitest";
import { levelChange } from "#stats";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const answer = (medians: readonly number[], since = 0, confidence = 0.9) => {
  const found = levelChange({ sessions: sessionsOf(medians), since, confidence });
  if (!found.known) throw new Error("no change of level");
  return found.value;
};

describe("how far the level has moved", () => {
  test("a curved gain lies in its interval, which a wider confidence holds inside", () => {
    const { change, low, high, chanceFaster } = answer(falling(20));
    const truth = 4000 * (2 ** (-19 / 5) - 1);
    expect(low).toBeLessThan(truth);
    expect(high).toBeGreaterThan(truth);
    expect(change).toBeGreaterThan(low);
    expect(change).toBeLessThan(high);
    expect(chanceFaster).toBeGreaterThan(0.99);
    const wide = answer(falling(20), 0, 0.99);
    expect(wide.low).toBeLessThan(low);
    expect(wide.high).toBeGreaterThan(high);
  });

  test("the times turned round are as surely slower", () => {
    const { low, chanceFaster } = answer(falling(20).toReversed());
    expect(low).toBeGreaterThan(0);
    expect(chanceFaster).toBeLessThan(0.01);
  });

  test("a level that stands is called level, and never moved; one that came to rest says since when", () => {
    const still = answer(flat(24));
    expect(still.chanceLevel).toBeGreaterThan(0.8);
    expect(still.levelSince).toBeUndefined();
    expect(still.low).toBeLessThanOrEqual(0);
    expect(still.high).toBeGreaterThanOrEqual(0);
    const rested = answer(flat(24).map((ms, i) => ms + Math.max(0, 10 - i) * 400));
    expect(rested.chanceLevel).toBeGreaterThan(0.8);
    expect(rested.levelSince).toBeGreaterThanOrEqual(8);
    expect(rested.levelSince).toBeLessThanOrEqual(13);
  });

  test("times that rise steadily are never called level", () => {
    const rising = answer(flat(30).map((ms, i) => ms + 150 * i));
    expect(rising.levelSince).toBeUndefined();
    expect(rising.chanceLevel).toBeLessThan(0.2);
  });

  test("nothing has changed since the last session itself", () => {
    const { change, low, high, chanceFaster } = answer(falling(6), 5);
    expect([change, low, high]).toEqual([0, 0, 0]);
    expect(chanceFaster).toBeCloseTo(0.5, 9);
  });

  test("a step that is marked counts as change", () => {
    const sessions = sessionsOf([...flat(8), ...flat(8).map((ms) => ms - 1500)]);
    const ask = { sessions, since: 0, confidence: 0.9 };
    const marked = levelChange({ ...ask, events: [{ kind: "step", afterSession: 8 }] });
    if (!marked.known) throw new Error("no change of level");
    expect(marked.value.low).toBeLessThan(-1500);
    expect(marked.value.high).toBeGreaterThan(-1500);
    expect(marked.value.high).toBeLessThan(-1000);
  });

  test("a slow session after a break is the break's, where it is marked", () => {
    const sessions = sessionsOf([...flat(10), 91_500, 90_700]);
    const ask = { sessions, since: 0, confidence: 0.9 };
    const marked = levelChange({ ...ask, events: [{ kind: "break", afterSession: 10 }] });
    const unmarked = levelChange(ask);
    if (!marked.known || !unmarked.known) throw new Error("no change of level");
    expect(marked.value.change).toBeLessThan(unmarked.value.change / 2);
  });

  test("only the last 250 sessions are looked at", () => {
    const old = Array.from({ length: 30 }, () => 150_000);
    expect(answer([...old, ...falling(250)], 3)).toEqual({
      ...answer(falling(250), 0),
      levelSince: (answer(falling(250), 0).levelSince ?? 0) + 30,
    });
  });

  test("one session is too few, and wrong input is named", () => {
    expect(levelChange({ sessions: sessionsOf([90_000]), since: 0, confidence: 0.9 }).known).toBe(false);
    const sessions = sessionsOf(flat(5));
    expect(() => levelChange({ sessions, since: 5, confidence: 0.9 })).toThrow(/since is 5/);
    expect(() => levelChange({ sessions, since: 0, confidence: 1 })).toThrow(/confidence is 1/);
    expect(() =>
      levelChange({ sessions: sessionsOf([90_000, Number.NaN]), since: 0, confidence: 0.9 }),
    ).toThrow(/sessions\[1\]\.medianMs is NaN/);
    expect(() =>
      levelChange({ sessions, since: 0, confidence: 0.9, events: [{ kind: "step", afterSession: 6 }] }),
    ).toThrow(/events\[0\]\.afterSession is 6/);
  });
});
