import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { dump, idMaker, openLogbook, restoreAsNew } from "#db";
import { type AllRows, asideRow, everyTable, noRows } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";
import { failingStore } from "../../support/failingStore.ts";
import { idAt, wholeRows } from "../../support/wholeRows.ts";

const clock = () => 1_780_000_000_000;
const tools = { clock, newId: idMaker(clock) };
const rows: AllRows = everyTable((table) => [wholeRows[table]]) as unknown as AllRows;
const { deletedAt: _, ...session } = wholeRows.sessions;
const { endedAt: __, ...open } = session;
const aside = [asideRow("cars", { name: 7 }, "name: not a text", 3)];
const databases = async () => (await indexedDB.databases()).map(({ name }) => name);
const cars = (count: number): AllRows => ({
  ...noRows,
  cars: Array.from({ length: count }, (___, n) => ({ ...wholeRows.cars, id: idAt(n) })),
});

test("every row is stored as it is, with those set aside, and can be written at once", async () => {
  const book = await restoreAsNew({ ...rows, aside }, { name: "restored", ...tools });
  expect(await dump(book)).toEqual({ ...rows, aside });
  expect(book.status.get()).toEqual({ kind: "ok" });
  await book.database.table("cars").put({ ...wholeRows.cars, name: "new" });
  book.close();
});

test("sessions have their figures waited for, open ones as such, deleted ones not at all", async () => {
  const sessions = [session, { ...open, id: idAt(71) }, { ...wholeRows.sessions, id: idAt(72) }];
  const book = await restoreAsNew({ ...noRows, sessions }, { name: "figures", ...tools });
  const { comboId, startedAt } = session;
  expect(await book.digests.toArray()).toEqual([
    { sessionId: session.id, comboId, startedAt, changedAt: clock(), staleSince: clock() },
    { sessionId: idAt(71), comboId, startedAt, changedAt: clock(), openSince: startedAt },
  ]);
  book.close();
});

test("two thousand rows are stored at a time, and progress counts them against all", async () => {
  const seen: string[] = [];
  const onProgress = (done: number, all: number) => seen.push(`${done} of ${all}`);
  const many = { ...cars(2001), tracks: [wholeRows.tracks], aside };
  const book = await restoreAsNew(many, { name: "many", ...tools, onProgress });
  expect(seen).toHaveLength(3);
  expect(seen).toEqual(expect.arrayContaining(["2000 of 2002", "2002 of 2002"]));
  expect(await book.tables.cars.count()).toBe(2001);
  book.close();
});

test("a restore that is stopped leaves nothing behind and says so", async () => {
  const refused = { code: "cancelled", message: "Stopped; nothing was changed." };
  for (const when of ["before", "half way", "at the end"]) {
    const stop = new AbortController();
    if (when === "before") stop.abort();
    const onProgress = (done: number, all: number) => {
      if (when === "half way" || done === all) stop.abort();
    };
    const restoring = restoreAsNew(rows, { name: "stopped", ...tools, signal: stop.signal, onProgress });
    await expect(restoring, when).rejects.toMatchObject(refused);
    expect(await databases(), when).not.toContain("stopped");
  }
});

test("a restore that fails at any row leaves nothing behind and says what was not done", async () => {
  for (const n of [1, 7, 14]) {
    const failing = failingStore(n);
    await expect(restoreAsNew(rows, { name: "failing", ...tools })).rejects.toMatchObject({
      message: expect.stringMatching(/^Backup not restored: /),
    });
    expect(failing.fired()).toBe(true);
    failing.mend();
    expect(await databases()).not.toContain("failing");
  }
});

test("a restore never goes over a logbook that is there", async () => {
  const { book } = await aLogbook();
  await book.database.table("cars").add(wholeRows.cars);
  await expect(restoreAsNew(noRows, { name: book.name, ...tools })).rejects.toMatchObject({
    code: "invalid",
    message: "Not restored: a logbook of this name is there already.",
  });
  expect(await book.tables.cars.count()).toBe(1);
  book.close();
});

test("what was restored is a logbook like any other when it is opened again", async () => {
  (await restoreAsNew(rows, { name: "again", ...tools })).close();
  const book = await openLogbook({ name: "again", ...tools, expect: "old" });
  expect(await dump(book)).toEqual(rows);
  book.close();
});
