import "fake-indexeddb/auto";

import { Dexie } from "dexie";
import { forceCloseDatabase } from "fake-indexeddb";
import { expect, expectTypeOf, test, vi } from "vitest";
import {
  addCombo,
  addLap,
  combosWithNames,
  createLogbook,
  type Logbook,
  type LogbookStatus,
  newestSchema,
  openLogbook,
  openShelf,
  type ReadOnlyLogbook,
  removeLogbook,
  runOf,
} from "#db";
import { tableNames } from "#domain";
import { aLap } from "../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../support/aLogbook.ts";

const tools = { clock: () => 1e12, newId: () => crypto.randomUUID() };
const combo = { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } };

/** A database as a version of the app that does not exist yet would leave it. */
async function newerDatabase(name: string) {
  const database = new Dexie(name);
  const tables = Object.fromEntries(
    [...tableNames, "digests", "tyreSets"].map((table) => [table, "id, newIndex"]),
  );
  database.version(newestSchema + 1).stores(tables);
  await database.open();
  await database.table("cars").add({ id: "x", name: "kept" });
  database.close();
}

function raw(name: string, version?: number): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

test("a logbook last used by a newer version is not opened for writing, and nothing in it is touched", async () => {
  await newerDatabase("newer");
  await expect(openLogbook({ name: "newer", ...tools })).rejects.toMatchObject({
    code: "newer",
    message: expect.stringContaining("newer version"),
  });
  const database = await raw("newer");
  expect(database.version).toBe((newestSchema + 1) * 10);
  expect([...database.objectStoreNames]).toContain("tyreSets");
  expect([...database.transaction("runs").objectStore("runs").indexNames]).toEqual(["newIndex"]);
  database.close();
});

test("a newer logbook can still be read", async () => {
  await newerDatabase("newer-read");
  const book = await openLogbook({ name: "newer-read", ...tools, mode: "read" });
  expect(book.status.get()).toEqual({ kind: "newer" });
  expect(await book.tables.cars.get("x")).toMatchObject({ name: "kept" });
  book.close();
  const database = await raw("newer-read");
  expect(database.version).toBe((newestSchema + 1) * 10);
  database.close();
});

test("a newer logbook that has lost a table this version reads is refused", async () => {
  const database = new Dexie("newer-without");
  database.version(newestSchema + 1).stores({ runs: "id" });
  await database.open();
  database.close();
  await expect(openLogbook({ name: "newer-without", ...tools, mode: "read" })).rejects.toMatchObject({
    code: "newer",
  });
});

test("no write accepts a logbook opened for reading", () => {
  expectTypeOf<ReadOnlyLogbook>().not.toExtend<Logbook>();
  expectTypeOf<Logbook>().toExtend<ReadOnlyLogbook>();
});

test("a logbook that should be there and is not is missed, not begun anew", async () => {
  await expect(openLogbook({ name: "wiped", ...tools, expect: "old" })).rejects.toMatchObject({
    code: "gone",
  });
  await expect(openLogbook({ name: "wiped", ...tools, mode: "read" })).rejects.toMatchObject({
    code: "gone",
  });
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("wiped");
});

test("a tab whose logbook was upgraded by another tab stops writing, and lets the upgrade through", async () => {
  const { book } = await aLogbook();
  await addCombo(book, combo);
  const seen: LogbookStatus[] = [];
  book.status.subscribe(() => seen.push(book.status.get()));
  const newer = await raw(book.name, (newestSchema + 1) * 10);
  expect(seen).toEqual([{ kind: "newerTab" }]);
  await expect(addCombo(book, combo)).rejects.toMatchObject({
    code: "newerTab",
    message: expect.stringContaining("Reload"),
  });
  await expect(combosWithNames(book)).rejects.toMatchObject({ name: "DatabaseClosedError" });
  newer.close();
});

test("an upgrade held up by another tab is said while opening waits, and goes on by itself", async () => {
  const old = await raw("held", 5);
  const seen: string[] = [];
  const opening = openLogbook({ name: "held", ...tools, onStatus: ({ kind }) => seen.push(kind) });
  await vi.waitFor(() => expect(seen).toEqual(["blocked"]));
  old.close();
  const book = await opening;
  expect(book.status.get()).toEqual({ kind: "ok" });
  book.close();
});

test("a logbook erased in another tab is said to be gone and not begun anew", async () => {
  const { book } = await aLogbook();
  const shelf = await openShelf({ ...tools, name: "shelf-erase" });
  await createLogbook(shelf, { title: "Mine", name: book.name });
  await removeLogbook(shelf, book.name);
  expect(book.status.get()).toEqual({ kind: "gone" });
  await expect(addCombo(book, combo)).rejects.toMatchObject({ code: "gone" });
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(book.name);
  expect(await shelf.logbooks.count()).toBe(0);
  shelf.close();
});

test("a connection lost while the logbook is still there is had again, and the next lap is stored", async () => {
  const { book, runId } = await anOpenSession();
  forceCloseDatabase(book.database.backendDB() as never);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  expect((await runOf(book, runId))?.laps).toHaveLength(1);
  expect(book.status.get()).toEqual({ kind: "ok" });
});

test("a logbook wiped under the running app is said to be gone, and stays gone", async () => {
  const { book } = await aLogbook();
  await addCombo(book, combo);
  forceCloseDatabase(book.database.backendDB() as never);
  indexedDB.deleteDatabase(book.name);
  await vi.waitFor(() => expect(book.status.get()).toEqual({ kind: "gone" }));
  await expect(addCombo(book, combo)).rejects.toMatchObject({ code: "gone" });
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain(book.name);
});

test("a browser without a database is named", async () => {
  const spy = vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  await expect(openLogbook({ name: "denied", ...tools })).rejects.toMatchObject({
    code: "refused",
    message: expect.stringContaining("does not let the page store anything"),
  });
  spy.mockRestore();
});
