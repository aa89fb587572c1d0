import fc from "fast-check";
import { expect, test } from "vitest";
import { chanceNowBeats } from "../../../../src/stats/evenings/chanceNowBeats.ts";

const laps = fc.array(fc.integer({ min: 80_000, max: 80_020 }), { minLength: 5, maxLength: 12 });
const sessions = fc.array(laps, { minLength: 1, maxLength: 4 });
const shareOf = (then: readonly (readonly number[])[], now: readonly (readonly number[])[]) => {
  const found = chanceNowBeats(then, now);
  return found.known ? found.value : Number.NaN;
};

test("of all pairs of laps those count in which the one now is faster, and a tie half", () => {
  expect(shareOf([[90, 91, 92, 93, 94]], [[90, 90, 90, 90, 90]])).toBeCloseTo(0.9, 12);
  expect(shareOf([[90, 90, 90, 90, 90]], [[90, 90, 90, 90, 90]])).toBe(0.5);
});

test("each pair of sessions weighs the same, however many laps it has", () => {
  const fast = Array.from({ length: 50 }, () => 80);
  expect(shareOf([[90, 90, 90, 90, 90]], [fast, [99, 99, 99, 99, 99]])).toBeCloseTo(0.5, 12);
});

test("the chances of either side add up to one", () => {
  fc.assert(
    fc.property(sessions, sessions, (then, now) => {
      expect(shareOf(then, now) + shareOf(now, then)).toBeCloseTo(1, 12);
    }),
  );
});

test("a side without a session of five laps gives a reason", () => {
  expect(chanceNowBeats([[90, 91, 92, 93]], [[90, 90, 90, 90, 90]])).toEqual({
    known: false,
    reason: { needs: 1, of: "session", each: { needs: 5, of: "pace lap" }, has: 0, where: "on one side" },
  });
});
