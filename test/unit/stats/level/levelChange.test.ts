import { describe, expect, test } from "vitest";
import { levelChange } from "#stats";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const answer = (medians: readonly number[], since = 0, confidence = 0.9) => {
  const found = levelChange({ sessions: sessionsOf(medians), since, confidence });
  if (!found.known) throw new Error("no change of level");
  return found.value;
};

describe("how far the level has moved", () => {
  test("the times turned round are as surely slower", () => {
    const { low, chanceFaster } = answer(falling(20).toReversed());
    expect(low).toBeGreaterThan(0);
    expect(chanceFaster).toBeLessThan(0.01);
  });

  test("nothing has changed since the last session itself", () => {
    const { change, low, high, chanceFaster } = answer(falling(6), 5);
    expect([change, low, high]).toEqual([0, 0, 0]);
    expect(chanceFaster).toBeCloseTo(0.5, 9);
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
});
