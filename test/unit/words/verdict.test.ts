import { describe, expect, it } from "vitest";
import { unknown } from "#domain";
import type { AgainstUsual, JudgedRun, LapsOfRun, RunVerdict } from "#stats";
import { sayBreakDue, saySoFar, sayVerdict, sayVerdictAloud } from "#words";

const run: LapsOfRun = { laps: 8, clean: 6, lost: [2, 5], pace: 6, driven: 10 };
const against: AgainstUsual = {
  ms: -312,
  referenceMs: 84_373,
  referenceDecimals: 2,
  from: "level",
  usualMs: 84_061,
  decimals: 3,
  spread: { known: true, value: { s: 150, distances: [-400, -320, -100, 0, 90, 350] } },
};
const judged = (word: JudgedRun["word"], fields: Partial<JudgedRun> = {}): JudgedRun => ({
  word,
  against,
  scatterMs: 114,
  scatters: { known: true, value: { lowerQuartile: 130, each: [100, 114, 140, 150, 160, 200] } },
  run,
  ...fields,
});
const figureOf = (verdict: RunVerdict) => {
  const { word, figure, about } = sayVerdict(verdict);
  return `${word} | ${figure} | ${about}`;
};
const sentenceOf = (verdict: RunVerdict) => sayVerdict(verdict).sentence;

describe("a run that compares", () => {
  it("is told in a word, and its distance from the level", () => {
    expect(figureOf(judged("faster"))).toBe("faster | −0.31 s | to your level, 1:24.37");
    expect(figureOf(judged("slower", { against: { ...against, ms: 1_204 } }))).toBe(
      "slower | +1.20 s | to your level, 1:24.37",
    );
    expect(figureOf(judged("as usual", { against: { ...against, ms: 4 } }))).toContain("±0.00 s");
  });

  it("is told to no more digits than its laps and tonight's are known to", () => {
    expect(figureOf(judged("faster", { against: { ...against, decimals: 1 } }))).toContain("−0.3 s");
    const tonight: AgainstUsual = { ...against, from: "tonight", referenceMs: 84_373, referenceDecimals: 3 };
    expect(figureOf(judged("as usual", { against: tonight }))).toBe(
      "as usual | −0.312 s | to tonight's laps before, 1:24.373",
    );
  });

  it("counts the driver's own runs that lay as far", () => {
    expect(sentenceOf(judged("faster"))).toBe(
      "Very likely more than chance: 2 of your last 6 runs were so far under your level.",
    );
    expect(sentenceOf(judged("slower", { against: { ...against, ms: 350 } }))).toBe(
      "Very likely more than chance: 1 of your last 6 runs was so far over your level.",
    );
    expect(sentenceOf(judged("slower", { against: { ...against, ms: 351 } }))).toBe(
      "Very likely more than chance: none of your last 6 runs was so far over your level.",
    );
    expect(sentenceOf(judged("as usual"))).toBe(
      "May be chance: 3 of your last 6 runs were as far from your level.",
    );
  });

  it("is steady by its scatter, beside that of the driver's own runs", () => {
    expect(sentenceOf(judged("steady"))).toBe(
      "Laps differ by about 0.11 s; 2 of your last 6 runs were as steady.",
    );
  });

  it("says what is missing before faster and slower can be told", () => {
    const without = (reason: Parameters<typeof unknown>[0]) =>
      sentenceOf(judged("as usual", { against: { ...against, spread: unknown(reason) } }));
    expect(without({ needs: 6, of: "pace run", has: 2 })).toBe(
      "Faster or slower can be told after six runs of earlier sessions with 5 clean laps: 2 so far.",
    );
    expect(without({ needs: 3, of: "session", has: 2 })).toBe(
      "Faster or slower can be told after three earlier sessions with 5 clean laps: 2 so far.",
    );
  });

  it("names the laps that made it untidy, where they are few", () => {
    expect(figureOf(judged("untidy", { run: { ...run, lost: [2, 5, 7] } }))).toBe(
      "untidy | 3 of 8 | laps lost or with a mistake",
    );
    expect(sentenceOf(judged("untidy", { run: { ...run, lost: [2, 5, 7] } }))).toBe(
      "Laps 2, 5 and 7 were lost or had a mistake.",
    );
    expect(sentenceOf(judged("untidy", { run: { ...run, lost: [1, 2, 3, 4, 5, 6] } }))).toBe(
      "6 of 8 laps were lost or had a mistake.",
    );
  });

  it("says how many laps too few it has", () => {
    const few = judged("too few", { run: { ...run, pace: 4 } });
    expect(figureOf(few)).toBe("too few | 4 of 5 | clean laps that a verdict needs");
    expect(sentenceOf(few)).toBe("One more clean lap for a verdict.");
    expect(sentenceOf(judged("too few", { against: undefined, run: { ...run, pace: 0 } }))).toBe(
      "Five more clean laps for a verdict.",
    );
  });
});

describe("a run that gets no comparing word", () => {
  it("is counted, and says why", () => {
    expect(figureOf({ word: "counted", because: "drill", run })).toBe("6 of 8 | clean | ");
    expect(sentenceOf({ word: "counted", because: "warmUp", run })).toBe(
      "Warm-up laps are not compared; a pace run will show the effect.",
    );
    expect(sentenceOf({ word: "counted", because: "after a break", days: 17, run })).toBe(
      "The first 20 laps after a break of 17 days are not compared.",
    );
  });

  it("is told by the laps driven where they are not written down, or all left or came in", () => {
    expect(figureOf({ word: "counted", because: "partly written", run })).toBe("10 laps | driven | ");
    const outAndIn = { laps: 0, clean: 0, lost: [], pace: 0, driven: 1 };
    expect(figureOf({ word: "counted", because: "drill", run: outAndIn })).toBe("1 lap | driven | ");
  });

  it("is told from grid to finish in a race, as far as both are known", () => {
    const race = (grid: number | undefined, finish: number | undefined) =>
      figureOf({ word: "race", grid, finish, run });
    expect(race(5, 3)).toBe("5 to 3 | 2 gained | from grid to finish");
    expect(race(3, 5)).toBe("3 to 5 | 2 lost | from grid to finish");
    expect(race(4, 4)).toBe("4 to 4 | as begun | from grid to finish");
    expect(race(4, undefined)).toBe("6 of 8 | clean | ");
  });

  it("says of a rig test's run whether it is valid and which setting comes", () => {
    const tested = sayVerdict({ word: "rig test", isValid: true, next: "B", run });
    expect(tested).toEqual({
      word: "valid",
      figure: "6 laps",
      about: "clean, of the 5 that a run of the rig test needs",
      sentence: "The next run is with setting B. Nothing is said of speed before the test is complete.",
    });
    expect(sayVerdict({ word: "rig test", isValid: false, next: undefined, run })).toMatchObject({
      word: "not valid",
      sentence: expect.stringMatching(/^That was the last run planned\./),
    });
  });
});

it("a run that goes on is only counted", () => {
  expect(saySoFar(run)).toEqual({ word: "6 of 8", figure: "clean", about: "so far", sentence: "" });
});

it("the verdict is read out in one go", () => {
  expect(sayVerdictAloud(3, sayVerdict(judged("faster")))).toBe(
    "Run 3: faster, −0.31 s to your level, 1:24.37. Very likely more than chance: 2 of your last 6 runs were so far under your level.",
  );
});

it("a break is asked for by the hour", () => {
  expect(sayBreakDue(1)).toBe("An hour at the wheel: time for a break.");
  expect(sayBreakDue(2)).toBe("Two hours at the wheel: time for a break.");
});
