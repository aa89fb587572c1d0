import { describe, expect, it } from "vitest";
import { questionTarget } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const today = "2026-10-01";
const combo = { today, now: 83_704, best: 83_704, sessionBests: { low: 83_704, high: 84_904 } };

function question(...[target, known]: Parameters<typeof questionTarget>): readonly string[] {
  const questions = questionTarget(target, known);
  for (const one of questions) expectWellFormed(one);
  return questions;
}

describe("a target is questioned", () => {
  it("not where it is in reach", () => {
    expect(question({ kind: "best", value: 83_000, by: today }, combo)).toEqual([]);
    expect(question({ kind: "median", value: 84_000 }, { ...combo, now: 84_500 })).toEqual([]);
    expect(question({ kind: "scatter", value: 200 }, { today, now: 300 })).toEqual([]);
    expect(question({ kind: "best", value: 83_000 }, { today })).toEqual([]);
  });

  it("when its date has passed", () =>
    expect(question({ kind: "best", value: 83_000, by: "2026-09-30" }, combo)).toEqual([
      "Wed 30 Sep 2026 has passed: which date is meant?",
    ]));

  it("when its date is more than two years ahead, where a year may be mistyped", () => {
    expect(question({ kind: "best", value: 83_000, by: "2028-09-30" }, combo)).toEqual([]);
    expect(question({ kind: "best", value: 83_000, by: "2028-10-01" }, combo)).toEqual([
      "Sun 1 Oct 2028 is more than two years ahead: is it meant?",
    ]);
  });

  it("when the same one is still wanted, whatever its date, and not for another figure or value", () => {
    const mean = { kind: "meanOf", laps: 5, value: 83_900, by: "2026-11-20" } as const;
    const known = { ...combo, now: 84_500, others: [mean] };
    expect(question({ ...mean, by: "2026-12-01" }, known)).toEqual([
      "Mean of 5 laps 1:23.900 by Fri 20 Nov 2026 is a target of yours already: is a second one meant?",
    ]);
    expect(question({ ...mean, laps: 8 }, known)).toEqual([]);
    expect(question({ ...mean, value: 83_901 }, known)).toEqual([]);
    expect(question({ kind: "median", value: 83_900 }, known)).toEqual([]);
  });

  it("when it is reached already", () => {
    expect(question({ kind: "best", value: 84_000 }, combo)).toEqual([
      "Your best lap is 1:23.704 already: is 1:24.000 meant?",
    ]);
    expect(question({ kind: "cleanShare", value: 700 }, { today, now: 750 })).toEqual([
      "Your share of clean laps is 75.0 % already: is 70.0 % meant?",
    ]);
  });

  it("when it is further under the PB than the sessions' bests lie apart", () =>
    expect(question({ kind: "best", value: 80_004 }, combo)).toEqual([
      "1:20.004 is 3.70 s faster than your PB, and your sessions' bests lie within 1.20 s of each other: is it meant?",
    ]));

  it("not within a hundredth of the PB, however close together the sessions' bests lie", () => {
    const even = { ...combo, sessionBests: { low: 83_704, high: 83_804 } };
    expect(question({ kind: "best", value: 82_900 }, even)).toEqual([]);
    expect(question({ kind: "best", value: 82_800 }, even)).toEqual([
      "1:22.800 is 0.90 s faster than your PB, and your sessions' bests lie within 0.10 s of each other: is it meant?",
    ]);
  });

  it("when it is more than a twentieth under the figure now and no range is known", () => {
    expect(question({ kind: "best", value: 79_000 }, { today, now: 83_704 })).toEqual([
      "1:19.000 is 4.70 s faster than your PB: is it meant?",
    ]);
    expect(question({ kind: "scatter", value: 100 }, { today, now: 300 })).toEqual([
      "That is under half of your scatter of ± 0.30 s: is it meant?",
    ]);
  });

  it("when a usual lap would beat the PB", () =>
    expect(question({ kind: "median", value: 83_000 }, { ...combo, now: 84_500 })).toEqual([
      "A usual lap of 1:23.000 is faster than your PB of 1:23.704: is it meant?",
    ]));

  it("when it has fewer than 1 chance in 20 within a year, and then by that alone", () => {
    const known = { ...combo, now: 84_500, hardest: 82_400, isByYear: true };
    expect(question({ kind: "median", value: 82_399 }, known)).toEqual([
      "1:22.399 has fewer than 1 chance in 20 within a year: is it meant?",
    ]);
    expect(question({ kind: "best", value: 79_000 }, { ...combo, hardest: 79_100, isByYear: true })).toEqual([
      "1:19.000 has fewer than 1 chance in 20 within a year: is it meant?",
    ]);
  });

  it("by what was driven where the forecast is mostly assumption, but for what it suggests", () => {
    const known = { ...combo, hardest: 82_400, isByYear: false };
    expect(question({ kind: "best", value: 82_400 }, known)).toEqual([]);
    expect(question({ kind: "best", value: 80_004 }, known)).toEqual([
      "1:20.004 is 3.70 s faster than your PB, and your sessions' bests lie within 1.20 s of each other: is it meant?",
    ]);
  });

  it("“fair: 1:23.65”, then “faster than your PB: is it meant?”: what a forecast allows raises no other question", () => {
    expect(question({ kind: "median", value: 83_650 }, { ...combo, now: 84_500, hardest: 82_400 })).toEqual(
      [],
    );
    expect(question({ kind: "best", value: 80_004 }, { ...combo, hardest: 79_000 })).toEqual([]);
  });

  it("when it asks for every lap clean", () =>
    expect(question({ kind: "cleanShare", value: 1000 }, { today, now: 750 })).toEqual([
      "Every lap clean: one mistake misses it. Is it meant?",
    ]));
});
