import { expect, test } from "vitest";
import type { PlannedRun } from "#domain";
import { outcomeRows } from "#words";
import { aRun, choices } from "../stats/someRows.ts";

const plan: readonly PlannedRun[] = [
  { id: "a", purpose: "Warm up", kind: "warm-up", effort: "easy", laps: 2, check: { figure: "driven" } },
  {
    id: "b",
    purpose: "Corner 5",
    laps: 3,
    effort: "learning",
    goodWhen: "all 3 laps clean",
    check: { figure: "clean", value: 3 },
  },
  { id: "c", purpose: "As it comes", laps: 4 },
  { id: "d", purpose: "See what it brought", laps: 8, skipped: true },
];

test("a plan stands beside its outcome: what it came to and in which runs, and softly what nobody drove", () => {
  const runs = [
    aRun(1, [90_000, 89_000], { line: "a" }),
    aRun(2, [85_000, 85_000], { line: "b" }),
    aRun(3, [85_000], { line: "b" }),
    aRun(4, [], { line: "c" }),
  ];
  expect(outcomeRows(plan, runs, choices)).toEqual([
    {
      id: "a",
      purpose: "Warm up",
      task: "2 laps, warm-up, easy",
      goodWhen: undefined,
      cameTo: "2 of 2 laps driven in run 1",
      met: "Good",
      isSoft: false,
    },
    {
      id: "b",
      purpose: "Corner 5",
      task: "3 laps, learning effort",
      goodWhen: "all 3 laps clean",
      cameTo: "3 of 3 laps clean in runs 2 and 3",
      met: "Good",
      isSoft: false,
    },
    expect.objectContaining({ id: "c", cameTo: "", met: "Not driven", isSoft: true }),
    expect.objectContaining({ id: "d", cameTo: "", met: "Left out", isSoft: true }),
  ]);
});
