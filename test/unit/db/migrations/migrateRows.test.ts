import { expect, test } from "vitest";
import { asideRow } from "#domain";
import { migrateRows } from "../../../../src/db/migrations/migrateRows.ts";
import type { Migration } from "../../../../src/db/migrations/migration.ts";
import { stepRow } from "../../../../src/db/migrations/stepRow.ts";

/** Fails at rows named "bad", drops those without a name, and counts the wheels of the others. */
const wheels: Migration = {
  version: 2,
  indexes: {},
  rows: {
    cars: (row) => {
      if (row["name"] === "bad") throw new Error("no wheels");
      return row["name"] === "" ? undefined : { ...row, wheels: 4 };
    },
  },
};
const shout: Migration = {
  version: 3,
  indexes: { notes: null },
  rows: { cars: (row) => ({ ...row, name: `${row["name"]}!` }) },
};
const steps = [{ version: 1, indexes: { cars: "id", notes: "id" }, rows: {} }, wheels, shout];
const car = (name: string) => ({ id: `id of ${name}`, name });
const aside = (name: string) => asideRow("cars", car(name), "not brought to schema 2: no wheels", 1);

test("a row is brought one step further, dropped, or set aside as it was with the step's reason", () => {
  expect(stepRow(wheels, "cars", car("Club"))).toEqual({ row: { ...car("Club"), wheels: 4 } });
  expect(stepRow(wheels, "cars", car(""))).toEqual({});
  expect(stepRow(wheels, "cars", car("bad"))).toEqual({ aside: aside("bad") });
});

test("what is thrown and is no error is said as it is", () => {
  const odd: Migration = {
    ...wheels,
    rows: {
      cars: () => {
        throw "a text";
      },
    },
  };
  expect(stepRow(odd, "cars", car("x")).aside).toMatchObject({
    why: "not brought to schema 2: a text",
    schema: 1,
  });
});

test("rows are brought from the schema they were written with to the newest, step by step", () => {
  const rows = { cars: [car("Club")], tracks: [car("Fen")], notes: [car("n")] };
  const [club] = rows.cars;
  expect(migrateRows(rows, 1, steps)).toEqual({
    cars: [{ ...club, name: "Club!", wheels: 4 }],
    tracks: rows.tracks,
  });
  expect(migrateRows(rows, 2, steps)).toEqual({ cars: [{ ...club, name: "Club!" }], tracks: rows.tracks });
  expect(migrateRows(rows, 3, steps)).toEqual(rows);
});

test("rows at which a step fails stand aside behind those that were aside already, the others go on", () => {
  const rows = { cars: [car("bad"), car("Club"), car("")] };
  const old = { id: "0123456789abcdef" };
  const cars = [{ ...car("Club"), name: "Club!", wheels: 4 }];
  expect(migrateRows(rows, 1, steps)).toEqual({ cars, aside: [aside("bad")] });
  expect(migrateRows({ ...rows, aside: [old] }, 1, steps)).toEqual({ cars, aside: [old, aside("bad")] });
  expect(migrateRows({ cars: [], aside: [old] }, 1, steps)).toEqual({ cars: [], aside: [old] });
  expect(migrateRows({ cars: [] }, 1, steps)).toEqual({ cars: [] });
});
