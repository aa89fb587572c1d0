import { expect, it } from "vitest";
import type { Run } from "#domain";
import { sessionChanges } from "../../../../../src/screens/log/session/sessionChanges.ts";
import { aRun } from "../../../stats/someRows.ts";

const rig = (id: string, name: string) => ({ id, name, from: "2026-09-30" });
const run = (n: number, fields: Partial<Run>) => aRun(n, [84_000], { id: `run ${n}`, ...fields });
const said = (runs: readonly Run[], before?: readonly Run[]) =>
  sessionChanges({
    runs: runs.map((one, index) => ({ run: one, number: index + 1 })),
    before: before && { date: "2026-11-26", runs: before },
    rigs: [rig("a", "Lower gain"), rig("b", "")],
  }).map(
    ({ from, what, now, rigId }) => `${from}: ${what} ${now}${rigId === undefined ? "" : ` (${rigId})`}`,
  );

it("is told against the last run of the session before, and from run to run", () => {
  const before = [run(1, { rigId: "b" }), run(2, { rigId: "b", tyres: "soft" })];
  const now = [
    run(1, { rigId: "a", tyres: "soft" }),
    run(2, { rigId: "a", tyres: "hard " }),
    run(3, { rigId: "b", tyres: "hard", setup: "more wing" }),
  ];
  expect(said(now, before)).toEqual([
    "Since Thu 26 Nov 2026: rig Lower gain (a)",
    "From run 2 on: tyres hard",
    "From run 3 on: rig settings from Wed 30 Sep 2026 (b)",
  ]);
  expect(said(now).at(0)).toBe("From run 2 on: tyres hard");
});

it("leaves out guests, runs without laps, and what is not noted on both sides", () => {
  const before = [run(1, { rigId: "a" }), run(2, { rigId: "b", guest: "Jo" })];
  expect(
    said([run(1, { rigId: "a" }), aRun(2, [], { rigId: "b" }), run(3, { tyres: "soft" })], before),
  ).toEqual([]);
});
