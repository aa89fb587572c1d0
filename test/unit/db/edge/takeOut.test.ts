import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { asideRows, newestSchema, setAside } from "#db";
import { asideRow } from "#domain";
import { BadRowMet } from "../../../../src/db/edge/checkReads.ts";
import { pastBadRows } from "../../../../src/db/edge/pastBadRows.ts";
import { aLogbook } from "../../../support/aLogbook.ts";
import { failingStore } from "../../../support/failingStore.ts";
import { idAt, wholeLap, wholeRows, withAt } from "../../../support/wholeRows.ts";

const { deletedAt: _, ...session } = wholeRows.sessions;
const { deletedAt: __, ...run } = wholeRows.runs;
const bad = { ...wholeRows.cars, name: 42 };
const badAside = asideRow("cars", bad, "name: not a text", newestSchema);

/** A logbook with a session of one run, and these rows beside them. */
async function withRows(rows: Readonly<Record<string, object>> = {}) {
  const { book, clock } = await aLogbook();
  for (const [table, row] of Object.entries({ sessions: session, runs: run, ...rows }))
    await book.database.table(table).put(row);
  await book.database.table("digests").put({
    sessionId: session.id,
    comboId: session.comboId,
    startedAt: session.startedAt,
    changedAt: 5,
    madeFrom: 5,
    methodVersion: "1",
    digest: {},
  });
  return { book, clock };
}
/** What reading everything has noted. */
async function noted({ tables, digests, unreadable }: Awaited<ReturnType<typeof withRows>>["book"]) {
  for (const table of [tables.cars, tables.sessions, tables.runs, digests])
    await table.toCollection().toArray();
  return unreadable.get();
}

test("a row that cannot be right goes from its table into those set aside, and is noted no more", async () => {
  const { book } = await withRows({ cars: bad });
  const rows = await noted(book);
  expect(rows).toHaveLength(1);
  await setAside(book, rows);
  expect(await book.tables.cars.count()).toBe(0);
  expect(await asideRows(book)).toEqual([badAside]);
  expect(book.unreadable.get()).toEqual([]);
  // No session's figures rest on a car.
  expect(await book.digests.toArray()).toMatchObject([{ changedAt: 5, madeFrom: 5 }]);
  book.close();
});

test("rows of several tables, and several of one, go aside together", async () => {
  const { book } = await withRows({ cars: bad, runs: { ...run, kind: 7 } });
  await book.database.table("cars").bulkPut([
    { ...bad, id: idAt(70) },
    { ...wholeRows.cars, id: idAt(71) },
  ]);
  await setAside(book, await noted(book));
  expect((await asideRows(book)).map(({ table }) => table).sort()).toEqual(["cars", "cars", "runs"]);
  expect((await book.tables.cars.toArray()).map(({ id }) => id)).toEqual([idAt(71)]);
  expect(await book.tables.runs.count()).toBe(0);
  book.close();
});

test("a row that is right by now, or gone, stays as it is", async () => {
  const { book } = await withRows({ cars: bad });
  const rows = await noted(book);
  await book.database.table("cars").put(wholeRows.cars);
  const gone = { ...badAside, id: "0123456789abcdef" };
  await setAside(book, [...rows, { table: "cars", id: idAt(77), key: idAt(77), aside: gone }]);
  expect(await book.tables.cars.toArray()).toEqual([wholeRows.cars]);
  expect(await asideRows(book)).toEqual([]);
  expect(book.unreadable.get()).toEqual([]);
  book.close();
});

test("a row the browser could not read at all is left where it is", async () => {
  const { book } = await withRows({ cars: bad });
  await setAside(book, [{ table: "cars", id: bad.id, key: bad.id }]);
  expect(await book.tables.cars.count()).toBe(1);
  expect(await asideRows(book)).toEqual([]);
  book.close();
});

test("a lap that cannot be right goes out of its run, once, and the figures of the session are to be made anew", async () => {
  const laps = [
    wholeLap,
    { ...withAt(wholeLap, "id", idAt(91)), n: "two" },
    withAt(wholeLap, "id", idAt(92)),
  ];
  const { book, clock } = await withRows({ runs: { ...run, laps: [...laps, null] } });
  const rows = await noted(book);
  expect(rows).toHaveLength(2);
  await setAside(book, rows);
  expect(await book.tables.runs.toArray()).toEqual([{ ...run, laps: [laps[0], laps[2]] }]);
  expect((await asideRows(book)).map(({ table, why }) => `${table} ${why}`).sort()).toEqual([
    "laps n: not a number",
    "laps not a row",
  ]);
  const [digest] = await book.digests.toArray();
  expect(digest).toMatchObject({ sessionId: session.id, changedAt: clock.now() });
  expect(digest).not.toHaveProperty("madeFrom");
  book.close();
});

test("a run that cannot be right goes aside, and the figures of its session are to be made anew", async () => {
  const { book } = await withRows({ runs: { ...run, kind: 7 } });
  await setAside(book, await noted(book));
  expect(await book.tables.runs.count()).toBe(0);
  expect(await asideRows(book)).toMatchObject([
    { table: "runs", why: "kind: not one of the words it may be" },
  ]);
  expect((await book.digests.toArray())[0]).not.toHaveProperty("madeFrom");
  book.close();
});

test("a run that names no session goes aside, and no figures are asked for", async () => {
  const { book } = await withRows({ runs: { ...run, sessionId: 7 } });
  await setAside(book, await noted(book));
  expect(await book.tables.runs.count()).toBe(0);
  expect(await book.digests.toArray()).toMatchObject([{ madeFrom: 5 }]);
  book.close();
});

test("a session that cannot be right goes aside with its figures", async () => {
  const { book } = await withRows({ sessions: { ...session, date: "never" } });
  await setAside(book, await noted(book));
  expect(await asideRows(book)).toMatchObject([
    { table: "sessions", why: "date: not a day of the calendar" },
  ]);
  expect(await book.tables.sessions.count()).toBe(0);
  expect(await book.digests.count()).toBe(0);
  book.close();
});

test("figures that cannot be right are made anew, and nothing of them is kept", async () => {
  const { book, clock } = await withRows();
  await book.digests.toArray();
  await book.database.table("digests").update(session.id, { changedAt: "late" });
  await setAside(book, await noted(book));
  expect(await asideRows(book)).toEqual([]);
  const now = clock.now();
  expect(await book.digests.toArray()).toMatchObject([{ sessionId: session.id, changedAt: now }]);
  book.close();
});

test("where there is no room, nothing is taken out, and it is said what was not done", async () => {
  const { book } = await withRows({ cars: bad });
  const rows = await noted(book);
  const failing = failingStore(1);
  await expect(setAside(book, rows)).rejects.toMatchObject({
    code: "quota",
    message: expect.stringMatching(/^Rows not set aside: /),
  });
  failing.mend();
  expect(await book.tables.cars.count()).toBe(1);
  expect(book.unreadable.get()).toEqual(rows);
  book.close();
});

test("a logbook that was opened anew in another tab is not written", async () => {
  const { book } = await withRows({ cars: bad });
  const rows = await noted(book);
  const status = { ...book.status, get: () => ({ kind: "newerTab" }) as const };
  await expect(setAside({ ...book, status }, rows)).rejects.toMatchObject({
    message: expect.stringMatching(/^Rows not set aside: /),
  });
  expect(await book.tables.cars.count()).toBe(1);
  book.close();
});

const met = () => new BadRowMet([{ table: "cars", id: bad.id, key: bad.id, aside: badAside }]);

test("a write that meets a bad row is begun anew once the row is aside", async () => {
  const { book } = await withRows({ cars: bad });
  let tries = 0;
  const done = await pastBadRows(book, async () => {
    tries += 1;
    if ((await book.tables.cars.count()) > 0) throw met();
    return "done";
  });
  expect([done, tries]).toEqual(["done", 2]);
  expect(await asideRows(book)).toEqual([badAside]);
  book.close();
});

test("a write that meets a bad row over and over ends after a hundred tries", async () => {
  const { book } = await withRows();
  let tries = 0;
  const writing = pastBadRows(book, () => {
    tries += 1;
    return Promise.reject(met());
  });
  await expect(writing).rejects.toMatchObject({ code: "unreadable" });
  expect(tries).toBe(100);
  book.close();
});

test("a write that fails for another reason is not tried again", async () => {
  const { book } = await withRows();
  let tries = 0;
  const writing = pastBadRows(book, () => {
    tries += 1;
    return Promise.reject(new Error("on purpose"));
  });
  await expect(writing).rejects.toThrow("on purpose");
  expect(tries).toBe(1);
  book.close();
});
