import "fake-indexeddb/auto";

import { afterEach, expect, test } from "vitest";
import { dump, newestSchema, rawRows, rowCounts, salvage } from "#db";
import { type AllRows, asideRow, everyTable, noRows, tableNames } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";
import { putRaw } from "../../support/damage.ts";
import { failReadsOf } from "../../support/unreadableRows.ts";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  mend = undefined;
});

const rows: AllRows = everyTable((table) => [wholeRows[table]]) as unknown as AllRows;
const car = (n: number, name: unknown = `car ${n}`) => ({ ...wholeRows.cars, id: idAt(n), name });

async function withRows(some: Readonly<Record<string, readonly object[]>>) {
  const { book } = await aLogbook();
  for (const [table, all] of Object.entries(some)) await book.database.table(table).bulkAdd([...all]);
  return book;
}

test("every row of every table is read, deleted ones too, and nothing else", async () => {
  const book = await withRows(rows as never);
  expect(await dump(book)).toEqual(rows);
  expect(await salvage(book)).toEqual({ rows, unreadable: [] });
  book.close();
});

test("rows come in the order of their ids", async () => {
  const book = await withRows({ cars: [car(3), car(1), car(2)] });
  expect((await dump(book)).cars).toEqual([car(1), car(2), car(3)]);
  book.close();
});

test("rows set aside come along, those found while reading too, in the order of their ids and each once", async () => {
  const old = ["ffff", "0000", "8888"].map((end) => ({
    ...asideRow("tracks", { name: 8 }, "name: not a text", 1),
    id: `000000000000${end}`,
  }));
  const bad = car(2, 42);
  const found = asideRow("cars", bad, "name: not a text", newestSchema);
  const book = await withRows({ cars: [car(1), bad], aside: old });
  const expected = [...old, found].sort((a, b) => (a.id < b.id ? -1 : 1));
  expect(await dump(book)).toEqual({ ...noRows, cars: [car(1)], aside: expected });
  await book.database.table("aside").add(found);
  expect((await dump(book)).aside).toEqual(expected);
  book.close();
});

test("figures that cannot be right are no rows: nothing of them is set aside", async () => {
  const book = await withRows({
    digests: [{ sessionId: idAt(8), comboId: idAt(5), startedAt: "never", changedAt: 1 }],
  });
  await book.digests.toArray();
  expect(book.unreadable.get()).toHaveLength(1);
  expect(await dump(book)).toEqual(noRows);
  book.close();
});

test("rows that cannot be read are counted in words, and a salvage gives all others and names these", async () => {
  const book = await withRows({ cars: [car(1), car(2), car(3)] });
  mend = failReadsOf([{ table: "cars", id: idAt(2) }]);
  await expect(dump(book)).rejects.toMatchObject({
    code: "unreadable",
    message:
      "Logbook not read: this browser cannot read one row of it. Save a backup, which is made of all others, and restore it as a new logbook.",
  });
  expect(await salvage(book)).toEqual({
    rows: { ...noRows, cars: [car(1), car(3)] },
    unreadable: [{ table: "cars", id: idAt(2) }],
  });
  mend();
  mend = failReadsOf([2, 3].map((n) => ({ table: "cars", id: idAt(n) })));
  await expect(dump(book)).rejects.toMatchObject({
    message: expect.stringContaining("cannot read 2 rows of it"),
  });
  mend();
  // What could not be read once may be read now.
  expect((await dump(book)).cars).toHaveLength(3);
  book.close();
});

test("a logbook that is closed says that it was not read", async () => {
  const book = await withRows({});
  book.database.close({ disableAutoOpen: true });
  await expect(dump(book)).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^Logbook not read: /),
  });
});

test("rows and laps are counted table by table", () => {
  const runs = [wholeRows.runs, { ...wholeRows.runs, id: idAt(70), laps: [wholeLap, wholeLap] }];
  const counts = rowCounts({ ...noRows, cars: [wholeRows.cars], runs });
  expect(counts).toMatchObject({ cars: 1, runs: 2, laps: 3, tracks: 0 });
  expect(Object.keys(counts)).toEqual([...tableNames, "laps"]);
});

test("read raw, every row comes as it is stored, with those set aside, and without what is made from them", async () => {
  const aside = asideRow("tracks", { name: 8 }, "name: not a text", 1);
  const book = await withRows({ ...(rows as never as Record<string, object[]>), aside: [aside] });
  await putRaw(book.name, "cars", car(70, 42));
  await putRaw(book.name, "keptAnswers", { id: "x", mark: "m", version: "1", answer: 1 });
  book.close();
  expect(await rawRows(book.name)).toEqual({
    rows: { ...rows, cars: [wholeRows.cars, car(70, 42)], aside: [aside] },
    schema: newestSchema,
    unreadable: [],
  });
});

test("read raw, what the browser cannot read is named and the rest is given; the database is let go", async () => {
  const book = await withRows({ cars: [car(1), car(2), car(3)] });
  book.close();
  mend = failReadsOf([{ table: "cars", id: idAt(2) }]);
  const raw = await rawRows(book.name);
  expect(raw.rows).toEqual({ ...noRows, cars: [car(1), car(3)] });
  expect(raw.unreadable).toEqual([{ table: "cars", id: idAt(2) }]);
  mend();
  await new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase(book.name);
    request.onsuccess = resolve;
    request.onblocked = () => reject(new Error("still open"));
  });
});

test("read raw, a logbook that has disappeared is missed, and none is made", async () => {
  await expect(rawRows("gone")).rejects.toMatchObject({
    code: "gone",
    message: "The stored logbook has disappeared from this browser: there is nothing to back up.",
  });
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("gone");
});
