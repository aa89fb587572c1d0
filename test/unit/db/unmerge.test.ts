import { expect, test } from "vitest";
import { unmergeRows } from "#db";
import { type AllRows, type Lap, noRows, type Run } from "#domain";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const { cars: car, combos: combo, layouts: layout, tracks: track, sessions: session, rigs: rig } = wholeRows;
const named = <R extends object>(row: R, note: string): R => ({ ...row, note });
const lap = (n: number, ms: number, place = n): Lap => ({ ...wholeLap, id: idAt(80 + n), n: place, ms });
const runOf = (...laps: readonly Lap[]): Run => ({ ...wholeRows.runs, laps });
const rows = (some: Partial<AllRows>): AllRows => ({ ...noRows, ...some });

/** All a run hangs on. */
const home = {
  cars: [car],
  tracks: [track],
  layouts: [layout],
  combos: [combo],
  sessions: [session],
  rigs: [rig],
};

test("a row that still is what the merge made of it becomes what it was, and one only the merge brought goes", () => {
  const [before, after] = [
    rows({ cars: [car] }),
    rows({ cars: [{ ...car, name: "Club" }], tracks: [track] }),
  ];
  expect(unmergeRows(after, before, after)).toEqual({ rows: before, skipped: [] });
});

test("a row the merge left as it was stays as it is now, changed since or not", () => {
  const same = rows({ cars: [car] });
  const now = rows({ cars: [{ ...car, name: "Club" }] });
  expect(unmergeRows(now, same, same)).toEqual({ rows: now, skipped: [] });
});

test("a row made since the merge stays", () => {
  const now = rows({ cars: [car, { ...car, id: idAt(70) }] });
  expect(unmergeRows(now, rows({}), rows({ cars: [car] }))).toEqual({
    rows: rows({ cars: [{ ...car, id: idAt(70) }] }),
    skipped: [],
  });
});

test("a row that was changed since the merge stays, and that is said once", () => {
  const other = { ...car, id: idAt(70) };
  const now = rows({ cars: [car, other].map((row) => ({ ...row, name: "changed" })) });
  expect(unmergeRows(now, rows({}), rows({ cars: [car, other] }))).toEqual({
    rows: now,
    skipped: ["a row that was changed since"],
  });
});

test("laps are taken back one by one, in the order of the run", () => {
  const before = rows({ ...home, runs: [runOf(lap(1, 83_000), lap(3, 85_000))] });
  const after = rows({ ...home, runs: [runOf(lap(1, 82_000), lap(2, 84_000), lap(3, 85_000))] });
  const now = rows({
    ...home,
    runs: [runOf(lap(1, 82_000), lap(2, 84_000), lap(3, 85_000), lap(4, 86_000, 0))],
  });
  expect(unmergeRows(now, before, after)).toEqual({
    rows: rows({ ...home, runs: [runOf(lap(4, 86_000, 0), lap(1, 83_000), lap(3, 85_000))] }),
    skipped: [],
  });
});

test("laps of one place stand in the order of their ids, as everywhere", () => {
  const laps = [lap(3, 85_000, 1), lap(1, 83_000, 1), lap(2, 84_000, 1)];
  const same = rows({ ...home, runs: [runOf(...laps)] });
  const [run] = unmergeRows(same, same, same).rows.runs;
  expect(run?.laps.map(({ ms }) => ms)).toEqual([83_000, 84_000, 85_000]);
});

test("a lap that was changed since the merge stays, and is told from a row", () => {
  const before = rows({ ...home, runs: [runOf(lap(1, 83_000))] });
  const after = rows({ ...home, runs: [runOf(lap(1, 82_000))] });
  const now = rows({ ...home, runs: [runOf(lap(1, 81_000))] });
  expect(unmergeRows(now, before, after)).toEqual({ rows: now, skipped: ["a lap that was changed since"] });
});

test("a run is taken back without its laps: one typed since keeps it, with all it hangs on and nothing else", () => {
  const brought = { ...home, cars: [car, { ...car, id: idAt(70) }], runs: [runOf(lap(1, 83_000))] };
  const now = rows({ ...brought, runs: [runOf(lap(1, 83_000), lap(2, 84_000))] });
  expect(unmergeRows(now, rows({}), rows(brought))).toEqual({
    rows: rows({ ...home, runs: [runOf(lap(2, 84_000))] }),
    skipped: ["something that is in use by now"],
  });
});

test("a run the merge changed becomes what it was also where a lap was typed into it since", () => {
  const before = rows({ ...home, runs: [runOf(lap(1, 83_000))] });
  const after = rows({ ...home, runs: [named(runOf(lap(1, 83_000)), "from the phone")] });
  const now = rows({ ...home, runs: [named(runOf(lap(1, 83_000), lap(2, 84_000)), "from the phone")] });
  expect(unmergeRows(now, before, after)).toEqual({
    rows: rows({ ...home, runs: [runOf(lap(1, 83_000), lap(2, 84_000))] }),
    skipped: [],
  });
});

test("a lap that was moved since the merge keeps the run it is in now", () => {
  const brought = rows({ ...home, runs: [runOf(lap(1, 83_000))] });
  const next = { ...runOf(), id: idAt(71) };
  const now = rows({ ...home, runs: [runOf(), { ...next, laps: [lap(1, 83_000)] }] });
  const { rows: left, skipped } = unmergeRows(now, rows(home), brought);
  expect(left.runs).toEqual([{ ...next, laps: [lap(1, 83_000)] }]);
  expect(skipped).toEqual(["a lap that was changed since"]);
});

test("a run that names other rig settings since the merge keeps those the merge brought", () => {
  const { rigId: _, ...without } = runOf();
  const before = rows({ ...home, rigs: [], runs: [without] });
  const now = rows({ ...home, runs: [runOf()] });
  expect(unmergeRows(now, before, rows({ ...home, runs: [without] }))).toEqual({
    rows: now,
    skipped: ["something that is in use by now"],
  });
});
