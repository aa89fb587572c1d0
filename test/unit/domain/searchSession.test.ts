import { describe, expect, it } from "vitest";
import { type SearchTerms, searchSession } from "#domain";
import { aRun, aSession } from "../stats/someRows.ts";

const session = aSession(0, {
  note: "Brake earlier at the Mill",
  focus: "braking",
  conditions: "cool evening",
});
const runs = [
  aRun(1, [84_000, { ms: 84_500, note: "late at the Mill" }, [90_000, "off"]], { tyres: "Soft" }),
  aRun(3, [[undefined, "spin"], 83_400, { ms: 83_900, note: "über kerb" }], { tyres: "hard", note: "windy" }),
];
const numbered = runs.map((run, index) => ({ run, number: index + 1 }));
const look = (terms: SearchTerms) => {
  const { isFound, laps } = searchSession(terms, session, "Varnholt Ring · club hatch", numbered);
  return [isFound, laps.map(({ runNumber, lapNumber }) => `${runNumber}.${lapNumber}`).join(" ")];
};

describe("search in a session", () => {
  it.each<[string, SearchTerms, boolean, string]>([
    ["a word of its note, and the laps with that word", { words: "mill" }, true, "1.2"],
    ["two words, one in the session and one in a lap, find the lap", { words: "earlier late" }, false, "1.2"],
    ["conditions and the combo's name", { words: "cool RING" }, true, ""],
    ["a word of a run's note finds the session, not its laps", { words: "windy" }, true, ""],
    ["words in two runs and the session", { words: "soft windy brake" }, true, ""],
    ["accents do not matter", { words: "uber" }, false, "2.3"],
    ["a word nobody wrote", { words: "chicane" }, false, ""],
    ["a remark", { remark: "off" }, true, "1.3"],
    ["a remark on a lap without a time", { remark: "spin" }, true, "2.1"],
    ["a remark that is not there", { remark: "traffic" }, false, ""],
    ["a range of times, both ends in it", { shortest: 83_900, longest: 84_500 }, true, "1.1 1.2 2.3"],
    ["a time and a word of its run", { longest: 83_500, words: "windy" }, true, "2.2"],
    ["a time and a word that another run has", { longest: 83_500, words: "soft" }, false, ""],
    ["tyres", { tyres: "soft" }, true, ""],
    ["tyres and a time: only laps on these tyres", { tyres: "hard", longest: 84_000 }, true, "2.2 2.3"],
    ["tyres in another form of the word", { tyres: "softs" }, true, ""],
    ["another form of a word of the note", { words: "brakes" }, true, ""],
    ["another form of a word of a lap", { words: "kerbs" }, false, "2.3"],
    ["tyres nobody fitted", { tyres: "rain" }, false, ""],
    ["no tyres asked for finds runs with tyres", { tyres: " " }, true, ""],
    ["a remark and a word of the lap's own note", { remark: "off", words: "late" }, false, ""],
    ["a time and a word of the lap's own note", { longest: 84_500, words: "late" }, true, "1.2"],
    ["a longest time finds no lap without one", { longest: 999_999, words: "windy" }, true, "2.2 2.3"],
    ["a shortest time finds no lap without one", { shortest: 1, words: "windy" }, true, "2.2 2.3"],
    ["words that stand apart are not one", { words: "eveningvarnholt" }, false, ""],
    ["two parts of one name", { words: "Varnholt ring" }, true, ""],
    ["the focus", { focus: "braking" }, true, ""],
    ["another focus", { focus: "line", words: "mill" }, false, ""],
    ["its day", { from: "2026-01-01", to: "2026-01-01" }, true, ""],
    ["the days after", { from: "2026-01-02" }, false, ""],
    ["the days before", { to: "2025-12-31" }, false, ""],
  ])("%s", (_, terms, isFound, laps) => {
    expect(look(terms)).toEqual([isFound, laps]);
  });

  it("leaves deleted laps out and counts places without them", () => {
    const deleted = [{ run: aRun(1, [{ ms: 80_000, deletedAt: 5 }, 80_100]), number: 1 }];
    const { laps } = searchSession({ longest: 81_000 }, session, "", deleted);
    expect(laps.map(({ lapNumber, lap }) => [lapNumber, lap.ms])).toEqual([[1, 80_100]]);
  });
});
