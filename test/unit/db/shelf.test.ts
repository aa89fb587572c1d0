import "fake-indexeddb/auto";

import { beforeEach, expect, test } from "vitest";
import {
  addLap,
  addRun,
  createLogbook,
  deleteDatabase,
  deleteLap,
  deleteSession,
  deleteUnlisted,
  dump,
  forgetDraft,
  idMaker,
  keepCopy,
  keptCopies,
  listLogbooks,
  noteBackup,
  noteLaps,
  noteOpened,
  noteUnlisted,
  openLogbook,
  openShelf,
  purgeBefore,
  purgeDeleted,
  readDraft,
  readDrafts,
  removeLogbook,
  renameLogbook,
  replaceLogbook,
  type Shelf,
  writeDraft,
} from "#db";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";
import { fixedClock } from "../../support/fixedClock.ts";

const clock = fixedClock(Date.UTC(2026, 2, 10));
const tools = { clock: clock.now, newId: idMaker(clock.now) };
let shelf: Shelf;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  shelf = await openShelf({ ...tools, name: `shelf-${opened}` });
});
const databases = async () => (await indexedDB.databases()).map(({ name }) => name);

test("logbooks are listed, the one opened last first", async () => {
  const mine = await createLogbook(shelf, { title: "Mine" });
  clock.pass(1000);
  const demo = await createLogbook(shelf, { title: "  ", kind: "demo" });
  expect((await listLogbooks(shelf)).map(({ title, kind }) => [title, kind])).toEqual([
    ["My logbook", "demo"],
    ["Mine", "own"],
  ]);
  clock.pass(1000);
  await noteOpened(shelf, mine.name, "2026-03-11");
  await renameLogbook(shelf, demo.name, "Example");
  expect((await listLogbooks(shelf)).map(({ title }) => title)).toEqual(["Mine", "Example"]);
  await expect(renameLogbook(shelf, demo.name, " ")).rejects.toMatchObject({ code: "invalid" });
});

/** A kept state whose bytes are those of the number. */
const aCopy = (logbook: string, n = 0) => ({
  logbook,
  title: "Mine",
  sessions: n,
  laps: n,
  packed: new TextEncoder().encode(`{ ${n} }`),
});

test("removing a logbook removes its database, drafts and kept states, and touches no other", async () => {
  const mine = await createLogbook(shelf, { title: "Mine" });
  const other = await createLogbook(shelf, { title: "Other" });
  for (const { name } of [mine, other]) {
    (await openLogbook({ name, ...tools })).close();
    await writeDraft(shelf, { key: `${name}/line/1`, text: "1:23" });
    await keepCopy(shelf, { ...aCopy(name), why: "merge" });
  }
  await removeLogbook(shelf, mine.name);
  expect(await databases()).not.toContain(mine.name);
  expect(await databases()).toContain(other.name);
  expect((await readDrafts(shelf)).map(({ key }) => key)).toEqual([`${other.name}/line/1`]);
  expect(await keptCopies(shelf, mine.name)).toEqual([]);
  expect(await shelf.packs.count()).toBe(1);
  expect(await keptCopies(shelf, other.name)).toMatchObject([{ why: "merge" }]);
});

test("a half-typed line and laps on their way are found again, until they are forgotten", async () => {
  const state = { lines: [{ id: "l", runId: "r", text: "23456" }] };
  await writeDraft(shelf, { key: "b/line/1", text: "1:2", state });
  await writeDraft(shelf, { key: "b/line/1", text: "1:23", state });
  shelf.close();
  const again = await openShelf({ ...tools, name: `shelf-${opened}` });
  expect(await readDraft(again, "b/line/1")).toEqual({ key: "b/line/1", text: "1:23", state });
  await forgetDraft(again, "b/line/1");
  expect(await readDraft(again, "b/line/1")).toBeUndefined();
  again.close();
});

test("laps since the last backup are counted and start again with it", async () => {
  const { name } = await createLogbook(shelf, { title: "Mine" });
  await noteLaps(shelf, name, 3);
  await noteLaps(shelf, name, 10);
  expect((await listLogbooks(shelf))[0]).toMatchObject({ lapsSinceBackup: 13 });
  await noteBackup(shelf, name);
  expect((await listLogbooks(shelf))[0]).toMatchObject({ lapsSinceBackup: 0, lastBackupAt: clock.now() });
});

test("a restored database takes the place of the old one under the same title", async () => {
  const old = await createLogbook(shelf, { title: "Mine" });
  (await openLogbook({ name: old.name, ...tools })).close();
  (await openLogbook({ name: "new-database", ...tools })).close();
  await keepCopy(shelf, { ...aCopy(old.name), why: "replace" });
  await writeDraft(shelf, { key: `${old.name}/line/1`, text: "1:23" });
  await replaceLogbook(shelf, old.name, "new-database");
  await deleteDatabase(old.name);
  expect(await keptCopies(shelf, "new-database")).toMatchObject([{ why: "replace" }]);
  expect(await readDrafts(shelf)).toEqual([{ key: "new-database/line/1", text: "1:23" }]);
  expect(await listLogbooks(shelf)).toMatchObject([{ name: "new-database", title: "Mine" }]);
  expect(await databases()).not.toContain(old.name);
});

test("what a restore left in no list is deleted a day later; what was entered, or never noted, stays", async () => {
  const listed = await createLogbook(shelf, { title: "Mine" });
  const made = async (name: string) => (await openLogbook({ name, ...tools })).close();
  for (const name of [listed.name, "entered", "broken off", "never noted"]) await made(name);
  for (const name of ["entered", "broken off"]) await noteUnlisted(shelf, name);
  await createLogbook(shelf, { title: "Restored", name: "entered" });
  clock.pass(86_400_000);
  await deleteUnlisted(shelf);
  expect(await databases()).toContain("broken off");
  clock.pass(1);
  await deleteUnlisted(shelf);
  expect(await databases()).toEqual(expect.arrayContaining([listed.name, "entered", "never noted"]));
  expect(await databases()).not.toContain("broken off");
  expect(await shelf.unlisted.count()).toBe(0);
});

test("deleted rows go for good only after thirty days on which the logbook was opened", async () => {
  const { name } = await createLogbook(shelf, { title: "Mine" });
  const day = (n: number) => new Date(Date.UTC(2026, 2, n)).toISOString().slice(0, 10);
  for (let n = 1; n <= 30; n += 1) {
    await noteOpened(shelf, name, day(n));
    await noteOpened(shelf, name, day(n));
  }
  const openedOn = async () => (await listLogbooks(shelf))[0] ?? { openedOn: [] };
  expect(purgeBefore(await openedOn())).toBeUndefined();
  await noteOpened(shelf, name, "2031-01-01");
  expect(purgeBefore(await openedOn())).toBe(Date.UTC(2026, 2, 1));
  await noteOpened(shelf, name, "2031-01-02");
  expect(purgeBefore(await openedOn())).toBe(Date.UTC(2026, 2, 2));
});

test("purging removes rows and laps deleted before, and nothing else", async () => {
  const { book, clock: bookClock, sessionId, runId, comboId } = await anOpenSession();
  const ids = [book.newId(), book.newId()];
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(83000) });
  await deleteLap(book, { runId, lapId: ids[0] ?? "" });
  bookClock.pass(1000);
  const before = bookClock.now();
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(83100) });
  await deleteLap(book, { runId, lapId: ids[1] ?? "" });
  expect(await purgeDeleted(book, before)).toBe(1);
  expect((await dump(book)).runs.flatMap(({ laps }) => laps.map(({ ms }) => ms))).toEqual([83000, 83100]);
  await deleteSession(book, { sessionId });
  bookClock.pass(1000);
  expect(await purgeDeleted(book, bookClock.now())).toBe(3);
  const rows = await dump(book);
  expect(rows.sessions).toEqual([]);
  expect(rows.runs).toEqual([]);
  expect(rows.combos.map(({ id }) => id)).toEqual([comboId]);
});
