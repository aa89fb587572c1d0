import "fake-indexeddb/auto";

import { Dexie } from "dexie";
import { forceCloseDatabase } from "fake-indexeddb";
import { afterEach, expect, test, vi } from "vitest";
import { newestSchema, openLogbook } from "#db";
import { tableNames } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";
import { idAt, wholeRows } from "../../support/wholeRows.ts";

afterEach(() => vi.restoreAllMocks());

const tools = { clock: () => 1e12, newId: () => crypto.randomUUID() };
const gone = "The stored logbook has disappeared from this browser. Restore a backup; nothing new was begun.";
const newer =
  "This logbook was last used by a newer version of Lap Ledger. Reload to get it. It can be read and backed up here, not written.";
const upgraded = "Lap Ledger was updated in another tab. Reload this page; typed text is kept.";

/** A database as a version of the app that does not exist yet would leave it. */
async function newerDatabase(
  name: string,
  tables: readonly string[] = [...tableNames, "digests", "tyreSets"],
) {
  const database = new Dexie(name);
  database.version(newestSchema + 2).stores(Object.fromEntries(tables.map((table) => [table, "id"])));
  await database.open();
  return database;
}
const databases = async () => (await indexedDB.databases()).map(({ name }) => name);

test("a logbook of this version has all its tables, and none that is not known", async () => {
  const { book } = await aLogbook();
  expect(book.schema).toBe(newestSchema);
  expect(book.unknownTables).toEqual({});
  expect(Object.keys(book.tables)).toEqual([...tableNames]);
  for (const table of [book.digests, book.changeMarks, book.keptAnswers, book.aside])
    expect(await table?.count()).toBe(0);
  expect(book.status.get()).toEqual({ kind: "ok" });
  book.close();
});

test("a logbook opened to be read gives no way to write", async () => {
  const { book } = await aLogbook();
  book.close();
  const reading = await openLogbook({ name: book.name, ...tools, mode: "read" });
  expect(reading).not.toHaveProperty("database");
  expect(reading).not.toHaveProperty("newId");
  expect(reading.status.get()).toEqual({ kind: "ok" });
  reading.close();
});

test("a newer logbook is read with the tables only it knows, and its rows are not judged", async () => {
  const database = await newerDatabase("newer");
  await database.table("cars").add({ id: "x", name: 42 });
  await database.table("tyreSets").add({ id: "t" });
  database.close();
  const seen: string[] = [];
  const book = await openLogbook({
    name: "newer",
    ...tools,
    mode: "read",
    onStatus: ({ kind }) => seen.push(kind),
  });
  expect(book.schema).toBe(newestSchema + 2);
  expect(Object.keys(book.unknownTables)).toEqual(["tyreSets"]);
  expect(await book.unknownTables["tyreSets"]?.toArray()).toEqual([{ id: "t" }]);
  expect(await book.tables.cars.toArray()).toEqual([{ id: "x", name: 42 }]);
  for (const table of ["changeMarks", "keptAnswers", "aside"]) expect(book).not.toHaveProperty(table);
  expect(seen).toEqual(["newer"]);
  book.close();
});

test("a newer logbook is not opened to be written, nor at all where it lacks a table, and it is said", async () => {
  (await newerDatabase("newer")).close();
  await expect(openLogbook({ name: "newer", ...tools })).rejects.toMatchObject({
    code: "newer",
    message: newer,
  });
  for (const missing of ["runs", "digests"]) {
    const tables = [...tableNames, "digests"].filter((table) => table !== missing);
    (await newerDatabase(`without ${missing}`, tables)).close();
    const opening = openLogbook({ name: `without ${missing}`, ...tools, mode: "read" });
    await expect(opening).rejects.toMatchObject({ code: "newer", message: newer });
  }
  // Nobody holds it open any more.
  await Dexie.delete("without runs");
});

test("a logbook that must be there and is not is missed in words, and none is made", async () => {
  for (const options of [{ expect: "old" }, { mode: "read" }] as const)
    await expect(openLogbook({ name: "wiped", ...tools, ...options } as never)).rejects.toMatchObject({
      code: "gone",
      message: gone,
    });
  expect(await databases()).not.toContain("wiped");
});

test("a logbook that may be there or not is made, and opened again as it stands", async () => {
  const book = await openLogbook({ name: "made", ...tools });
  await book.database.table("cars").add(wholeRows.cars);
  book.close();
  const again = await openLogbook({ name: "made", ...tools, expect: "old" });
  expect(await again.tables.cars.count()).toBe(1);
  again.close();
});

test("a browser that gives no database at all is named, whatever is asked first", async () => {
  vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  await expect(openLogbook({ name: "denied", ...tools })).rejects.toMatchObject({
    code: "refused",
    message: expect.stringMatching(/^Logbook not opened: /),
  });
});

test("a logbook the browser has lost and upgraded meanwhile is closed, and says that it was updated", async () => {
  const { book } = await aLogbook();
  const { database } = book;
  const native = database.backendDB();
  database.close({ disableAutoOpen: false });
  const request = indexedDB.open(book.name, (newestSchema + 1) * 10);
  await new Promise((resolve) => {
    request.onsuccess = resolve;
  });
  request.result.close();
  expect(native).toBeDefined();
  await expect(database.open()).rejects.toMatchObject({ code: "newerTab", message: upgraded });
  expect(book.status.get()).toEqual({ kind: "newerTab" });
});

test("a logbook wiped while the app is open is not begun anew by what is read or written next", async () => {
  const { book } = await aLogbook();
  const { database } = book;
  database.close({ disableAutoOpen: false });
  await Dexie.delete(book.name);
  await expect(database.open()).rejects.toThrow();
  expect(book.status.get()).toEqual({ kind: "gone" });
  expect(await databases()).not.toContain(book.name);
});

test("a connection that is lost and cannot be had again is given up after a second of trying", async () => {
  const { book } = await aLogbook();
  const open = vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("Internal error", "UnknownError");
  });
  const waits: unknown[] = [];
  vi.spyOn(globalThis, "setTimeout").mockImplementation(((done: () => void, ms: unknown) => {
    if (ms !== 0) waits.push(ms);
    setImmediate(done);
  }) as never);
  forceCloseDatabase(book.database.backendDB() as never);
  await vi.waitFor(() => expect(book.status.get()).toEqual({ kind: "closed" }));
  expect(open).toHaveBeenCalledTimes(10);
  expect(waits).toEqual(Array.from({ length: 9 }, () => 100));
  await expect(book.tables.cars.get(idAt(2))).rejects.toMatchObject({ name: "DatabaseClosedError" });
});

test("a connection that is lost is had again on a later try", async () => {
  const { book } = await aLogbook();
  await book.database.table("cars").add(wholeRows.cars);
  const open = vi.spyOn(indexedDB, "open").mockImplementationOnce(() => {
    throw new DOMException("Internal error", "UnknownError");
  });
  forceCloseDatabase(book.database.backendDB() as never);
  await vi.waitFor(() => expect(open.mock.calls.length).toBeGreaterThan(2));
  await vi.waitFor(async () => expect(await book.tables.cars.count()).toBe(1));
  expect(book.status.get()).toEqual({ kind: "ok" });
  book.close();
});
