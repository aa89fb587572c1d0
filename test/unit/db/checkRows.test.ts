import "fake-indexeddb/auto";

import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { checkRows, dump } from "#db";
import { type AllRows, everyTable } from "#domain";
import { aFullLogbook } from "../../support/aFullLogbook.ts";

let rows: AllRows;
beforeAll(async () => {
  rows = await dump((await aFullLogbook()).book);
});

type Row = Record<string, unknown>;
/** The rows as a file holds them, to be spoiled. */
const copy = () => JSON.parse(JSON.stringify(rows)) as Record<string, Row[]>;
const spoil = (table: string, change: (row: Row) => void) => {
  const tables = copy();
  const [row] = tables[table] ?? [];
  if (row === undefined) throw new Error(`no row in ${table}`);
  change(row);
  return checkRows(tables).bad.filter((bad) => bad.table === table);
};
const lapOf = (row: Row) => (row["laps"] as Row[])[0] as Row;

test("every row this version writes is taken", () => {
  expect(checkRows(copy())).toEqual({ rows, bad: [] });
});

const wrong: readonly (readonly [string, string, (row: Row) => void])[] = [
  ["a string for a number", "sessions", (row) => Object.assign(row, { startedAt: "12" })],
  ["NaN, which JSON writes as null", "runs", (row) => Object.assign(lapOf(row), { ms: null })],
  ["a negative time", "runs", (row) => Object.assign(lapOf(row), { ms: -83456 })],
  ["a time of zero", "references", (row) => Object.assign(row, { ms: 0 })],
  ["a time with parts of a millisecond", "runs", (row) => Object.assign(lapOf(row), { ms: 83456.5 })],
  ["a time without its decimals", "runs", (row) => Reflect.deleteProperty(lapOf(row), "decimals")],
  ["the date 0000-00-00", "sessions", (row) => Object.assign(row, { date: "0000-00-00" })],
  ["the date 99999-01-01", "rigs", (row) => Object.assign(row, { from: "99999-01-01" })],
  ["29 February in a common year", "sessions", (row) => Object.assign(row, { date: "2026-02-29" })],
  ["an unknown remark", "runs", (row) => Object.assign(lapOf(row), { remarks: [{ kind: "flying" }] })],
  ["an id that is none", "cars", (row) => Object.assign(row, { id: "1" })],
  ["a row without stamps", "tracks", (row) => Reflect.deleteProperty(row, "updatedAt")],
  ["a name of a million letters", "cars", (row) => Object.assign(row, { name: "x".repeat(1_000_000) })],
  [
    "a parent that is not there",
    "runs",
    (row) => Object.assign(row, { sessionId: "00000000-0000-7000-8000-00000000ffff" }),
  ],
  ["laps that are no list", "runs", (row) => Object.assign(row, { laps: { length: 3 } })],
  ["the same lap twice", "runs", (row) => Object.assign(row, { laps: [lapOf(row), lapOf(row)] })],
];

for (const [what, table, change] of wrong)
  test(`${what} is refused, with its table, place and reason`, () => {
    const bad = spoil(table, change);
    expect(bad[0]).toMatchObject({ table, place: 1, why: expect.stringMatching(/./) });
  });

test("the same id twice is taken once", () => {
  const tables = copy();
  tables["cars"]?.push({ ...tables["cars"][0] });
  const { bad, rows: taken } = checkRows(tables);
  expect(bad).toMatchObject([{ table: "cars", place: 2, why: "the same id twice", row: rows.cars[0] }]);
  expect(taken.cars).toHaveLength(rows.cars.length);
});

test("a table no logbook has is named", () => {
  expect(checkRows({ ...copy(), invoices: [{}] }).bad).toMatchObject([
    { table: "invoices", place: 1, why: "no table of a logbook has this name" },
  ]);
});

test("a bad session takes its runs with it, each named", () => {
  const tables = copy();
  Object.assign(tables["sessions"]?.[0] ?? {}, { zone: 7 });
  const { bad, rows: taken } = checkRows(tables);
  expect(taken.sessions).toEqual([]);
  expect(taken.runs).toEqual([]);
  expect(bad.filter(({ why }) => why === "its session is not there")).toHaveLength(rows.runs.length);
});

test("fields a newer version wrote are kept", () => {
  const tables = copy();
  Object.assign(tables["cars"]?.[0] ?? {}, { colour: { name: "red" } });
  expect(checkRows(tables).rows.cars[0]).toMatchObject({ colour: { name: "red" } });
});

for (const key of ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"])
  test(`a field named ${key} pollutes nothing`, () => {
    const tables = JSON.parse(
      JSON.stringify(rows).replace('"name":"Club hatch"', `"name":"Club hatch","${key}":{"polluted":true}`),
    ) as Record<string, Row[]>;
    const { rows: taken, bad } = checkRows(tables);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    for (const row of Object.values(taken).flat()) {
      expect(Object.getPrototypeOf(row)).toBe(Object.prototype);
      expect(Object.keys(row)).not.toContain("__proto__");
    }
    if (key === "prototype") expect(bad).toEqual([]);
    else expect(bad[0]).toMatchObject({ table: "cars", why: `a field named ${key}` });
  });

test("rows nested a million deep are refused without a fall", () => {
  let deep: unknown = 1;
  for (let level = 0; level < 1_000_000; level += 1) deep = [deep];
  expect(checkRows({ ...copy(), cars: [{ ...copy()["cars"]?.[0], deep }] }).bad[0]?.why).toContain(
    "nested deeper",
  );
});

test("whatever one field of one row is changed to, only rows of the right shape are taken", () => {
  const places = Object.entries(copy()).flatMap(([table, list]) =>
    Object.keys(list[0] ?? {}).map((field) => [table, field]),
  );
  fc.assert(
    fc.property(fc.constantFrom(...places), fc.jsonValue(), ([table = "", field = ""], value) => {
      const tables = copy();
      Object.assign(tables[table]?.[0] ?? {}, { [field]: value });
      const { rows: taken, bad } = checkRows(tables);
      const all = everyTable((name) => taken[name].length);
      const left = Object.values(all).reduce((sum, count) => sum + count, 0) + bad.length;
      expect(left).toBe(Object.values(tables).flat().length);
      expect(checkRows(taken)).toEqual({ rows: taken, bad: [] });
    }),
    { seed: 7, numRuns: 300 },
  );
});
