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
  draftsAbout,
  dump,
  forgetDraft,
  idMaker,
  keepCopy,
  keptCopies,
  listLogbooks,
  moveDrafts,
  noteBackup,
  noteLaps,
  noteOpened,
  noteUnlisted,
  openLogbook,
  openShelf,
  purgeDeleted,
  readDraft,
  readDrafts,
  removeLogbook,
  renameLogbook,
  replaceLogbook,
  type Shelf,
  undoChange,
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

test("what a restore left in no list is deleted on another day; what was entered, or never noted, stays", async () => {
  const listed = await createLogbook(shelf, { title: "Mine" });
  const made = async (name: string) => (await openLogbook({ name, ...tools })).close();
  for (const name of [listed.name, "entered", "broken off", "never noted"]) await made(name);
  for (const name of ["entered", "broken off"]) await noteUnlisted(shelf, name);
  await createLogbook(shelf, { title: "Restored", name: "entered" });
  // A clock that jumps ten years in the middle of a restore does not make it an old one.
  clock.pass(3650 * 86_400_000);
  await deleteUnlisted(shelf, "2036-03-07");
  await deleteUnlisted(shelf, "2036-03-07");
  expect(await databases()).toContain("broken off");
  await deleteUnlisted(shelf, "2026-03-10");
  expect(await databases()).toEqual(expect.arrayContaining([listed.name, "entered", "never noted"]));
  expect(await databases()).not.toContain("broken off");
  expect(await shelf.unlisted.count()).toBe(0);
});

test("the logbook opened last is listed first, also after another was opened while the clock stood in 2036", async () => {
  const mine = await createLogbook(shelf, { title: "Mine" });
  const other = await createLogbook(shelf, { title: "Other" });
  clock.set(Date.UTC(2036, 2, 4));
  await noteOpened(shelf, other.name, "2036-03-04");
  clock.set(Date.UTC(2026, 2, 11));
  await noteOpened(shelf, mine.name, "2026-03-11");
  expect((await listLogbooks(shelf)).map(({ title }) => title)).toEqual(["Mine", "Other"]);
});

test("days on which a logbook was opened are counted once each, whatever order clocks bring them in", async () => {
  const { name } = await createLogbook(shelf, { title: "Mine" });
  for (const day of ["2026-03-10", "2026-03-10", "2036-03-04", "2026-03-10", "2026-03-11", "2036-03-04"])
    await noteOpened(shelf, name, day);
  expect((await listLogbooks(shelf))[0]).toMatchObject({ daysOpened: 3 });
});

const fixedAt = Date.UTC(2026, 2, 10);
test.each([
  ["right", fixedAt],
  ["ten years behind", Date.UTC(2016, 2, 10)],
  ["ten years ahead", Date.UTC(2036, 2, 10)],
])(
  "what was deleted while the clock was %s goes for good once the logbook was opened on thirty more days",
  async (_, at) => {
    const { book, clock: bookClock, sessionId, runId, comboId } = await anOpenSession();
    const ids = [book.newId(), book.newId()];
    for (const id of ids) await addLap(book, { runId, id, lap: aLap(83000) });
    bookClock.set(at);
    await deleteLap(book, { runId, lapId: ids[0] ?? "" });
    bookClock.set(fixedAt);
    const first = await purgeDeleted(book, new Map(), 100);
    expect(first.removed).toBe(0);
    const { runId: second } = await addRun(book, { sessionId });
    await addLap(book, { runId: second, id: book.newId(), lap: aLap(83100) });
    await deleteLap(book, { runId, lapId: ids[1] ?? "" });
    const before = await purgeDeleted(book, first.waiting, 129);
    expect(before.removed).toBe(0);
    const last = await purgeDeleted(book, before.waiting, 130);
    expect(last.removed).toBe(1);
    expect((await dump(book)).runs.flatMap(({ laps }) => laps.map(({ ms }) => ms))).toEqual([83000, 83100]);
    await deleteSession(book, { sessionId });
    const rest = await purgeDeleted(book, last.waiting, 131);
    expect((await purgeDeleted(book, rest.waiting, 161)).removed).toBe(3);
    const rows = await dump(book);
    expect(rows.sessions).toEqual([]);
    expect(rows.runs).toEqual([]);
    expect(rows.combos.map(({ id }) => id)).toEqual([comboId]);
  },
);

test("what was brought back and deleted anew waits anew", async () => {
  const { book, clock: bookClock, sessionId } = await anOpenSession();
  const deleted = await deleteSession(book, { sessionId });
  const { waiting } = await purgeDeleted(book, new Map(), 1);
  await undoChange(book, deleted);
  bookClock.pass(1000);
  await deleteSession(book, { sessionId });
  expect((await purgeDeleted(book, waiting, 40)).removed).toBe(0);
});

test("what is half typed in two logbooks about the same thing is kept twice when one is moved into the other", async () => {
  await writeDraft(shelf, { key: "own/start|t", text: "mine", tab: "t" });
  await writeDraft(shelf, { key: "demo/start|t", text: "of the demo", tab: "t" });
  await moveDrafts(shelf, "demo", "own");
  const all = await draftsAbout(shelf, "own/start");
  expect(all.map(({ text }) => text).sort()).toEqual(["mine", "of the demo"]);
  expect(all.find(({ text }) => text === "mine")?.tab).toBe("t");
  expect(await draftsAbout(shelf, "demo/start")).toEqual([]);
});
