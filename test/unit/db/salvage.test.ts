import "fake-indexeddb/auto";

import { afterEach, expect, test, vi } from "vitest";
import { dump, rowCounts, salvage } from "#db";
import { aFullLogbook } from "../../support/aFullLogbook.ts";

afterEach(() => vi.restoreAllMocks());

test("one row the browser cannot read is named, and all others are saved", async () => {
  const { book, runId } = await aFullLogbook();
  const rows = await dump(book);
  const broken = new DOMException("internal", "UnknownError");
  const { get, getAll } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, "getAll").mockImplementation(function (this: IDBObjectStore, ...args) {
    if (this.name === "runs") throw broken;
    return getAll.apply(this, args);
  });
  vi.spyOn(IDBObjectStore.prototype, "get").mockImplementation(function (this: IDBObjectStore, key) {
    if (key === runId) throw broken;
    return get.call(this, key);
  });
  await expect(dump(book)).rejects.toMatchObject({ message: expect.stringContaining("Logbook not read") });
  const saved = await salvage(book);
  expect(saved.unreadable).toEqual([{ table: "runs", id: runId }]);
  expect(saved.rows).toEqual({ ...rows, runs: rows.runs.filter(({ id }) => id !== runId) });
});

test("rows and laps are counted", async () => {
  const { book } = await aFullLogbook();
  expect(rowCounts(await dump(book))).toMatchObject({ runs: 4, laps: 3, sessions: 1, rigs: 2 });
});
