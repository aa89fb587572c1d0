import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLapTime } from "#domain";
import type { SuggestedTargets } from "#stats";
import {
  sayMilestones,
  sayMostlyAssumption,
  sayNoForecast,
  sayTargetChance,
  sayTargetDates,
  sayTargetRests,
  suggestionParts,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const by = "2026-12-13";
const chances = fc.double({ min: 0, max: 1, noNaN: true });

describe("the chance of a target by its date", () => {
  it.each([
    [0, "Very unlikely by Sun 13 Dec 2026: fewer than 1 chance in 20."],
    [0.05, "Very unlikely by Sun 13 Dec 2026: 1 chance in 20."],
    [0.2, "Unlikely by Sun 13 Dec 2026: 4 chances in 20."],
    [0.35, "Less likely than not by Sun 13 Dec 2026: 7 chances in 20."],
    [0.5, "As likely as not by Sun 13 Dec 2026: 10 chances in 20."],
    [0.7, "More likely than not by Sun 13 Dec 2026: 14 chances in 20."],
    [0.8, "Likely by Sun 13 Dec 2026: 16 chances in 20."],
    [0.95, "Very likely by Sun 13 Dec 2026: 19 chances in 20."],
    [1, "Very likely by Sun 13 Dec 2026: more than 19 chances in 20."],
  ])("%d", (chance, sentence) => expect(sayTargetChance(chance, by)).toBe(sentence));

  it("is never a word alone, and never a certainty", () =>
    fc.assert(
      fc.property(chances, (chance) => {
        const sentence = sayTargetChance(chance, by);
        expectWellFormed(sentence);
        expect(sentence).toMatch(/: (fewer than |more than )?\d+ chances? in 20\.$/);
        expect(sentence).not.toMatch(/\b(0|20) chances|[Cc]ertain|[Ii]mpossible|surely/);
        const isExtreme = chance * 20 < 0.5 || chance * 20 >= 19.5;
        expect(/fewer than 1 |more than 19 /.test(sentence)).toBe(isExtreme);
      }),
      { seed: 21 },
    ));

  it("has a word that only rises with the chance, the same word as far from even on either side", () => {
    const order = ["Very unlikely", "Unlikely", "Less", "As", "More", "Likely", "Very likely"];
    const rank = (chance: number) => {
      const sentence = sayTargetChance(chance, by);
      return order.findIndex((word) => sentence.startsWith(word));
    };
    fc.assert(
      fc.property(chances, chances, (a, b) => {
        expect(rank(Math.min(a, b))).toBeGreaterThanOrEqual(0);
        expect(rank(Math.min(a, b))).toBeLessThanOrEqual(rank(Math.max(a, b)));
      }),
      { seed: 22 },
    );
    for (let twentieths = 0; twentieths <= 20; twentieths++)
      expect(rank(twentieths / 20) + rank(1 - twentieths / 20)).toBe(6);
  });
});

describe("the rest of a target's outlook", () => {
  it("tells the likely days, far ones in words", () =>
    expect(
      sayTargetDates(
        { expected: { low: "2026-12-06", mid: "2027-01-18", high: undefined }, byDate: undefined },
        "2026-11-29",
      ),
    ).toBe(
      "Very unlikely before Sun 6 Dec 2026, as likely as not by mid-January, not yet very likely within a year.",
    ));

  it("tells one date for one chance: beside a chance by a date there is no other day that is very unlikely", () => {
    const expected = { low: "2026-12-17", mid: "2027-01-18", high: undefined };
    const byDate = { chance: 0.09, sessions: 3 };
    expect(sayTargetDates({ expected, byDate }, "2026-11-29")).toBe(
      "As likely as not by mid-January, not yet very likely within a year.",
    );
  });

  it("tells the steps without the target itself, with their days where they are known", () => {
    const steps = (...times: number[]) =>
      sayMilestones({ milestones: times.map((ms) => ({ ms, by: undefined })) }, "best", "2026-11-29");
    expect(steps(83_600, 83_500, 83_400, 83_300)).toBe("Steps on the way: 1:23.600, 1:23.500 and 1:23.400.");
    expect(steps(83_400, 83_300)).toBe("A step on the way: 1:23.400.");
    expect(steps(83_300)).toBeUndefined();
    expect(steps()).toBeUndefined();
    const milestones = [
      { ms: 83_631, by: "2026-12-06" },
      { ms: 83_500, by: "2027-01-18" },
      { ms: 83_300, by: "2027-04-05" },
    ];
    expect(sayMilestones({ milestones }, "median", "2026-11-29")).toBe(
      "Steps on the way: 1:23.63 by Sun 6 Dec 2026 and 1:23.50 by mid-January.",
    );
  });

  it("tells what it rests on, also where the driver counts on other practice, and that few sessions are mostly assumption", () => {
    const rate = { sessionsAWeek: 11 / 6, lapsASession: 20.6, sessions: 11 };
    const rests = { byDate: { chance: 0.5, sessions: 6 }, rate, sessions: 22 };
    expect(sayTargetRests(rests)).toBe(
      "From 22 sessions, and 6 more by then: 1.8 a week of 21 timed laps, as in the last six weeks.",
    );
    expect(sayTargetRests({ ...rests, byDate: undefined, sessions: 3 })).toBe(
      "From 3 sessions, and 1.8 more a week of 21 timed laps, as in the last six weeks.",
    );
    const assumed = { sessionsAWeek: 3, lapsASession: 30, sessions: 11, isAssumed: true } as const;
    expect(sayTargetRests({ ...rests, rate: assumed })).toBe(
      "From 22 sessions, and 6 more by then: 3.0 a week of 30 timed laps, as you count on.",
    );
    expect(sayMostlyAssumption({ sessions: 3 })).toBe("Little more than a guess: it rests on 3 sessions.");
  });

  it("tells exactly what is missing", () =>
    expect(sayNoForecast({ needs: 3, of: "session", each: { needs: 5, of: "pace lap" }, has: 2 })).toBe(
      "No forecast yet: it needs 3 sessions with 5 pace laps each, has 2.",
    ));
});

describe("targets worth setting", () => {
  const say = (suggested: Pick<SuggestedTargets, "fair" | "stretch">, kind: "best" | "median" = "best") =>
    suggestionParts(suggested, { kind })
      .map((part) => (typeof part === "string" ? part : formatLapTime(part.ms, 2)))
      .join(" ");
  const fair = { ms: 83_900, chance: 0.5 };
  const stretch = { ms: 83_640, chance: 0.2 };

  it.each([
    [
      { fair, stretch },
      "A fair target by that date: 1:23.90 (10 chances in 20); a stretch: 1:23.64 (4 chances in 20).",
    ],
    [{ fair, stretch: fair }, "A fair target by that date: 1:23.90 (10 chances in 20)."],
    [
      { fair: undefined, stretch },
      "A best lap faster than any you have driven has at most 10 chances in 20 by that date. A stretch: 1:23.64 (4 chances in 20).",
    ],
    [
      { fair: undefined, stretch: undefined },
      "A best lap faster than any you have driven has at most 4 chances in 20 by that date.",
    ],
  ])("%o", (suggested, sentence) => expect(say(suggested)).toBe(sentence));

  it("are reached in one session where they are usual laps: the target itself asks for the level", () =>
    expect(say({ fair, stretch }, "median")).toBe(
      "A fair target by that date: 1:23.90 (10 chances in 20 that one session reaches it); a stretch: 1:23.64 (4 chances in 20).",
    ));

  it("each time stands beside its own chance", () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 4000, max: 20_000 }),
        fc.integer({ min: 0, max: 90 }),
        fc.constantFrom("best", "median"),
        (hundredths, closer, kind) => {
          const [near, far] = [hundredths * 10, (hundredths - closer) * 10];
          const suggested = { fair: { ms: near, chance: 0.49 }, stretch: { ms: far, chance: 0.21 } };
          const sentence = say(suggested, kind);
          expectWellFormed(sentence);
          const times = suggestionParts(suggested, { kind }).filter((part) => typeof part !== "string");
          expect(sentence.match(/\(\d+ chances? in 20/g)).toHaveLength(times.length);
        },
      ),
      { seed: 23 },
    ));
});
