import { describe, expect, it } from "vitest";
import type { PlannedRun } from "#domain";
import {
  isTouched,
  newDrill,
  newRun,
  readLine,
  type TypedLine,
  typedOf,
} from "../../../../../src/screens/targets/plan/typedLine.ts";

const context = { corners: [1, 2, 3, 4, 5].map((number) => ({ number })), usual: 84_120, displayDecimals: 3 };
const read = (typed: Partial<TypedLine>) => readLine({ ...newRun, purpose: "A run", ...typed }, context);
const lineOf = (typed: Partial<TypedLine>) => {
  const reading = read(typed);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.value;
};
const wrongIn = (typed: Partial<TypedLine>) => {
  const reading = read(typed);
  return reading.ok ? [] : Object.keys(reading.problems);
};

describe("a run that is typed", () => {
  it.each<readonly [string, Partial<TypedLine>, Partial<PlannedRun>]>([
    ["clean laps", {}, { check: { figure: "clean", value: 7 }, goodWhen: "7 of 8 laps clean" }],
    ["all of them driven", { figure: "driven" }, { check: { figure: "driven" }, goodWhen: "8 laps driven" }],
    [
      "a usual lap, from its last digits",
      { figure: "usual", value: "3900" },
      { check: { figure: "usual", value: 83_900 }, goodWhen: "usual lap 1:23.90 or under" },
    ],
    [
      "how far laps differ",
      { figure: "scatter", value: "0,2" },
      { check: { figure: "scatter", value: 200 }, goodWhen: "laps differ by 0.20 s or less" },
    ],
    [
      "mistakes at its corner",
      { figure: "corner", corner: "5", value: "1" },
      { corner: 5, check: { figure: "corner", value: 1 }, goodWhen: "at most 1 mistake at corner 5" },
    ],
    [
      "the time in its sector",
      { figure: "sector", sector: "2", value: "31.5" },
      { sector: 2, check: { figure: "sector", value: 31_500 } },
    ],
    ["the driver's own words", { figure: "words", words: " it feels calm " }, { goodWhen: "it feels calm" }],
  ])("may be judged by %s", (_, typed, line) => {
    expect(lineOf(typed)).toMatchObject(line);
  });

  it("is the driver's to judge where nothing is said", () => {
    expect(lineOf({ figure: "words" })).toEqual({
      ...{ purpose: "A run", kind: "pace", laps: 8, effort: "full" },
    });
  });

  it("names what is wrong at its field", () => {
    expect(wrongIn({ purpose: " " })).toEqual(["purpose"]);
    expect(wrongIn({ laps: "0" })).toEqual(["laps"]);
    expect(wrongIn({ laps: "6" })).toEqual(["value"]);
    expect(wrongIn({ corner: "6" })).toEqual(["corner"]);
    expect(wrongIn({ figure: "corner", value: "0" })).toEqual(["corner"]);
    expect(wrongIn({ figure: "drill", value: "8" })).toEqual(["figure"]);
    expect(wrongIn({ figure: "best", value: "" })).toEqual(["value"]);
    expect(wrongIn({ figure: "words", words: "x".repeat(401) })).toEqual(["words"]);
  });
});

describe("a drill that is typed", () => {
  it("names itself, and is counted in tenths", () => {
    const reading = readLine({ ...newDrill, corner: "3" }, context);
    expect(reading).toMatchObject({
      ok: true,
      value: {
        purpose: "Stops at the mark, corner 3",
        drill: "braking",
        check: { figure: "drill", value: 800 },
      },
    });
  });

  it("that is made a run of another kind counts nothing any more", () => {
    const line = lineOf({ ...newDrill, purpose: "A run", kind: "pace", figure: "clean", value: "7" });
    expect(line).not.toHaveProperty("drill");
  });
});

describe("a run that is changed", () => {
  const line: PlannedRun = {
    ...{ id: "a", rule: "corner", purpose: "Corner 5", kind: "pace", laps: 8, effort: "learning", corner: 5 },
    ...{
      check: { figure: "corner", value: 0 },
      goodWhen: "no mistake at corner 5",
      reason: "About 0.10 s a lap.",
    },
  };

  it("stands in the form as it is, and comes out of it the same", () => {
    const typed = typedOf(line);
    expect(isTouched(typed)).toBe(false);
    expect(readLine(typed, context)).toEqual({ ok: true, value: { ...line, id: undefined } });
  });

  it("keeps rule and reason while it is about the same thing, and no longer", () => {
    const longer = readLine({ ...typedOf(line), laps: "10" }, context);
    expect(longer).toMatchObject({ value: { laps: 10, rule: "corner", reason: "About 0.10 s a lap." } });
    const elsewhere = readLine({ ...typedOf(line), corner: "4" }, context);
    expect(elsewhere.ok && elsewhere.value).not.toHaveProperty("reason");
    expect(elsewhere.ok && elsewhere.value).not.toHaveProperty("rule");
  });
});

it("a form just opened is not touched", () => {
  expect([newRun, newDrill].map(isTouched)).toEqual([false, false]);
  expect(isTouched({ ...newRun, laps: "9" })).toBe(true);
});
