import { expect, it } from "vitest";
import type { Run } from "#domain";
import { bestRun } from "../../../../../src/screens/log/session/bestRun.ts";
import { aRun, choices, type Told } from "../../../stats/someRows.ts";

const preferences = { id: "preferences", createdAt: 0, updatedAt: 0, ...choices } as Parameters<
  typeof bestRun
>[0]["preferences"];
const laps = (usual: number): Told[] => [-200, 100, -50, 150, 0].map((ms) => usual + ms);
const best = (...runs: readonly Run[]) =>
  bestRun({ shown: runs.map((run, index) => ({ run, number: index + 1 })), preferences })?.number;

it("is the pace run with the fastest usual lap, of those with five laps", () => {
  expect(best(aRun(1, laps(84_400)), aRun(2, laps(84_100)), aRun(3, laps(84_300)))).toBe(2);
  expect(best(aRun(1, laps(84_400)), aRun(2, laps(84_100)), aRun(3, laps(80_000).slice(1)))).toBe(2);
  expect(best(aRun(1, laps(84_400)), aRun(2, laps(84_100)), aRun(3, laps(80_000), { kind: "drill" }))).toBe(
    2,
  );
});

it("is none where there are not two to choose from", () => {
  expect(best(aRun(1, laps(84_400)))).toBeUndefined();
  expect(best(aRun(1, laps(84_400)), aRun(2, laps(80_000), { guest: "Jo" }))).toBeUndefined();
});
