import { describe, expect, it } from "vitest";
import type { PlannedRun } from "#domain";
import type { LineOutcome } from "#stats";
import { nextOfLine, sayLapsSoFar, sayLineInShort, sayLineSoFar, sayPlaceInPlan } from "#words";

const line: PlannedRun = {
  id: "b",
  purpose: "Corner 5",
  laps: 8,
  kind: "pace",
  effort: "learning",
  rule: "corner",
  corner: 5,
  attendTo: "brake earlier for corner 5",
  goodWhen: "no mistake at corner 5",
  check: { figure: "corner", value: 0 },
};

const outcome = (fields: Partial<LineOutcome>): LineOutcome => ({
  line,
  runs: [2],
  laps: 5,
  met: "too few",
  value: 0,
  of: 5,
  ...fields,
});

describe("a line of the plan on Log", () => {
  it("is told with its laps and effort", () => {
    expect(sayLineInShort(line)).toBe("Corner 5 · 8 laps, learning effort");
  });

  it("has its place among all of them, those left out too", () => {
    const plan = [
      { id: "a", purpose: "Warm up", skipped: true } as const,
      line,
      { id: "c", purpose: "Race" },
    ];
    expect(sayPlaceInPlan(line, plan)).toBe("2 of 3");
    expect(sayPlaceInPlan({ id: "x", purpose: "gone" }, plan)).toBe("");
  });

  it("says how far it is met, and good only so far while laps are to come", () => {
    expect(sayLineSoFar(outcome({}))).toBe("5 of 8 laps, no mistake at corner 5");
    expect(sayLineSoFar(outcome({ laps: 8, met: "good" }))).toBe("8 of 8 laps, no mistake at corner 5: good");
    const clean = { ...line, check: { figure: "clean", value: 4 } as const };
    expect(sayLineSoFar(outcome({ line: clean, met: "good", value: 4 }))).toBe(
      "5 of 8 laps, 4 of 5 laps clean: good so far",
    );
  });

  it("counts laps alone where it has no figure yet, or none but its laps", () => {
    expect(sayLineSoFar(outcome({ laps: 0, met: "to come", value: undefined }))).toBe("0 of 8 laps");
    const drill = { ...line, drill: "braking", check: { figure: "drill", value: 800 } } as const;
    expect(sayLineSoFar(outcome({ line: drill, of: 0 }))).toBe("5 of 8 laps, stops at the mark: 0 of 0");
    expect(sayLapsSoFar(outcome({ line: drill, of: 0 }))).toBe("5 of 8 laps");
    const driven = { ...line, laps: 3, check: { figure: "driven" } as const };
    expect(sayLineSoFar(outcome({ line: driven, laps: 2, met: "not yet", value: 2, of: 3 }))).toBe(
      "2 of 3 laps",
    );
    expect(sayLineSoFar(outcome({ line: { id: "c", purpose: "Free" }, laps: 1, value: undefined }))).toBe(
      "1 lap",
    );
  });

  it("as what comes next says what to do, what to attend to and when it is good", () => {
    expect(nextOfLine(line)).toEqual({
      suggestion: "Corner 5: 8 laps, learning effort, brake earlier for corner 5.",
      reason: "Good when no mistake at corner 5.",
    });
    expect(nextOfLine({ purpose: "As it comes", laps: 4 })).toEqual({
      suggestion: "As it comes: 4 laps, full effort.",
      reason: "",
    });
  });
});
