import "fake-indexeddb/auto";

import fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { checkBeside, checkRows, dump, idsOf } from "#db";
import { type AllRows, everyTable, type Lap, noRows, type TableName, tableNames } from "#domain";
import { aFullLogbook } from "../../../support/aFullLogbook.ts";

let rows: AllRows;
beforeAll(async () => {
  rows = await dump((await aFullLogbook()).book);
});

const nowhere = "00000000-0000-7000-8000-00000000ffff";
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

test("rows a file has set aside are no table nobody knows", () => {
  expect(checkRows({ ...copy(), aside: [{ id: "0123456789abcdef" }] })).toEqual({ rows, bad: [] });
});

test("a lap stands in one run only: the second run that holds it is refused", () => {
  const tables = copy();
  const [first] = tables["runs"] ?? [];
  tables["runs"]?.push({ ...first, id: nowhere });
  expect(checkRows(tables).bad).toMatchObject([
    { table: "runs", place: rows.runs.length + 1, why: "a lap with the same id twice" },
  ]);
});

test("a field called laps, of a row that is no run, is a field a newer version wrote, whatever it holds", () => {
  for (const laps of [[null], [7], "none"]) {
    const tables = copy();
    Object.assign(tables["cars"]?.[0] ?? {}, { laps });
    expect(checkRows(tables).rows.cars[0]).toMatchObject({ laps });
  }
});

test("a row that does not fit beside those of a logbook is named by its place", () => {
  const here = { ...noRows, tracks: [{ id: nowhere, createdAt: 1, updatedAt: 1, name: "Hill" }] };
  const [car] = rows.cars;
  if (car === undefined) throw new Error("no car");
  const cars = { ...noRows, cars: [car, { ...car, id: nowhere }] };
  expect(checkBeside(cars, here)).toEqual({
    rows: { ...noRows, cars: [car] },
    bad: [{ table: "cars", place: 2, why: "its id is that of another row", row: { ...car, id: nowhere } }],
  });
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

/** Fields that name a row: the table, the field, where the named row must be, and whether the row can be without it. */
const links: readonly (readonly [TableName, (row: Row) => Row, string, TableName, boolean])[] = [
  ["layouts", (row) => row, "trackId", "tracks", false],
  ["combos", (row) => row, "carId", "cars", false],
  ["combos", (row) => row, "layoutId", "layouts", false],
  ["pages", (row) => row, "comboId", "combos", false],
  ["references", (row) => row, "comboId", "combos", false],
  ["sessions", (row) => row, "comboId", "combos", false],
  ["runs", (row) => row, "sessionId", "sessions", false],
  ["runs", (row) => row, "comboId", "combos", false],
  ["runs", (row) => row, "rigId", "rigs", true],
  ["runs", ofTest, "id", "rigTests", true],
  ["targets", (row) => row, "comboId", "combos", false],
  ["forecasts", (row) => row, "targetId", "targets", false],
  ["forecasts", (row) => row, "comboId", "combos", false],
  ["rigTests", (row) => row, "comboId", "combos", false],
  ["rigTests", (row) => row, "rigA", "rigs", true],
  ["rigTests", (row) => row, "rigB", "rigs", true],
  ["rigTests", (row) => (row["pairs"] as Row[])[0] as Row, "runA", "runs", true],
  ["rigTests", (row) => (row["pairs"] as Row[])[0] as Row, "runB", "runs", true],
  ["cornerReviews", (row) => row, "comboId", "combos", false],
  ["cornerReviews", (row) => row, "sessionId", "sessions", true],
];

/** The place in a rig test that a run is given here. */
function ofTest(run: Row): Row {
  const place: Row = { pair: 1, side: "A" };
  run["rigTest"] = place;
  return place;
}

for (const [table, holder, field, to, isLoose] of links)
  test(`${field} of ${table} leads into ${to} and no other table`, () => {
    for (const other of tableNames) {
      if (other === to || rows[other].length === 0) continue;
      const bad = spoil(table, (row) => Object.assign(holder(row), { [field]: rows[other][0]?.id }));
      expect(bad[0]?.why, other).toMatch(/row of another table$/);
    }
    const lap = rows.runs.find(({ laps }) => laps.length > 0)?.laps[0]?.id;
    expect(spoil(table, (row) => Object.assign(holder(row), { [field]: lap }))[0]?.why).toMatch(
      /another table$/,
    );
    // What a row can be without may have been deleted long ago: the row stays.
    const gone = spoil(table, (row) => Object.assign(holder(row), { [field]: nowhere }));
    if (isLoose) expect(gone).toEqual([]);
    else expect(gone[0]?.why).toMatch(/is not there$/);
  });

test("an id stands once, in whatever table", () => {
  for (const table of tableNames)
    for (const other of tableNames) {
      if (other <= table || rows[table].length === 0 || rows[other].length === 0) continue;
      const tables = copy();
      Object.assign(tables[other]?.[0] ?? {}, { id: rows[table][0]?.id });
      expect(checkRows(tables).bad.length, `${table} ${other}`).toBeGreaterThan(0);
    }
  const bad = spoil("runs", (row) => Object.assign(lapOf(row), { id: rows.cars[0]?.id }));
  expect(bad[0]?.why).toBe("a lap with the id of a row");
});

test("a row that fits alone does not fit beside one of the same id in another table", () => {
  const here = {
    ...noRows,
    tracks: [{ id: rows.cars[0]?.id ?? "", createdAt: 1, updatedAt: 1, name: "Hill" }],
  };
  expect(checkBeside(rows, here).bad[0]).toMatchObject({
    table: "cars",
    why: "its id is that of another row",
  });
  const lap = { ...rows.runs[0]?.laps[0], id: rows.cars[0]?.id ?? "" } as Lap;
  const lapsHere = { ...noRows, runs: rows.runs.map((run) => ({ ...run, id: nowhere, laps: [lap] })) };
  expect(checkBeside(rows, lapsHere).bad[0]).toMatchObject({
    table: "cars",
    why: "its id is that of another row",
  });
  const rig = { ...noRows, cars: [{ id: nowhere, createdAt: 1, updatedAt: 1, name: "GT" }] };
  const [run] = rows.runs;
  const loose = { ...rows, runs: run === undefined ? [] : [{ ...run, rigId: nowhere }] };
  expect(checkBeside(loose, noRows).bad).toEqual([]);
  expect(checkBeside(loose, rig).bad[0]).toMatchObject({
    table: "runs",
    why: "its rig is a row of another table",
  });
});

test("what a file does not hold is looked for in its own table of the logbook", () => {
  const [session] = copy()["sessions"] ?? [];
  const alone = { sessions: [session] };
  expect(checkRows(alone).bad[0]?.why).toBe("its combo is not there");
  expect(checkRows(alone, { known: idsOf(rows) }).bad).toEqual([]);
  const known = { ...idsOf(noRows), cars: new Set(rows.combos.map(({ id }) => id)) };
  expect(checkRows(alone, { known }).bad[0]?.why).toBe("its combo is a row of another table");
});

const limits: readonly (readonly [string, string, (row: Row) => void])[] = [
  ["a lap of 99 ms", "runs", (row) => Object.assign(lapOf(row), { ms: 99, sectors: undefined })],
  ["a lap of 24 h and 1 ms", "runs", (row) => Object.assign(lapOf(row), { ms: 86_400_001 })],
  [
    "sectors of another lap",
    "runs",
    (row) => Object.assign(lapOf(row), { sectors: [27_100, 31_456, 44_900] }),
  ],
  ["a sector that says no decimals", "runs", (row) => Object.assign(lapOf(row), { sectorDecimals: [2, 3] })],
  ["a sector of four decimals", "runs", (row) => Object.assign(lapOf(row), { sectorDecimals: [2, 4, 1] })],
  ["a lap without a place", "runs", (row) => Object.assign(lapOf(row), { n: 1e308 })],
  ["a screen of 9 cm", "rigs", (row) => Object.assign(row["screen"] as Row, { width: 0.09 })],
  ["a screen of 11 m", "rigs", (row) => Object.assign(row["screen"] as Row, { width: 11 })],
  ["a view of 400°", "rigs", (row) => Object.assign(row["view"] as Row, { degrees: 400 })],
  ["a layout of 5 m", "layouts", (row) => Object.assign(row, { length: 5 })],
  [
    "a corner of half a metre",
    "layouts",
    (row) => Object.assign(row, { corners: [{ number: 1, radius: 0.5 }] }),
  ],
  ["a session of 1969", "sessions", (row) => Object.assign(row, { date: "1969-12-31" })],
  ["a target by 2200", "targets", (row) => Object.assign(row, { by: "2200-01-01" })],
  ["a best lap of nothing", "targets", (row) => Object.assign(row, { value: 0 })],
  ["a stamp no calendar holds", "cars", (row) => Object.assign(row, { deletedAt: 8.64e15 })],
  ["preferences of another id", "preferences", (row) => Object.assign(row, { id: nowhere })],
  ["a time zone of spaces", "sessions", (row) => Object.assign(row, { zone: "Europe / Berlin" })],
];
for (const [what, table, change] of limits)
  test(`${what} is out of range`, () => {
    expect(spoil(table, change)[0]).toMatchObject({ table, why: expect.stringMatching(/./) });
  });

test("a time zone that is not known here is taken: a newer one may be right", () => {
  for (const zone of ["Foo/Bar", "Antarctica/Newest_Station", "+05:45", "Etc/GMT-14"])
    expect(spoil("sessions", (row) => Object.assign(row, { zone }))).toEqual([]);
});

test("what cannot have happened yet is set aside whole, and asks about the clock", () => {
  const now = Date.UTC(2026, 2, 10, 20);
  const ask = (date: string, startedAt: number, known = idsOf(noRows)) => {
    const tables = copy();
    Object.assign(tables["sessions"]?.[0] ?? {}, { date, startedAt, endedAt: startedAt });
    return checkRows(tables, { now, known });
  };
  const late = Date.UTC(2036, 4, 5, 18);
  const why = "dated 2036-05-05, after tomorrow; is this device’s clock right?";
  const { bad, rows: taken } = ask("2036-05-05", late);
  expect(bad[0]).toMatchObject({
    table: "sessions",
    place: 1,
    why,
    row: { date: "2036-05-05", startedAt: late },
  });
  expect(bad.slice(1).map(({ row }) => row)).toEqual(rows.runs);
  expect(taken.combos).toEqual(rows.combos);
  // Tomorrow has begun somewhere. A row that is there already is asked about all the same: the file may have moved it.
  expect(ask("2026-03-12", now + 86_400_000).bad).toEqual([]);
  expect(ask("2036-05-05", late, idsOf(rows)).bad.map(({ why }) => why)).toEqual([why]);
  expect(checkRows(copy()).bad).toEqual([]);
});

test("a session that a clock ahead wrote in good faith is taken, and asked about where it is shown", () => {
  const now = Date.UTC(2026, 2, 10, 20);
  const late = Date.UTC(2036, 4, 5, 18);
  for (const stamps of [{ createdAt: late, updatedAt: late }, { had: [late] }]) {
    const tables = copy();
    Object.assign(tables["sessions"]?.[0] ?? {}, { date: "2036-05-05", startedAt: late, ...stamps });
    Object.assign(tables["sessions"]?.[0] ?? {}, { endedAt: late });
    expect(checkRows(tables, { now }).bad).toEqual([]);
  }
});
