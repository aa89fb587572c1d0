import { expect, test } from "vitest";
import { currentRun, type NumberedRun, numberedRuns, runNumber, runPlaces } from "#combo";
import type { Run } from "#domain";
import { aRun } from "../stats/someRows.ts";

const named = (runs: readonly NumberedRun<Run | undefined>[]) =>
  runs.map(({ run, number }) => [run?.id ?? "cannot be read", number]);

test("a run that was emptied has no number, and the runs after it close up", () => {
  const runs = [aRun(1, [84_000]), aRun(2, []), aRun(3, [84_000])];
  expect(named(numberedRuns(runs))).toEqual([
    ["run s 1", 1],
    ["run s 3", 2],
  ]);
});

test("the run being driven has its number before its first lap", () => {
  const runs = [aRun(1, [84_000], { endedAt: 5 }), aRun(2, [])];
  const current = currentRun(runs);
  expect(current?.n).toBe(2);
  expect(named(numberedRuns(runs, current))).toEqual([
    ["run s 1", 1],
    ["run s 2", 2],
  ]);
});

test("a summary and a guest's run are counted, whatever order the rows come in", () => {
  const runs = [
    aRun(3, [84_000]),
    aRun(1, [], { summary: { laps: 8 } }),
    aRun(2, [85_000], { guest: "Ana" }),
  ];
  expect(named(numberedRuns(runs)).map(([, number]) => number)).toEqual([1, 2, 3]);
  expect(named(numberedRuns(runs))[0]?.[0]).toBe("run s 1");
});

test("a run in which no more than tries of a drill were counted has its number", () => {
  const counts = [{ drill: "braking", corner: 5, tries: 3, good: 2 }] as const;
  expect(named(numberedRuns([aRun(1, [], { counts }), aRun(2, [84_000])]))).toEqual([
    ["run s 1", 1],
    ["run s 2", 2],
  ]);
});

test("a run that cannot be read keeps its place", () => {
  const runs = [aRun(1, [84_000]), aRun(3, [84_000])];
  expect(named(runPlaces(runs, [{ id: "x", n: 2 }]))).toEqual([
    ["run s 1", 1],
    ["cannot be read", 2],
    ["run s 3", 3],
  ]);
});

test("an ended run and a summary are not being driven", () => {
  expect(currentRun([aRun(1, [1], { endedAt: 1 }), aRun(2, [], { summary: { laps: 1 } })])).toBeUndefined();
});

test("a deleted run is called by the place it had", () => {
  const runs = [aRun(1, [84_000]), aRun(2, []), aRun(4, [84_000])];
  expect(runNumber(aRun(3, [84_000]), runs)).toBe(2);
  expect(runNumber(runs[1] as Run, runs)).toBe(2);
  expect(runNumber(runs[2] as Run, runs)).toBe(2);
  expect(runNumber(aRun(5, [84_000]), runs)).toBe(3);
});

test("two runs written as the same one on two devices have their numbers in the same order on both", () => {
  const [a, b] = [
    { ...aRun(2, [84_000]), id: "a" },
    { ...aRun(2, [84_000]), id: "b" },
  ];
  for (const runs of [
    [aRun(1, [84_000]), a, b],
    [b, a, aRun(1, [84_000])],
  ])
    expect(named(numberedRuns(runs)).map(([id]) => id)).toEqual(["run s 1", "a", "b"]);
});
