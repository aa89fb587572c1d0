import { describe, expect, it } from "vitest";
import type { PlannedRun } from "#domain";
import { isTestFirst, planTonight } from "../../../../../src/screens/log/plan/planTonight.ts";
import { aRun, choices } from "../../../stats/someRows.ts";

const plan: readonly PlannedRun[] = [
  { id: "a", purpose: "Warm up", laps: 2, check: { figure: "driven" } },
  { id: "b", purpose: "The next run of the rig test", rigTest: "t" },
  { id: "c", purpose: "Race pace" },
];
const preferences = { ...choices } as Parameters<typeof planTonight>[3];
const tonight = (runs: Parameters<typeof planTonight>[1], of: Parameters<typeof planTonight>[0] = { plan }) =>
  planTonight(
    of,
    runs,
    runs.findLast(({ endedAt }) => endedAt === undefined),
    preferences,
  );

describe("the plan of an open session", () => {
  it("has the line of the run being driven, and the one after it", () => {
    const said = tonight([aRun(1, [90_000], { line: "a" })]);
    expect([said?.line?.id, said?.toCome?.id]).toEqual(["a", "b"]);
    expect(said?.outcomes[0]).toMatchObject({ laps: 1, met: "not yet" });
  });

  it("has the line to come where no run is open, and none for a guest or a run of its own", () => {
    const over = tonight([aRun(1, [90_000], { line: "a", endedAt: 5 })]);
    expect([over?.line?.id, over?.toCome?.id]).toEqual(["b", "b"]);
    expect(tonight([aRun(1, [], { line: "a", guest: "Jo" })])?.line).toBeUndefined();
    expect(tonight([aRun(1, [])])?.line).toBeUndefined();
  });

  it("is none once the session has ended, and where no line can be driven", () => {
    expect(tonight([], { plan, endedAt: 9 })).toBeUndefined();
    expect(tonight([], {})).toBeUndefined();
    expect(tonight([], { plan: [{ purpose: "of an earlier version" }] })).toBeUndefined();
  });

  it("comes after a rig test that waits, but where it has a place for that itself", () => {
    const said = tonight([aRun(1, [], { line: "a" })]);
    expect(isTestFirst(said, plan[0], "t")).toBe(false);
    expect(isTestFirst(said, plan[1], "t")).toBe(true);
    expect(isTestFirst(said, plan[0], "another test")).toBe(true);
    expect(isTestFirst(undefined, undefined, "t")).toBe(true);
    const rigTest = { id: "t", pair: 1, side: "A" } as const;
    const driven = tonight([
      aRun(1, [84_000], { line: "b", rigTest, endedAt: 5 }),
      aRun(2, [], { line: "c" }),
    ]);
    expect(isTestFirst(driven, plan[2], "t")).toBe(true);
  });
});
