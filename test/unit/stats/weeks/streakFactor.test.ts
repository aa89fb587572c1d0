import { expect, test } from "vitest";
import { mannKendall } from "#stats";
import { normalAt } from "../../../../src/stats/random/draws.ts";
import { streakFactor } from "../../../../src/stats/weeks/streakFactor.ts";

/** Sessions of a driver who does not change; each is as far from the level as the one before, to a share. */
function flatDriver(seed: number, sessions: number, correlation: number): number[] {
  let shift = normalAt(seed, 0);
  return Array.from({ length: sessions }, (_, i) => {
    if (i > 0) shift = correlation * shift + Math.sqrt(1 - correlation ** 2) * normalAt(seed, i);
    return 84_000 + 200 * shift;
  });
}

test("what comes in no streaks leaves the test as it is", () => {
  expect(streakFactor([3, 1, 2])).toBe(1);
  expect(streakFactor([5, 5, 5, 5, 5])).toBe(1);
  expect(streakFactor([1, 9, 2, 8, 3, 7, 4, 6, 5, 5])).toBe(1);
});

test("by hand: five evenings of one kind, then five of another", () => {
  // Ranks 3 and 8. Neighbours are alike to 0.7, more than 1.96/√10; no other distance is: 1 + 2·9·8·7·0.7/(10·9·8).
  expect(streakFactor([1, 1, 1, 1, 1, 2, 2, 2, 2, 2])).toBeCloseTo(1.98, 9);
  expect(streakFactor([2, 2, 2, 2, 2, 1, 1, 1, 1, 1])).toBeCloseTo(1.98, 9);
});

test("with hardly any values nothing comes in streaks", () => {
  for (const values of [[], [1], [1, 2], [1, 1, 2], [1, 1, 2, 2]]) expect(streakFactor(values)).toBe(1);
});

test("a slow wave makes the variance several times as large", () => {
  const wave = Array.from({ length: 40 }, (_, i) => Math.sin((2 * Math.PI * i) / 20));
  expect(streakFactor(wave)).toBeGreaterThan(2);
});

test("flat drivers whose good evenings come in streaks are told of a trend less often than by the plain test", () => {
  let [plain, corrected] = [0, 0];
  const drivers = 600;
  for (let seed = 1; seed <= drivers; seed++) {
    const values = flatDriver(seed, 20, 0.35);
    const found = mannKendall(values);
    if (found === undefined) throw new Error("twenty sessions have a test");
    if (Math.abs(found.z) > 1.645) plain++;
    if (Math.abs(found.z) / Math.sqrt(streakFactor(values)) > 1.645) corrected++;
  }
  // At a nominal 10 %. With so few sessions the streaks of one in three series show at all.
  expect(plain / drivers).toBeGreaterThan(0.2);
  expect(corrected).toBeLessThan(0.85 * plain);
});
