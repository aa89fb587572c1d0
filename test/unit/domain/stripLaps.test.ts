import { describe, expect, it } from "vitest";
import { stripLaps, stripMark } from "#domain";
import { aRun } from "../stats/someRows.ts";

describe("stripLaps", () => {
  it("names the laps of one run by their place, and those of a session by their run too", () => {
    const runs = [
      { run: aRun(1, [84_000, 84_100]), number: 1 },
      { run: aRun(4, [84_200]), number: 3 },
    ];
    expect(stripLaps(runs.slice(0, 1), new Set(), true).map(({ name }) => name)).toEqual(["Lap 1", "Lap 2"]);
    expect(stripLaps(runs).map(({ name, run }) => [name, run])).toEqual([
      ["Run 1, lap 1", 0],
      ["Run 1, lap 2", 0],
      ["Run 3, lap 1", 1],
    ]);
  });

  it("tells what sets a run apart, but a wet one by its surface alone", () => {
    const [drill] = stripLaps([{ run: aRun(1, [84_000], { kind: "drill" }), number: 1 }]);
    const [wet] = stripLaps([{ run: aRun(1, [84_000], { surface: "damp" }), number: 1 }]);
    expect([drill?.isApart, drill?.surface]).toEqual([true, "dry"]);
    expect([wet?.isApart, wet?.surface]).toEqual([false, "damp"]);
  });

  it("leaves deleted laps out, and marks the PB", () => {
    const run = aRun(1, [84_000, { ms: 84_100, deletedAt: 5 }, 84_200]);
    const laps = stripLaps([{ run, number: 1 }], new Set(["run s 1 lap 3"]), true);
    expect(laps.map(({ ms, isBest }) => [ms, isBest])).toEqual([
      [84_000, false],
      [84_200, true],
    ]);
  });
});

describe("stripMark", () => {
  it("is that of the remark which decides where the lap counts", () => {
    expect(stripMark({ ms: 84_000, remarks: [{ kind: "traffic" }, { kind: "off" }] })).toBe("off");
    expect(stripMark({ ms: 84_000, remarks: [{ kind: "spin" }, { kind: "out" }] })).toBe("out");
    expect(stripMark({ ms: 84_000 })).toBe("plain");
  });

  it("is a cross without a time, unless the lap left the pits or came back", () => {
    expect(stripMark({ remarks: [{ kind: "off" }] })).toBe("noTime");
    expect(stripMark({ remarks: [{ kind: "in" }] })).toBe("in");
  });
});
