import { describe, expect, it } from "vitest";
import { unknown } from "#domain";
import type {
  AgainstUsual,
  ComparedRun,
  LapsOfRun,
  RunVerdict,
  SteadyRun,
  UntestedRun,
  UntidyRun,
  WhyAside,
} from "#stats";
import { sayBestOfRun, sayBreakDue, saySoFar, sayVerdict, sayVerdictAloud, sayVerdictFigures } from "#words";
import { aReport } from "./aReport.ts";

const run: LapsOfRun = { laps: 8, clean: 6, lost: [2, 5], pace: 6, driven: 10 };
const against: AgainstUsual = {
  ms: -312,
  referenceMs: 84_373,
  referenceDecimals: 2,
  from: "level",
  usualMs: 84_061,
  decimals: 3,
};
const tonight: AgainstUsual = { ...against, from: "tonight", referenceMs: 84_373, referenceDecimals: 3 };
const spread = { s: 150, distances: [-400, -320, -100, 0, 90, 350] };
const compared = (word: ComparedRun["word"], fields: Partial<AgainstUsual> = {}): ComparedRun => ({
  word,
  against: { ...against, ...fields },
  spread,
  run,
});
const steady: SteadyRun = {
  word: "steady",
  against,
  scatterMs: 114,
  scatters: { lowerQuartile: 130, each: [100, 114, 140, 150, 160, 200] },
  run,
};
const untested = (fields: Partial<UntestedRun> = {}): UntestedRun => ({
  word: "counted",
  because: "not told yet",
  missing: { needs: 6, of: "pace run", has: 2 },
  against,
  run,
  ...fields,
});
const little = (word: UntidyRun["word"], of: Partial<LapsOfRun>): UntidyRun => ({
  word,
  against,
  run: { ...run, ...of },
});
const figureOf = (verdict: RunVerdict) => {
  const { word, figure, about } = sayVerdict(verdict);
  return `${word} | ${figure} | ${about}`;
};
const sentenceOf = (verdict: RunVerdict) => sayVerdict(verdict).sentence;

describe("a run that compares", () => {
  it("is told in a word, and its distance from the level", () => {
    expect(figureOf(compared("faster"))).toBe("faster | −0.31 s | to your level, 1:24.37");
    expect(figureOf(compared("slower", { ms: 1_204 }))).toBe("slower | +1.20 s | to your level, 1:24.37");
    expect(figureOf(compared("as usual", { ms: 4 }))).toContain("±0.00 s");
  });

  it("is told to no more digits than its laps and tonight's are known to", () => {
    expect(figureOf(compared("faster", { decimals: 1 }))).toContain("−0.3 s");
    expect(figureOf(untested({ against: tonight }))).toBe(
      "6 of 8 | clean | −0.312 s to this session's laps before",
    );
  });

  it("counts the driver's own runs that lay as far", () => {
    expect(sentenceOf(compared("faster"))).toBe(
      "Very likely more than chance: 2 of your last 6 runs were so far under your level.",
    );
    expect(sentenceOf(compared("slower", { ms: 350 }))).toBe(
      "Very likely more than chance: 1 of your last 6 runs was so far over your level.",
    );
    expect(sentenceOf(compared("slower", { ms: 351 }))).toBe(
      "Very likely more than chance: none of your last 6 runs was so far over your level.",
    );
    expect(sentenceOf(compared("as usual"))).toBe(
      "May be chance: 3 of your last 6 runs were as far from your level.",
    );
  });

  it("is steady by its scatter, beside that of the driver's own runs, and the distance stands small", () => {
    expect(figureOf(steady)).toBe("steady | ± 0.11 s | from lap to lap; −0.31 s to your level");
    expect(sentenceOf(steady)).toBe("Laps differ by about 0.11 s; 2 of your last 6 runs were as steady.");
  });

  it("is only counted while nothing can tell its distance from chance, and says once what is missing", () => {
    expect(figureOf(untested())).toBe("6 of 8 | clean | −0.31 s to your level");
    expect(sentenceOf(untested())).toBe(
      "Faster or slower can be told after six runs of earlier sessions with 5 clean laps: 2 so far.",
    );
    expect(sentenceOf(untested({ missing: { needs: 3, of: "session", has: 0 } }))).toBe(
      "Faster or slower can be told after three earlier sessions with 5 clean laps: none so far.",
    );
  });

  it("names the laps that made it untidy, where they are few", () => {
    expect(figureOf(little("untidy", { lost: [2, 5, 7] }))).toBe(
      "untidy | 3 of 8 | laps lost or with a mistake",
    );
    expect(sentenceOf(little("untidy", { lost: [2, 5, 7] }))).toBe(
      "Laps 2, 5 and 7 were lost or had a mistake.",
    );
    expect(sentenceOf(little("untidy", { lost: [1, 2, 3, 4, 5, 6] }))).toBe(
      "6 of 8 laps were lost or had a mistake.",
    );
  });

  it("says how many laps too few it has", () => {
    const few = little("too few", { pace: 4 });
    expect(figureOf(few)).toBe("too few | 4 of 5 | clean laps that a verdict needs");
    expect(sentenceOf(few)).toBe("One more clean lap for a verdict.");
    expect(sentenceOf({ ...little("too few", { pace: 0 }), against: undefined })).toBe(
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

  it("says of a rig test's run whether it is valid, and nothing of its speed", () => {
    const tested = sayVerdict({ word: "rig test", isValid: true, why: undefined, run });
    expect(tested).toEqual({
      word: "valid",
      figure: "6 clean laps",
      about: "5 are needed",
      sentence: "The test is judged by its pairs, not by one run.",
    });
  });

  it("says why one does not count", () => {
    const notValid = (why: WhyAside) => {
      const { word, figure, about } = sayVerdict({ word: "rig test", isValid: false, why, run });
      return [word, figure, about].join(" | ");
    };
    expect(notValid({ because: "void", words: "mistakes" })).toBe(
      "not valid | 6 clean laps | void: mistakes",
    );
    expect(notValid({ because: "figure", reason: { because: "not compared", run: "race" } })).toBe(
      "not valid | 6 clean laps | race laps are not compared with practice",
    );
    expect(notValid({ because: "figure", reason: { needs: 5, of: "clean lap", has: 3 } })).toBe(
      "not valid | 6 clean laps | 5 are needed",
    );
  });
});

it("a run that goes on is only counted", () => {
  expect(saySoFar(run)).toEqual({ word: "6 of 8", figure: "clean", about: "so far", sentence: "" });
});

it("the verdict is read out in one go", () => {
  expect(sayVerdictAloud(3, sayVerdict(compared("faster")))).toBe(
    "Run 3: faster, −0.31 s to your level, 1:24.37. Very likely more than chance: 2 of your last 6 runs were so far under your level.",
  );
});

it("a break is asked for by the hour", () => {
  expect(sayBreakDue(1)).toBe("An hour at the wheel: time for a break.");
  expect(sayBreakDue(2)).toBe("Two hours at the wheel: time for a break.");
});

describe("what stands beside a verdict", () => {
  const pb = aReport({ kind: "new best", ms: 83_704, decimals: 3, pbMs: 84_017, pbDecimals: 3 });

  it("has the PB on a line of its own, as one that was where it has been beaten", () => {
    expect(sayBestOfRun(pb, false)).toBe("1:23.704 is a new PB, 0.313 s faster than the old one.");
    expect(sayBestOfRun(pb, true)).toBe("1:23.704 was a new PB, 0.313 s faster than the old one.");
    expect(
      sayBestOfRun(aReport({ kind: "few", laps: 3, bestMs: 84_000, decimals: 3 }), false),
    ).toBeUndefined();
  });

  it("shows no usual lap where there is none", () => {
    const labels = (report: typeof pb, verdict: RunVerdict = steady) =>
      sayVerdictFigures(report, verdict).map(({ label }) => label);
    expect(labels(pb)).toEqual(["usual", "best", "clean"]);
    expect(labels(pb, untested())).toEqual(["usual", "best"]);
    expect(labels({ ...pb, usual: unknown({ needs: 2, of: "clean lap", has: 1 }) })).toEqual([
      "best",
      "clean",
    ]);
  });
});
