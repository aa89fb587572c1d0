import { describe, expect, it } from "vitest";
import { type Figure, known, unknown } from "#domain";
import { forecastRecord, type RecordAgainstSaid } from "#stats";
import {
  recordMeaning,
  sayFifth,
  sayForecastRecord,
  sayOutcome,
  sayOutcomes,
  sayRecord,
  sayRecordInShort,
} from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const against = (contradicts: RecordAgainstSaid["contradicts"], reached = 4): Figure<RecordAgainstSaid> =>
  known({ targets: 9, reached, expected: 4.6, contradicts });
const tooFew = (has: number) => unknown({ needs: 5, of: "target that came due", has });

describe("whether the record can be squared with the chances", () => {
  it("is said in one sentence, also where it is not to the app's credit", () => {
    expect(sayRecord(against("no"))).toBe(
      "The chances fit what came so far: 4 of 9 targets were reached, about 5 were to be expected.",
    );
    expect(sayRecord(against("too hopeful", 1))).toBe(
      "The chances have been too hopeful for you: 1 of 9 targets was reached, about 5 were to be expected. Take a chance told here for less than it says.",
    );
    expect(sayRecord(against("too cautious", 9))).toMatch(
      /^The chances have been too cautious for you: 9 of 9/,
    );
    for (const of of ["no", "too hopeful", "too cautious"] as const) expectWellFormed(sayRecord(against(of)));
    expectWellFormed(recordMeaning);
  });

  it("is not said of too few", () => {
    expect(sayRecord(tooFew(2))).toBe("Too few to judge the chances yet: 2 targets came due, it takes 5.");
    expect(sayRecord(tooFew(0))).toBe(
      "No target has come due yet. A chance is judged once its date has passed.",
    );
  });

  it("is said in a few words beside the chances", () => {
    expect(sayRecordInShort(against("no"))).toBe("4 of 9 targets reached, as the chances had it");
    expect(sayRecordInShort(against("too hopeful", 1))).toBe("too hopeful for you: 1 of 9 targets reached");
    expect(sayRecordInShort(tooFew(2))).toBe("too few came due to judge yet");
  });
});

describe("the score", () => {
  const of = (...said: readonly (readonly [chance: number, reached: boolean])[]) =>
    sayForecastRecord(forecastRecord(said.map(([chance, reached]) => ({ chance, reached }))));

  it("stands against always saying the share that came true", () => {
    // Two of five came true: (0.2² + 0.2² + 3 × 0.1²)/5 = 0.022 against 0.4 × 0.6.
    expect(of([0.8, true], [0.8, true], [0.1, false], [0.1, false], [0.1, false])).toBe(
      "Better than always saying 8 chances in 20, the share that came true, in 5 forecasts so far: error 0.02 against 0.24. Lower is better, 0 is perfect.",
    );
    expect(of([0.1, true], [0.8, true], [0.9, false], [0.5, false], [0.5, false])).toMatch(
      /^Worse than always/,
    );
    const flat = of([0.4, true], [0.4, true], [0.4, false], [0.4, false], [0.4, false]);
    expect(flat).toMatch(/^(No better|Better|Worse) than always/);
  });

  it("claims nothing with too few targets, however many forecasts there are of them", () => {
    const record = forecastRecord(Array.from({ length: 6 }, (_, i) => ({ chance: 0.5, reached: i < 3 })));
    expect(sayForecastRecord(record, tooFew(3))).toBe(
      "So far, from 3 targets: error 0.25. 0 is perfect; always saying 10 chances in 20 makes 0.25.",
    );
  });

  it("stands alone where all came true or none did, and needs five", () => {
    expect(of(...Array.from({ length: 6 }, () => [0.5, false] as const))).toBe(
      "None of 6 forecasts came true so far, so there is nothing to compare them with yet: error 0.25. 0 is perfect; always saying 10 chances in 20 makes 0.25.",
    );
    expect(of([0.5, true], [0.5, true], [0.5, false])).toBe(
      "Not enough forecasts that came due yet: 3 of 5.",
    );
    expect(sayForecastRecord(undefined)).toBe("Not enough forecasts that came due yet: 0 of 5.");
  });
});

it("of about the same chance it is said how many came true", () =>
  expect(sayFifth({ from: 0.6, to: 0.8, count: 8, said: 0.66, came: 0.625 })).toBe(
    "Said about 13 in 20: 5 of 8 came true",
  ));

it("what became of a forecast is said, or why it is not scored", () => {
  const turned = unknown({ because: "page turned before its date" });
  expect([known(true), known(false), unknown({ because: "date to come" }), turned].map(sayOutcome)).toEqual([
    "came true",
    "did not come true",
    "not due yet",
    "not scored, a new page was begun before its date: times no longer compare",
  ]);
  expect(sayOutcomes([known(true), known(true)])).toBe("Reached");
  expect(sayOutcomes([known(false)])).toBe("Not reached");
  expect(sayOutcomes([unknown({ because: "date to come" })])).toBe("Not due yet");
  expect(sayOutcomes([known(true), known(false), known(true)])).toBe("2 of 3 forecasts came true");
});
