import { expect, test } from "vitest";
import { known, unknown } from "#domain";
import type { LevelGain } from "#stats";
import { gainInShort } from "#words";

const aGain = (fields: Partial<LevelGain> = {}) =>
  known<LevelGain>({
    change: -2401,
    low: -2651,
    high: -2139,
    chanceFaster: 0.9999,
    from: "2026-08-31",
    to: "2026-11-22",
    sessions: 18,
    ...fields,
  });

test("a gain is told with its range, rounded outwards, where it is very likely", () => {
  expect(gainInShort(aGain())).toEqual({
    figure: "−2.40 s",
    certainty: "very likely 2.13 to 2.66 s",
    way: "faster",
  });
  const slower = { change: 9900, low: 9409, high: 10_421, chanceFaster: 0.001 };
  expect(gainInShort(aGain(slower)).certainty).toBe("very likely 9.40 to 10.43 s");
});

test("what is only likely has no range, and what may be chance has no way", () => {
  expect(gainInShort(aGain({ change: 350, chanceFaster: 0.08 }))).toEqual({
    figure: "+0.35 s",
    certainty: "likely",
    way: "slower",
  });
  expect(gainInShort(aGain({ chanceFaster: 0.7 }))).toMatchObject({
    certainty: "may be chance",
    way: "neither",
  });
});

const column = { days: 84, asOf: "2026-11-24", today: "2026-11-24" };

test("of far fewer days than the column speaks of it says since when it is", () => {
  expect(gainInShort(aGain({ from: "2026-10-18", chanceFaster: 0.7 }), column).certainty).toBe(
    "may be chance, since 18 Oct",
  );
  expect(gainInShort(aGain(), column).certainty).toBe("very likely 2.13 to 2.66 s");
});

test("with too few sessions it says how many there are", () => {
  const few = unknown({ needs: 4, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 });
  expect(gainInShort(few)).toEqual({ figure: "too few", certainty: "1 of 4 sessions", way: "neither" });
});
