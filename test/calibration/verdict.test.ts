import { describe, expect, test } from "vitest";
import { chanceFrom, type Driver } from "../../demo-data/drivers.ts";
import { type Evenings, verdictsAfter } from "./evenings.ts";

const drivers = Number(process.env["LAP_LEDGER_DRIVERS"] ?? 24);
const seed = Number(process.env["LAP_LEDGER_SEED"] ?? 5);
const evenings = 6;

/** Drivers who have not changed for as long as their runs are looked at. Run shifts of 0.12 % are ordinary (methods, §4). */
const kinds: Readonly<Record<string, Pick<Evenings, "kind" | "runShift"> & Partial<Evenings>>> = {
  "as drawn": { kind: "flat", runShift: 0.0012 },
  "one evening like another": { kind: "flat", runShift: 0, adjust: () => ({ sessionShift: 0.001 }) },
  "good and bad evenings": { kind: "flat", runShift: 0.0012, adjust: () => ({ sessionShift: 0.005 }) },
  "uneven laps": { kind: "flat", runShift: 0.0012, adjust: (): Partial<Driver> => ({ lapNoise: 0.008 }) },
  "good and bad runs": { kind: "flat", runShift: 0.003 },
  "stopped learning": { kind: "stopped", runShift: 0.0012 },
};
const histories: readonly Pick<Evenings, "sessions" | "runs" | "every" | "lapsARun">[] = [
  { sessions: 3, runs: 3, every: 3, lapsARun: 8 },
  { sessions: 6, runs: 1, every: 7, lapsARun: 8 },
  { sessions: 6, runs: 4, every: 3, lapsARun: 6 },
  { sessions: 12, runs: 2, every: 5, lapsARun: 8 },
  { sessions: 24, runs: 3, every: 3, lapsARun: 7 },
];

/** Share of runs told faster or slower, by history. */
function toldOf(name: string): number[] {
  return histories.map((history, at) => {
    const how = { ...history, ...kinds[name] } as Evenings;
    const said = Array.from({ length: drivers }, (_, n) =>
      verdictsAfter(how, evenings, chanceFrom(seed + 1_000_003 * n + 7919 * at + 31 * name.length)),
    ).flat();
    return said.filter(({ word }) => word === "faster" || word === "slower").length / said.length;
  });
}

const shares = new Map(Object.keys(kinds).map((name) => [name, toldOf(name)]));
const mean = (all: readonly number[]) => all.reduce((sum, share) => sum + share, 0) / all.length;

describe("a driver who has not changed is told faster or slower", () => {
  const table = [...shares].map(
    ([name, told]) => `${name.padEnd(26)}${told.map((share) => share.toFixed(3)).join("  ")}`,
  );
  // biome-ignore lint/suspicious/noConsole: the table is read by whoever changes the rule
  console.log(table.join("\n"));

  test("in at most one run in ten, all of them together", () => {
    expect(mean([...shares.values()].flat())).toBeLessThanOrEqual(0.1);
  });

  // One session's runs share its shift, so a kind's share is known to about 0.015, one history's to about 0.03.
  test.each(Object.keys(kinds))("in at most one run in ten, %s", (name) => {
    expect(mean(shares.get(name) ?? [])).toBeLessThanOrEqual(0.12);
    expect(Math.max(...(shares.get(name) ?? []))).toBeLessThanOrEqual(0.16);
  });
});

test("one who is 2 % faster tonight is told so in most runs, once there are a dozen evenings", () => {
  const how: Evenings = {
    kind: "flat",
    sessions: 12,
    runs: 3,
    every: 3,
    lapsARun: 8,
    runShift: 0.0012,
    tonight: -0.02,
  };
  const said = Array.from({ length: 10 }, (_, n) =>
    verdictsAfter(how, evenings, chanceFrom(seed + n)),
  ).flat();
  expect(said.filter(({ word }) => word === "faster").length / said.length).toBeGreaterThan(0.9);
  expect(said.filter(({ word }) => word === "slower")).toEqual([]);
});

test("one who spins in three of eight laps is never told faster, however fast the others are", () => {
  const how: Evenings = {
    kind: "flat",
    sessions: 12,
    runs: 3,
    every: 3,
    lapsARun: 8,
    runShift: 0.0012,
    tonight: -0.03,
    spins: 3,
  };
  const said = Array.from({ length: 10 }, (_, n) =>
    verdictsAfter(how, evenings, chanceFrom(seed + n)),
  ).flat();
  expect(new Set(said.map(({ word }) => word))).toEqual(new Set(["untidy"]));
});
