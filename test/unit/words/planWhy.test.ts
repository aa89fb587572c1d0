import { describe, expect, it } from "vitest";
import type { Because } from "#stats";
import { sayWhy } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const mistakes = {
  because: "mistakes",
  ms: 410,
  balance: 1020,
  lost: 7,
  laps: 60,
  evenings: 6,
  against: "pb",
} as const;
const worth = { low: 120, mid: 280, high: 470 };
const target = { kind: "best", value: 83_300, by: "2026-12-13", days: 21 } as const;

const said: readonly (readonly [Because, string])[] = [
  [
    { because: "break", days: 16, last: { days: 12, laps: 40 } },
    "16 days since you drove here. After your last break of 12 days the old level was back within 40 laps.",
  ],
  [{ because: "break", days: 10, last: undefined }, "10 days since you drove here."],
  [{ because: "first laps" }, "The first laps after a rest are slower, and that goes quickly."],
  [
    { because: "slower overnight", ms: 350, low: 200, high: 500, pairs: 8 },
    "Your first laps of an evening are about 0.35 s slower than the last of the evening before (8 pairs of evenings): more of them before it counts.",
  ],
  [{ because: "new here", laps: 0 }, "You have not driven here before."],
  [{ because: "new here", laps: 12 }, "12 laps so far: too few to know what costs time here."],
  [{ because: "rig test waits", runs: 1 }, "A rig test waits: 1 run still to drive."],
  [
    {
      because: "went well",
      line: { rule: "corner", corner: 5, drill: undefined, laps: 8, isGood: true },
    },
    "It worked last time. Whether it stayed shows at the start of the next evening.",
  ],
  [
    { ...mistakes, corner: { number: 5, count: 4 } },
    "Over your last six evenings mistakes cost 0.41 s of the 1.02 s a lap you lose to your PB: 7 of 60 laps were lost, 4 of them at corner 5.",
  ],
  [
    { ...mistakes, ms: undefined, balance: undefined, corner: { number: 5, count: 7 } },
    "Over your last six evenings 7 of 60 laps were lost, all of them at corner 5.",
  ],
  // Other lines give back more than is lost in all.
  [
    { ...mistakes, balance: 300, corner: undefined },
    "Over your last six evenings mistakes cost 0.41 s a lap: 7 of 60 laps were lost.",
  ],
  [
    { because: "corner", corner: 5, worth, mistakes: 5, laps: 193, todo: { do: "room" } },
    "About 0.28 s a lap (between 0.12 and 0.47 s): no other corner is worth more, with 5 mistakes there in 193 laps.",
  ],
  [
    {
      ...{ because: "corner", corner: 5, worth, mistakes: 0, laps: 193 },
      todo: { do: "brake", seen: { what: "late", count: 2, of: 3 } },
    },
    "About 0.28 s a lap (between 0.12 and 0.47 s): no other corner is worth more. Braking was late in 2 of 3 reviews.",
  ],
  [
    { because: "braking", corner: 5, seen: { what: "late", count: 2, of: 3 } },
    "Braking was late in 2 of 3 reviews.",
  ],
  [
    { because: "throttle", corner: 5, seen: { what: "twice", count: 2, of: 2 } },
    "Throttle was pressed twice in 2 of 2 reviews.",
  ],
  [
    { because: "gap", corner: 5, gap: { at: "exit", metres: 0.9 } },
    "A replay showed 0.9 m of road left at the exit.",
  ],
  [
    { because: "uneven", evenings: 6, ms: 430, balance: 1190, against: "target", sector: 2 },
    "Over your last six evenings uneven laps cost 0.43 s of the 1.19 s a lap you lose to your target.",
  ],
  [
    { because: "runs differ", evenings: 6, ms: 430, balance: 1190, against: "target", runs: 0.6, laps: 0.3 },
    "Over your last six evenings uneven laps cost 0.43 s of the 1.19 s a lap you lose to your target, and most of it lies between your runs: 60 % of the spread, 30 % inside them.",
  ],
  [
    {
      because: "pace",
      evenings: 6,
      ms: 300,
      balance: 1190,
      against: undefined,
      sector: undefined,
      corner: undefined,
    },
    "Over your last six evenings pace costs 0.30 s of the 1.19 s a lap you lose to what each evening is measured against: your best laps are that much slower than it.",
  ],
  [
    { because: "target", target, best: undefined },
    "Best lap 1:23.300 is wanted by Sun 13 Dec 2026: 21 days left.",
  ],
  [
    { because: "target", target: { ...target, days: 0 }, best: undefined },
    "Best lap 1:23.300 is wanted by Sun 13 Dec 2026: today.",
  ],
  [
    { because: "target", target, best: 83_900 },
    "Best lap 1:23.300 is wanted by Sun 13 Dec 2026: 21 days left. It is 0.60 s under your best: too much to ask of one evening.",
  ],
  [{ because: "not met", came: { good: 7, tries: 10 } }, "Not met last time, 7 of 10: once more."],
  [{ because: "not met", came: undefined }, "Not met last time: once more."],
  [
    { because: "see the effect", usual: undefined, on: undefined },
    "Five clean laps at full effort make a usual lap to measure by.",
  ],
  [
    { because: "see the effect", usual: 84_014.5, on: "2026-11-15" },
    "Your usual lap was 1:24.01 on Sun 15 Nov 2026; the same run again shows what changed.",
  ],
  [{ because: "races", races: 2 }, "You raced on two of your last evenings."],
];

describe("why a line of a plan is there", () => {
  it.each(said)("%o", (because, sentence) => {
    expect(sayWhy(because)).toBe(sentence);
    expectWellFormed(sentence);
  });
});
