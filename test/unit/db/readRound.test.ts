import "fake-indexeddb/auto";

import type { Table } from "dexie";
import { afterEach, expect, test, vi } from "vitest";
import type { Car } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";
import { failReadsOf } from "../../support/unreadableRows.ts";
import { idAt, wholeRows } from "../../support/wholeRows.ts";

let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
  vi.restoreAllMocks();
});

const car = (n: number): Car => ({ ...wholeRows.cars, id: idAt(n), name: `car ${n}` });
/** A logbook of five cars of which these cannot be read. */
async function withBroken(...broken: readonly number[]) {
  const { book } = await aLogbook();
  await book.database.table("cars").bulkAdd([1, 2, 3, 4, 5].map(car));
  mend = failReadsOf(broken.map((n) => ({ table: "cars", id: idAt(n) })));
  const noted = () => book.unreadable.get().map(({ table, id }) => `${table} ${Number(id.slice(-3))}`);
  return { book, cars: book.tables.cars, noted };
}
const numbers = (rows: readonly (Car | undefined)[]) => rows.map((row) => row && Number(row.id.slice(-3)));
const rest = (...broken: readonly number[]) => [1, 2, 3, 4, 5].filter((n) => !broken.includes(n));

for (const broken of [[1], [3], [5], [1, 2], [2, 4], [4, 5], [1, 2, 3, 4, 5]])
  test(`cars ${broken} of five cannot be read: however they are asked for, the others come, in order`, async () => {
    const { book, cars, noted } = await withBroken(...broken);
    const left = rest(...broken);
    expect(numbers(await cars.toArray())).toEqual(left);
    expect(numbers(await cars.bulkGet([1, 2, 3, 4, 5].map(idAt)))).toEqual(
      [1, 2, 3, 4, 5].map((n) => (left.includes(n) ? n : undefined)),
    );
    const stepped: number[] = [];
    await cars.orderBy("id").each(({ id }) => stepped.push(Number(id.slice(-3))));
    expect(stepped).toEqual(left);
    const all = () => true;
    expect(numbers(await cars.orderBy("id").filter(all).toArray())).toEqual(left);
    expect(numbers(await cars.orderBy("id").reverse().filter(all).toArray())).toEqual(left.toReversed());
    expect(numbers(await cars.orderBy("id").filter(all).limit(2).toArray())).toEqual(left.slice(0, 2));
    expect(noted()).toEqual(broken.map((n) => `cars ${n}`));
    book.close();
  });

test("a car that cannot be read is as if it were not there when it alone is asked for", async () => {
  const { book, cars, noted } = await withBroken(2);
  expect(await cars.get(idAt(1))).toEqual(car(1));
  expect(noted()).toEqual([]);
  expect(await cars.get(idAt(2))).toBeUndefined();
  expect(noted()).toEqual(["cars 2"]);
  book.close();
});

test("keys and counts are those of all cars, and nothing is noted for them", async () => {
  const { book, cars, noted } = await withBroken(2);
  expect(await cars.count()).toBe(5);
  expect(await cars.toCollection().primaryKeys()).toEqual([1, 2, 3, 4, 5].map(idAt));
  expect(noted()).toEqual([]);
  book.close();
});

test("inside a write, many are read around; one that is asked for by its key fails", async () => {
  const { book, noted } = await withBroken(2);
  const inWrite = <R>(read: (cars: Table<Car, string>) => PromiseLike<R>) =>
    book.database.transaction("rw", "cars", (transaction) => read(transaction.table<Car, string>("cars")));
  await expect(inWrite((cars) => cars.get(idAt(2)))).rejects.toMatchObject({ name: "UnknownError" });
  await expect(inWrite((cars) => cars.bulkGet([idAt(1), idAt(2)]))).rejects.toMatchObject({
    name: "UnknownError",
  });
  expect(noted()).toEqual([]);
  expect(numbers(await inWrite((cars) => cars.toArray()))).toEqual(rest(2));
  expect(noted()).toEqual(["cars 2"]);
  book.close();
});

test("rows are changed one after another past the one that cannot be read, which stays as it is", async () => {
  const { book, cars } = await withBroken(3);
  const written: string[] = [];
  await book.database.transaction("rw", "cars", async (transaction) => {
    await transaction
      .table<Car, string>("cars")
      .orderBy("id")
      .each(({ name }) => written.push(name));
  });
  expect(written).toEqual(rest(3).map((n) => `car ${n}`));
  mend?.();
  expect(numbers(await cars.toArray())).toEqual([1, 2, 3, 4, 5]);
  book.close();
});

test("an error of another kind is none of a value, and comes through whichever way is read", async () => {
  const { book, cars, noted } = await withBroken();
  const fail = () => {
    throw new DOMException("on purpose", "TransactionInactiveError");
  };
  for (const name of ["get", "getAll", "openCursor"] as const)
    vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(fail);
  const wrong = { name: "TransactionInactiveError" };
  await expect(cars.get(idAt(1))).rejects.toMatchObject(wrong);
  await expect(cars.bulkGet([idAt(1)])).rejects.toMatchObject(wrong);
  await expect(cars.toArray()).rejects.toMatchObject(wrong);
  await expect(cars.orderBy("id").each(() => undefined)).rejects.toMatchObject(wrong);
  expect(noted()).toEqual([]);
  book.close();
});

test("a connection that is lost gives the same error as a broken value, and no row is noted for it", async () => {
  const { book, cars, noted } = await withBroken();
  const lost = () => {
    throw new DOMException("Connection to Indexed Database server lost", "UnknownError");
  };
  for (const name of ["get", "getAll", "getAllKeys", "count", "openCursor", "openKeyCursor"] as const)
    vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(lost);
  const wrong = { name: "UnknownError" };
  await expect(cars.get(idAt(1))).rejects.toMatchObject(wrong);
  await expect(cars.bulkGet([idAt(1)])).rejects.toMatchObject(wrong);
  await expect(cars.toArray()).rejects.toMatchObject(wrong);
  await expect(cars.orderBy("id").each(() => undefined)).rejects.toMatchObject(wrong);
  expect(noted()).toEqual([]);
  book.close();
});
