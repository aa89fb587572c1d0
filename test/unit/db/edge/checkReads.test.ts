import "fake-indexeddb/auto";

import type { Table } from "dexie";
import { expect, test } from "vitest";
import { newestSchema } from "#db";
import type { Car, Run } from "#domain";
import { asideRow } from "#domain";
import { readUnchecked } from "../../../../src/db/edge/checkReads.ts";
import { aLogbook } from "../../../support/aLogbook.ts";
import { idAt, wholeLap, wholeRows, withAt } from "../../../support/wholeRows.ts";

const car = (n: number, name: unknown = `car ${n}`) => ({ ...wholeRows.cars, id: idAt(n), name });
const why = "name: not a text";

/** A logbook with these cars, which were not looked at when they were stored. */
async function withCars(...cars: readonly object[]) {
  const { book } = await aLogbook();
  await book.database.table("cars").bulkAdd([...cars]);
  return book;
}
const found = (bad: { readonly id: string }) => ({
  table: "cars",
  id: bad.id,
  key: bad.id,
  aside: asideRow("cars", bad, why, newestSchema),
});
const numbers = (rows: readonly (Car | undefined)[]) => rows.map((row) => row && Number(row.id.slice(-3)));

test("rows that can be drawn are given as they are stored, and nothing is noted", async () => {
  const book = await withCars(car(1), car(2));
  expect(await book.tables.cars.toArray()).toEqual([car(1), car(2)]);
  expect(await book.tables.cars.get(idAt(1))).toEqual(car(1));
  expect(await book.tables.cars.get(idAt(7))).toBeUndefined();
  expect(book.unreadable.get()).toEqual([]);
  book.close();
});

test("a row asked for by its key that cannot be drawn is as if it were not there, and is noted as it is", async () => {
  const bad = car(2, 42);
  const book = await withCars(car(1), bad, car(3));
  expect(await book.tables.cars.get(idAt(2))).toBeUndefined();
  expect(book.unreadable.get()).toEqual([found(bad)]);
  expect(numbers(await book.tables.cars.bulkGet([1, 2, 3, 4].map(idAt)))).toEqual([
    1,
    undefined,
    3,
    undefined,
  ]);
  expect(book.unreadable.get()).toEqual([found(bad)]);
  book.close();
});

test("all rows are asked for, and those that can be drawn are given", async () => {
  const bad = [car(2, 42), car(4, null)];
  const book = await withCars(car(1), ...bad, car(3));
  expect(numbers(await book.tables.cars.toArray())).toEqual([1, 3]);
  expect(book.unreadable.get()).toEqual(bad.map(found));
  book.close();
});

test("keys and counts come of all rows, and nothing is noted for them", async () => {
  const book = await withCars(car(1), car(2, 42));
  expect(await book.tables.cars.count()).toBe(2);
  expect(await book.tables.cars.toCollection().primaryKeys()).toEqual([idAt(1), idAt(2)]);
  const keys: unknown[] = [];
  await book.tables.cars.orderBy("id").eachPrimaryKey((key) => keys.push(key));
  expect(keys).toEqual([idAt(1), idAt(2)]);
  expect(book.unreadable.get()).toEqual([]);
  book.close();
});

test("where so many rows are asked for, as many are given as can be drawn", async () => {
  const cars = [...[1, 2, 3, 4, 5, 6].map((n) => car(n, 42)), car(7), car(8), car(9)];
  const book = await withCars(...cars);
  const first = async (n: number) => numbers(await book.tables.cars.toCollection().limit(n).toArray());
  expect(await first(1)).toEqual([7]);
  expect(await first(2)).toEqual([7, 8]);
  expect(await first(3)).toEqual([7, 8, 9]);
  expect(await first(50)).toEqual([7, 8, 9]);
  expect(numbers(await book.tables.cars.orderBy("id").reverse().limit(2).toArray())).toEqual([9, 8]);
  expect(book.unreadable.get()).toHaveLength(6);
  book.close();
});

test("a bad row among the last ones asked for takes no other with it", async () => {
  const book = await withCars(car(1), car(2, 42), car(3), car(4));
  expect(numbers(await book.tables.cars.toCollection().limit(2).toArray())).toEqual([1, 3]);
  book.close();
});

test("one row after another is stepped through, forwards and backwards, past those that cannot be drawn", async () => {
  const bad = car(2, 42);
  const book = await withCars(car(1), bad, car(3), car(4, 42));
  const seen: string[] = [];
  await book.tables.cars.orderBy("id").each((row, { key, primaryKey }) => {
    seen.push(`${row.name} ${key === row.id && primaryKey === row.id}`);
  });
  expect(seen).toEqual(["car 1 true", "car 3 true"]);
  const even = (row: Car) => row.name !== "car 1";
  expect(numbers(await book.tables.cars.orderBy("id").reverse().filter(even).toArray())).toEqual([3]);
  expect(book.unreadable.get()).toContainEqual(found(bad));
  book.close();
});

const writes: readonly (readonly [string, (cars: Table) => PromiseLike<unknown>])[] = [
  ["by its key", (cars) => cars.get(idAt(2))],
  ["among several", (cars) => cars.bulkGet([idAt(1), idAt(2)])],
  ["among all", (cars) => cars.toArray()],
  ["stepping through them", (cars) => cars.toCollection().each(() => undefined)],
  ["to change it", (cars) => cars.toCollection().modify({ name: "new" })],
];
for (const [how, read] of writes)
  test(`a bad row that a write reads ${how} ends the write, which names it and stores nothing`, async () => {
    const bad = car(2, 42);
    const book = await withCars(car(1), bad);
    const writing = book.database.transaction("rw", "cars", async (transaction) => {
      const cars = transaction.table("cars");
      await cars.put(car(9));
      await read(cars);
    });
    await expect(writing).rejects.toMatchObject({
      code: "unreadable",
      message: "Not stored: a row of this logbook holds something that cannot be right. Try again.",
      rows: [found(bad)],
    });
    expect(numbers(await book.tables.cars.toArray())).toEqual([1]);
    book.close();
  });

test("a transaction that takes rows aside reads them as they are stored, and no other one does", async () => {
  const bad = car(2, 42);
  const book = await withCars(car(1), bad);
  const rows = await book.database.transaction("rw", "cars", async (transaction) => {
    readUnchecked(transaction.idbtrans);
    const cars = transaction.table("cars");
    expect(await cars.get(bad.id)).toEqual(bad);
    return cars.toArray();
  });
  expect(rows).toEqual([car(1), bad]);
  expect(book.unreadable.get()).toEqual([]);
  expect(numbers(await book.tables.cars.toArray())).toEqual([1]);
  book.close();
});

test("of a run with a lap that cannot be right the other laps are given, and that lap is noted", async () => {
  const { book } = await aLogbook();
  const bad = { ...withAt(wholeLap, "id", idAt(91)), n: "two" };
  const run = { ...wholeRows.runs, laps: [wholeLap, bad] };
  await book.database.table("runs").add(run);
  const read: Run = { ...wholeRows.runs, laps: [wholeLap] };
  expect(await book.tables.runs.get(run.id)).toEqual(read);
  expect(await book.tables.runs.toArray()).toEqual([read]);
  expect(book.unreadable.get()).toMatchObject([{ table: "laps", id: `${run.id} 1`, key: run.id }]);
  book.close();
});

test("stamps that cannot be right are left out of what is read, in a write too, and nothing is noted", async () => {
  const book = await withCars({ ...car(1), had: 5 });
  const { had: _, ...right } = car(1);
  const row = await book.database.transaction("rw", "cars", (transaction) =>
    transaction.table("cars").get(idAt(1)),
  );
  expect(row).toEqual(right);
  expect(await book.tables.cars.toArray()).toEqual([right]);
  expect(book.unreadable.get()).toEqual([]);
  book.close();
});

test("what is set aside is looked at by no shape of a row", async () => {
  const { book } = await aLogbook();
  const aside = asideRow("cars", car(1, 42), why, newestSchema);
  await book.database.table("aside").add(aside);
  expect(await book.aside?.toArray()).toEqual([aside]);
  expect(book.unreadable.get()).toEqual([]);
  book.close();
});
