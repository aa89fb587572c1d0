import { describe, expect, test } from "vitest";
import { levelNow } from "../../../../src/stats/level/levelNow.ts";
import { levelPosterior } from "../../../../src/stats/level/levelPosterior.ts";
import { falling, flat, sessionsOf } from "../../../support/levelSessions.ts";

const now = (medians: readonly number[]) => levelNow(levelPosterior({ sessions: sessionsOf(medians) }));

describe("whether a level moves", () => {
  test("it moves again since the session at which a still driver began to gain", () => {
    const { movingSince, isLevel, levelSince } = now(flat(24).map((ms, i) => ms - 250 * Math.max(0, i - 15)));
    expect(movingSince).toBeGreaterThanOrEqual(14);
    expect(movingSince).toBeLessThanOrEqual(18);
    expect(isLevel).toBe(false);
    expect(levelSince).toBeUndefined();
  });

  test("one that moved all along does not move again, nor does one at rest", () => {
    expect(now(falling(12)).movingSince).toBeUndefined();
    expect(now(flat(24)).movingSince).toBeUndefined();
  });

  test("at rest is said over a chance of 0.8, and of few sessions it is not", () => {
    expect(now(flat(24))).toMatchObject({ isLevel: true });
    expect(now(flat(24)).chanceLevel).toBeGreaterThan(0.8);
    expect(now(flat(4)).isLevel).toBe(false);
  });

  test("a level that creeps up for sure is never said to be at rest", () => {
    const creeping = now(flat(60).map((ms, i) => ms + 12 * i));
    expect(creeping.isLevel).toBe(false);
    expect(creeping.levelSince).toBeUndefined();
  });
});
