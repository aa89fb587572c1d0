import { describe, expect, it } from "vitest";
import type { PlanCheck, PlannedRun } from "#domain";
import { linesOfTemplate, templateOf } from "#words";

const facts = { usual: 84_120, scatter: 250, sector: { sector: 2, ms: 200, usual: 31_000 } };
const corners = [1, 2, 3].map((number) => ({ number }));
const taken = (line: Partial<PlannedRun>, now: Partial<typeof facts> = facts, isSameLayout = true) => {
  let made = 0;
  const newId = () => `new-${++made}`;
  const all = { usual: undefined, scatter: undefined, sector: undefined, ...now };
  return linesOfTemplate([{ purpose: "A run", laps: 8, ...line }], {
    facts: all,
    corners,
    isSameLayout,
    newId,
  })[0];
};

it("a template keeps the runs, not the figures of that day nor the run of a rig test", () => {
  const lines: readonly PlannedRun[] = [
    {
      id: "a",
      purpose: "Warm up",
      laps: 3,
      kind: "warm-up",
      rule: "warm-up",
      reason: "Since Monday.",
      skipped: true,
    },
    { id: "b", purpose: "The next run of the rig test", rigTest: "t" },
  ];
  expect(templateOf(lines)).toEqual([{ purpose: "Warm up", laps: 3, kind: "warm-up", rule: "warm-up" }]);
});

describe("taken for a combo", () => {
  it.each<readonly [PlanCheck, PlanCheck, string]>([
    [{ figure: "usual", value: 60_000 }, { figure: "usual", value: 84_120 }, "usual lap 1:24.12 or under"],
    [{ figure: "scatter", value: 90 }, { figure: "scatter", value: 250 }, "laps differ by 0.25 s or less"],
    [{ figure: "clean", value: 7 }, { figure: "clean", value: 7 }, "7 of 8 laps clean"],
    [{ figure: "driven" }, { figure: "driven" }, "8 laps driven"],
  ])("a run is judged by that combo's figures: %o", (kept, check, goodWhen) => {
    expect(taken({ check: kept, goodWhen: "as it was" })).toEqual({
      ...{ id: "new-1", purpose: "A run", laps: 8, check, goodWhen },
    });
  });

  it("what it has no figure for is left out", () => {
    const none = { id: "new-1", purpose: "A run", laps: 8 };
    expect(taken({ check: { figure: "usual", value: 60_000 }, goodWhen: "x" }, {})).toEqual(none);
    expect(taken({ check: { figure: "best", value: 60_000 }, goodWhen: "x" })).toEqual(none);
    expect(taken({ sector: 1, check: { figure: "sector", value: 20_000 }, goodWhen: "x" })).toEqual({
      ...none,
      sector: 1,
    });
    expect(taken({ sector: 2, check: { figure: "sector", value: 20_000 } })).toMatchObject({
      check: { figure: "sector", value: 31_000 },
      goodWhen: "sector 2 usually 31.000 s or under",
    });
  });

  it("a corner that the layout has not is left out, and with it what was judged there", () => {
    const at = (corner: number) => taken({ corner, check: { figure: "corner", value: 0 }, goodWhen: "x" });
    expect(at(4)).toEqual({ id: "new-1", purpose: "A run", laps: 8 });
    expect(at(3)).toMatchObject({ corner: 3, goodWhen: "no mistake at corner 3" });
  });

  it("on another layout corners and sectors are left out, with what names them", () => {
    const elsewhere = (line: Partial<PlannedRun>) => taken(line, facts, false);
    const drill = {
      rule: "drill",
      purpose: "Stops at the mark, corner 3",
      drill: "braking",
      corner: 3,
    } as const;
    expect(elsewhere({ ...drill, attendTo: "brake earlier for corner 3" })).toEqual({
      ...{ id: "new-1", rule: "drill", purpose: "Stops at the mark", drill: "braking", laps: 8 },
    });
    expect(
      elsewhere({
        ...{ rule: "pace", purpose: "Faster in sector 2 (corners 1 to 3)", sector: 2 },
        ...{ attendTo: "one lap of the replay from outside first, then that line" },
        check: { figure: "sector", value: 31_000 },
      }),
    ).toEqual({
      ...{ id: "new-1", rule: "pace", purpose: "Faster laps", laps: 8 },
      attendTo: "one lap of the replay from outside first, then that line",
    });
    expect(elsewhere({ attendTo: "calm hands at corner 2" })).toEqual({
      ...{ id: "new-1", purpose: "A run", laps: 8 },
    });
    expect(elsewhere({ attendTo: "calm hands" })).toMatchObject({ attendTo: "calm hands" });
  });

  it("the driver's own words stay", () => {
    expect(taken({ goodWhen: "it feels calm" })).toMatchObject({ goodWhen: "it feels calm" });
  });
});
