import { describe, expect, it, test } from "vitest";
import type { PlannedRun } from "#domain";
import type { LineOutcome } from "#stats";
import { sayCameTo, sayMet, sayWent } from "#words";
import { expectWellFormed } from "./wellFormed.ts";

const cameTo = (line: Partial<PlannedRun>, value?: number, of?: number, laps = 8): LineOutcome => ({
  line: { id: "l", purpose: "", ...line },
  ...{ runs: [2], laps, met: "good", value, of },
});

test("whether a line worked is said in one or two words, without praise", () => {
  const words = (["good", "not yet", "too few", "yours", "skipped", "to come"] as const).map((met) =>
    sayMet({ met }),
  );
  expect(words).toEqual([
    "Good",
    "Not met",
    "Too few laps to say",
    "Yours to judge",
    "Left out",
    "Not driven",
  ]);
});

describe("what a line came to is said in the figure it is told by", () => {
  it.each([
    [cameTo({ check: { figure: "clean", value: 7 } }, 6, 8), "6 of 8 laps clean"],
    [cameTo({ check: { figure: "clean", value: 1 } }, 1, 1), "1 of 1 lap clean"],
    [cameTo({ check: { figure: "usual", value: 84_000 } }, 84_312), "usual lap 1:24.31"],
    [cameTo({ check: { figure: "best", value: 84_000 } }, 83_912), "best lap 1:23.912"],
    [cameTo({ check: { figure: "scatter", value: 200 } }, 184), "laps differed by 0.18 s"],
    [cameTo({ check: { figure: "corner", value: 0 }, corner: 5 }, 0), "no mistake at corner 5"],
    [cameTo({ check: { figure: "corner", value: 0 }, corner: 5 }, 1), "1 mistake at corner 5"],
    [cameTo({ check: { figure: "sector", value: 31_000 }, sector: 2 }, 31_204), "sector 2 usually 31.204 s"],
    [
      cameTo({ check: { figure: "drill", value: 800 }, drill: "braking" }, 7, 10),
      "7 of 10 stops at the mark",
    ],
    [cameTo({ check: { figure: "drill", value: 800 } }, 7, 10), "7 of 10 worked"],
    [cameTo({ check: { figure: "driven" } }, 3, 4), "3 of 4 laps driven"],
  ] as const)("%#: %s", (outcome, words) => {
    expect(sayCameTo(outcome)).toBe(words);
    expectWellFormed(words);
  });
});

test("without a figure the laps are said, and nothing where none were driven", () => {
  expect(sayCameTo(cameTo({}))).toBe("8 laps driven");
  expect(sayCameTo(cameTo({ check: { figure: "usual", value: 84_000 } }, undefined, undefined, 1))).toBe(
    "1 lap driven",
  );
  expect(sayCameTo(cameTo({}, undefined, undefined, 0))).toBe("");
});

test("how a line went is said in a few words once its run has ended", () => {
  const even = { purpose: "Equal laps", check: { figure: "scatter", value: 200 } } as const;
  expect(sayWent(cameTo(even, 160))).toBe("Equal laps: good, laps differed by 0.16 s");
  const drill = {
    purpose: "Stops at the mark",
    drill: "braking",
    check: { figure: "drill", value: 800 },
  } as const;
  expect(sayWent({ ...cameTo(drill, 7, 10), met: "not yet" })).toBe("Stops at the mark: not met, 7 of 10");
  expect(sayWent({ ...cameTo(drill, 0, 0), met: "too few" })).toBe(
    "Stops at the mark: too few laps to say, 8 laps driven",
  );
  expect(sayWent({ ...cameTo({ purpose: "Race" }), met: "yours" })).toBe(
    "Race: yours to judge, 8 laps driven",
  );
  for (const met of ["skipped", "to come"] as const) expect(sayWent({ ...cameTo({}), met })).toBe("");
});
