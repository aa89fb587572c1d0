import { expect, test } from "vitest";
import { editedOnBoth, mergeRows } from "#db";
import { type AllRows, type Lap, noRows, type Run, type Session } from "#domain";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const stamps = { createdAt: 1, updatedAt: 1 };
const bare = <R extends object>(row: R): R => {
  const { deletedAt: _, had: __, disproved: ___, ...rest } = row as Record<string, unknown>;
  return { ...rest, ...stamps } as unknown as R;
};
const session = (fields: Partial<Session> = {}): Session => ({ ...bare(wholeRows.sessions), ...fields });
const lap = (fields: Partial<Lap> = {}): Lap => ({ ...bare(wholeLap), ...fields });
const run = (laps: readonly Lap[], fields: Partial<Run> = {}): Run => ({
  ...bare(wholeRows.runs),
  laps,
  ...fields,
});
const home = {
  cars: [bare(wholeRows.cars)],
  tracks: [bare(wholeRows.tracks)],
  layouts: [bare(wholeRows.layouts)],
  combos: [bare(wholeRows.combos)],
};
const rows = (some: Partial<AllRows>): AllRows => ({ ...noRows, ...home, ...some });
const found = (here: Partial<AllRows>, there: Partial<AllRows>) =>
  editedOnBoth(rows(here), rows(there), mergeRows(rows(here), rows(there)));
const sessions = (here: Partial<Session>, there: Partial<Session>) =>
  found({ sessions: [session(here)] }, { sessions: [session(there)] });

test("a row edited on both sides is told with its fields, both versions, and the side that stays", () => {
  const [here, there] = [
    { updatedAt: 5, note: "late", conditions: "cool" },
    { updatedAt: 6, note: "early", conditions: "cool" },
  ];
  expect(sessions(here, there)).toEqual([
    {
      table: "sessions",
      id: wholeRows.sessions.id,
      place: { date: "2026-03-10", combo: "Varnholt Ring, Short · Club hatch" },
      fields: ["note"],
      here: session(here),
      there: session(there),
      stays: "there",
    },
  ]);
  expect(sessions(there, here)).toMatchObject([{ stays: "here" }]);
});

test("the side that stays is told also where it has learnt of a false stamp of the other", () => {
  expect(sessions({ updatedAt: 6, note: "late" }, { updatedAt: 5, note: "early", had: [9] })).toMatchObject([
    { stays: "here" },
  ]);
});

test("a row that only one side edited, or that one has of the other, is not among them", () => {
  expect(sessions({ note: "late" }, { updatedAt: 6, note: "early" })).toEqual([]);
  expect(sessions({ updatedAt: 6, note: "early" }, { note: "late" })).toEqual([]);
  expect(sessions({ updatedAt: 5, note: "a" }, { updatedAt: 6, note: "b", had: [5] })).toEqual([]);
  expect(sessions({ updatedAt: 6, note: "a", had: [5] }, { updatedAt: 5, note: "b" })).toEqual([]);
});

test("a row that reads the same on both sides is not among them, whatever its stamps", () => {
  expect(sessions({ updatedAt: 5, had: [1] }, { updatedAt: 6, had: [2], disproved: [9] })).toEqual([]);
});

test("a row edited here and deleted there is among them, one deleted on both sides is not", () => {
  expect(sessions({ updatedAt: 5, note: "a" }, { updatedAt: 6, deletedAt: 6 })).toMatchObject([
    { fields: ["note", "deletedAt"], stays: "there" },
  ]);
  expect(sessions({ updatedAt: 5, deletedAt: 5, note: "a" }, { updatedAt: 6, deletedAt: 6 })).toEqual([]);
});

test("of one stamp, a row made once is one version, and rows made apart are both edited", () => {
  expect(sessions({ updatedAt: 5, note: "a" }, { updatedAt: 5, note: "b" })).toEqual([]);
  expect(
    sessions({ createdAt: 2, updatedAt: 5, note: "a" }, { createdAt: 3, updatedAt: 5, note: "b" }),
  ).toMatchObject([{ fields: ["note"] }]);
  expect(sessions({ updatedAt: 5, note: "a" }, { updatedAt: 5, deletedAt: 5, note: "b" })).toHaveLength(1);
});

test("rows made apart under one id, and never edited, were both edited by being made", () => {
  expect(
    sessions({ createdAt: 2, updatedAt: 2, note: "a" }, { createdAt: 3, updatedAt: 3, note: "b" }),
  ).toMatchObject([{ stays: "there" }]);
});

test("a row only one side has is not among them", () => {
  expect(found({}, { sessions: [session({ updatedAt: 5 })] })).toEqual([]);
});

test("a lap edited on both sides is told apart from its run, and one that was moved by its run", () => {
  const other = run([], { id: idAt(71) });
  const here = { sessions: [session()], runs: [run([lap({ updatedAt: 5, ms: 82_000 })]), other] };
  const there = {
    sessions: [session()],
    runs: [run([]), { ...other, laps: [lap({ updatedAt: 6, ms: 82_000 })] }],
  };
  expect(found(here, there)).toMatchObject([
    { table: "laps", id: wholeLap.id, fields: ["runId"], place: { run: 2, lap: 1 }, stays: "there" },
  ]);
});

test("a run edited on both sides is told by what was said of it, not by its laps", () => {
  const here = { runs: [run([lap()], { updatedAt: 5, note: "a" })] };
  const there = { runs: [run([], { updatedAt: 6, note: "b" })] };
  expect(found(here, there)).toMatchObject([{ table: "runs", fields: ["note"] }]);
  expect(found({ runs: [run([lap()], { updatedAt: 5 })] }, { runs: [run([], { updatedAt: 6 })] })).toEqual(
    [],
  );
});

test("the latest day is told first, and what is of no day last", () => {
  const later = { id: idAt(71), date: "2026-03-12" };
  const car = bare(wholeRows.cars);
  const of = (at: number, note: string) => ({
    cars: [{ ...car, updatedAt: at, name: note }],
    sessions: [session({ updatedAt: at, note }), session({ ...later, updatedAt: at, note })],
  });
  expect(found(of(5, "a"), of(6, "b")).map(({ id }) => id)).toEqual([
    idAt(71),
    wholeRows.sessions.id,
    car.id,
  ]);
});
