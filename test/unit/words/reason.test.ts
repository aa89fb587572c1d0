import { describe, expect, it } from "vitest";
import type { Because, Countable, Reason, Shortage } from "#domain";
import { sayMissing, sayReason, sayTooFew } from "#words";
import { sayLacking, sayLapsToGo } from "../../../src/words/reason.ts";
import { expectWellFormed } from "./wellFormed.ts";

/** One of each cause with its sentence: the compiler asks for every cause that is new. */
const causes: {
  readonly [Cause in Because["because"]]: readonly [
    Omit<Extract<Because, { readonly because: Cause }>, "because">,
    string,
  ];
} = {
  "no target": [{}, "no target for this session"],
  "no PB before": [{}, "no personal best before it"],
  "nothing to measure a session against": [
    {},
    "no target, no reference lap and no PB from before this session to measure against",
  ],
  "nothing to measure a period against": [
    {},
    "no target, no reference lap and no PB from before a session to measure it against",
  ],
  "no figure yet": [{}, "no figure yet to compare with the target"],
  "no figure at the setting": [{}, "no figure was known on the day the target was set"],
  "reached at the setting": [{}, "the target was reached on the day it was set"],
  "already reached": [{}, "you have driven that time already, so no chance is given"],
  "level there already": [{}, "your level is there already, so no chance is given"],
  "change too long ago": [{}, "the change lies before the sessions that are looked at"],
  "more than a year away": [{}, "no forecast looks further than a year"],
  "date to come": [{}, "its date is still to come"],
  "target gone": [{}, "its target was deleted before it came due"],
  "page turned before its date": [{}, "a new page was begun before its date: times no longer compare"],
  "nothing driven lately": [{}, "nothing was driven in the last six weeks, so nothing is forecast"],
  "no two laps in a row": [{}, "needs two pace laps of one run in a row, has none"],
  "not compared": [{ run: "wet" }, "damp and wet laps are compared only with each other"],
  "no pace run before": [{}, "no pace run before it in this session"],
  "not seen in a replay": [{}, "nobody has looked at it in a replay yet"],
  "both runs the same": [{}, "all laps of both runs are the same"],
  "the most driven": [{}, "the most driven"],
  "all at one time": [{}, "needs sessions at different times"],
  "no usual lap on both sides": [{}, "no usual lap before and after it that can be compared"],
  "sessions that do not differ": [{}, "all sessions are the same, so there is nothing to measure by"],
  "pairs that do not differ": [{}, "needs pairs in both orders, and laps that differ"],
  "all values equal": [{}, "all values are equal: there is no curve"],
  "along a step": [{}, "the points lie along a step: they show no power curve"],
  "along a line or a step": [{}, "the points lie along a line or a step: they show no curve"],
  "nothing to find": [{ gainMs: 0 }, "there is nothing to find: the gain is 0 ms"],
  "place not above zero": [{ smallest: 0 }, "a power of x needs x above 0, the smallest is 0"],
  "pairs not here": [{ pairs: 6, planned: 7 }, "6 of 7 pairs are in this logbook: an estimate, no claim"],
  "test stopped early": [{ pairs: 7, planned: 9 }, "stopped after 7 of 9 pairs: an estimate, no claim"],
  "not above zero": [{ measure: "distance", value: 0 }, "distance must be more than 0, is 0"],
  "below zero": [{ measure: "bezel", value: -0.01 }, "bezel must be 0 or more, is -0.01"],
  "out of range": [
    { measure: "side angle", from: 0, to: 180, value: 190 },
    "side angle must lie from 0 to under 180 degrees, is 190",
  ],
  "more than half a circle": [
    { arcWidth: 3.2, radius: 1 },
    "a screen 3.2 wide at a radius of 1 would be more than half a circle",
  ],
  "side screens seen from behind": [
    { sideAngle: 150 },
    "at a side angle of 150 degrees the eye sees the side screens from behind",
  ],
  "side screens meet": [
    { sideAngle: 140 },
    "at a side angle of 140 degrees the side screens run into each other",
  ],
  "peak cut off": [
    {},
    "a peak of 100 % is cut off, so the true one is unknown: use the share of time at the limit",
  ],
  "top speed under the approach": [
    { approachSpeed: 60, topSpeed: 50 },
    "top speed must not be under the approach speed of 60, is 50",
  ],
  "apex outside the corner": [
    { angle: 90, apexAngle: 95 },
    "the apex must lie inside the corner of 90 degrees, is at 95",
  ],
  "car wider than the road": [
    { roadWidth: 1.8, carWidth: 1.9 },
    "the road must be wider than the car: 1.8 m against 1.9 m",
  ],
  "more unused than there is": [
    { unused: 11, room: 10 },
    "11 m unused is more than the 10 m there are beside the car",
  ],
  "straights too short": [
    {},
    "the straights beside this corner are too short for any line that uses the whole road",
  ],
};

it("says metres of a corner without the dust of sums in floating point", () => {
  const unused = { because: "more unused than there is", unused: 0.9 * 3 + 7, room: 11.8 - 1.8 } as const;
  expect(sayReason(unused)).toBe("9.7 m unused is more than the 10 m there are beside the car");
  const kerb = {
    because: "out of range",
    measure: "kerb at the apex",
    from: 0,
    to: 2.7 + 0.1,
    value: 3,
  } as const;
  expect(sayReason(kerb)).toBe("the kerb at the apex must be narrower than the inner radius of 2.8, is 3");
});

/** One of each thing there can be too few of, as two of them are called. */
const things: Readonly<Record<Countable, string>> = {
  "timed lap": "timed laps",
  "clean lap": "clean laps",
  "clean lap with sectors": "clean laps with sectors",
  "pace lap": "pace laps",
  "exact pace lap": "exact pace laps",
  "exact clean lap": "exact clean laps",
  "pace lap in a row": "pace laps in a row",
  "pace lap with sectors": "pace laps with sectors",
  sector: "sectors",
  session: "sessions",
  "session of each kind": "sessions of each kind",
  "session to come": "sessions to come",
  "step of neighbouring sessions": "pairs of sessions in a row",
  "combo with this figure": "combos with this figure",
  "pace run": "pace runs",
  "pair of runs": "pairs of runs",
  "pair of evenings in a row": "pairs of evenings in a row",
  "pair of neighbouring runs": "pairs of runs in a row",
  "different place": "different places",
  "forecast that came due": "forecasts that came due",
  "target that came due": "targets that came due",
};

const twoSessions: Shortage = { needs: 2, of: "session", each: { needs: 5, of: "pace lap" }, has: 0 };

describe("every cause has a sentence", () => {
  it.each(Object.entries(causes))("%s", (because, [data, sentence]) => {
    const reason = { because, ...data } as Reason;
    expect(sayReason(reason)).toBe(sentence);
    expect(sayLacking(reason)).toBe(sentence);
    for (const said of [sayTooFew(reason), sayMissing(reason)]) expect(said).toMatch(/^[A-Z\d]/);
    if (because !== "below zero") expectWellFormed(sayTooFew(reason));
  });
});

describe("everything there can be too few of", () => {
  it.each(Object.entries(things) as [Countable, string][])("%s", (of, many) => {
    expect(sayReason({ needs: 2, of, has: 0 })).toBe(`needs 2 ${many}, has 0`);
    const one = many.replace(
      /^(\w+(?: (?:clean|pace))? ?)?(lap|sector|session|pair|combo|place|forecast|target|run)s\b/,
      "$1$2",
    );
    expect(sayReason({ needs: 1, of, has: 0 })).toBe(`needs 1 ${one}, has 0`);
    expect(sayTooFew({ needs: 2, of, has: 1 })).toBe(`Not enough ${many} yet: 1 of 2`);
    expect(sayTooFew({ needs: 1, of, has: 0 })).toBe(`No ${one} yet`);
  });
});

describe("a shortage", () => {
  it("says what each must hold, so that sessions there are but that lack laps are not denied", () => {
    expect(sayReason(twoSessions)).toBe("needs 2 sessions with 5 pace laps each");
    expect(sayReason({ ...twoSessions, has: 1 })).toBe("needs 2 sessions with 5 pace laps each, has 1");
    expect(sayTooFew(twoSessions)).toBe("Not enough sessions with 5 pace laps each yet: 0 of 2");
  });

  it.each<[Shortage, string]>([
    [{ needs: 5, of: "pace lap", has: 2, run: 1 }, "needs 5 pace laps, has 2 in run 1"],
    [{ needs: 5, of: "pace lap", has: 2, period: "before" }, "needs 5 pace laps, has 2 in the period before"],
    [
      { needs: 5, of: "pace lap", has: 2, where: "in the best session", period: "before" },
      "needs 5 pace laps, has 2 in its best session in the period before",
    ],
    [
      { ...twoSessions, where: "after the change" },
      "needs 2 sessions with 5 pace laps each after the change",
    ],
    [
      { needs: 5, of: "exact pace lap", has: 4, rough: 2 },
      "needs 5 exact pace laps, has 4; 2 from memory or with fewer decimals",
    ],
  ])("says where it is counted: %o", (reason, sentence) => expect(sayReason(reason)).toBe(sentence));

  it("is short in a cell of a table", () => {
    const few: Reason = {
      needs: 4,
      of: "session of each kind",
      each: { needs: 3, of: "clean lap" },
      has: 1,
    };
    expect(sayMissing(few)).toBe("too few sessions: 1 of 4");
    expect(sayMissing({ needs: 5, of: "pace lap", has: 3 })).toBe("too few pace laps: 3 of 5");
  });

  it("of a run counts the laps that are to come", () => {
    expect(sayLapsToGo(1, 5)).toBe("four more laps for a verdict");
    expect(sayLapsToGo(4, 5)).toBe("one more lap for a verdict");
    expect(sayLapsToGo(0, 12)).toBe("12 more laps for a verdict");
  });
});
