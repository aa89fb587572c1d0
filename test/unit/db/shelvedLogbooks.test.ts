import "fake-indexeddb/auto";

import { beforeEach, expect, test, vi } from "vitest";
import {
  backupFolder,
  createLogbook,
  daysOpened,
  deleteDatabase,
  deleteUnlisted,
  forgetBackupFolder,
  idMaker,
  keepCopy,
  keptCopies,
  listLogbooks,
  newLogbookName,
  noteBackup,
  noteClock,
  noteLaps,
  noteOpened,
  notePurged,
  noteSent,
  noteToldAhead,
  noteUnlisted,
  openShelf,
  packOf,
  readDrafts,
  removeLogbook,
  renameLogbook,
  replaceLogbook,
  type Shelf,
  type ShelvedLogbook,
  setBackupFolder,
  writeDraft,
} from "#db";
import { addDays } from "#domain";
import { fixedClock } from "../../support/fixedClock.ts";

const at = Date.UTC(2026, 2, 10);
const clock = fixedClock(at);
let shelf: Shelf;
let mine: ShelvedLogbook;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  clock.set(at);
  shelf = await openShelf({ clock: clock.now, newId: idMaker(clock.now), name: `logbooks-${opened}` });
  mine = await createLogbook(shelf, { title: " Mine ", name: "mine" });
});
const stored = async (name = "mine") => (await listLogbooks(shelf)).find((row) => row.name === name);
const names = async () => (await listLogbooks(shelf)).map(({ name }) => name);
const databases = async () => (await indexedDB.databases()).map(({ name }) => name);
async function made(name: string): Promise<void> {
  const request = indexedDB.open(name);
  await new Promise((resolve) => {
    request.onsuccess = resolve;
  });
  request.result.close();
}
const handle = { kind: "directory" } as FileSystemDirectoryHandle;

test("a logbook that is made has its title, its day, and nothing counted yet", async () => {
  const row = {
    name: "mine",
    title: "Mine",
    kind: "own",
    createdAt: at,
    lastOpened: at,
    lapsSinceBackup: 0,
    openedOn: [],
  };
  expect(mine).toEqual(row);
  expect(await stored()).toEqual({ ...row, turn: 1 });
  expect(await databases()).not.toContain("mine");
});

test("a logbook without a name of its own is given one, another each time", async () => {
  const { name } = await createLogbook(shelf, { title: "", kind: "demo" });
  expect(name).toMatch(/^lap-ledger-[0-9a-f-]{36}$/);
  expect(newLogbookName(shelf)).not.toBe(name);
  expect(await stored(name)).toMatchObject({ title: "My logbook", kind: "demo", turn: 2 });
});

test("logbooks from before openings were counted are listed last, by the clock and then by name", async () => {
  const old = { ...mine, turn: undefined };
  await shelf.logbooks.bulkAdd([
    { ...old, name: "b", lastOpened: 5 },
    { ...old, name: "a", lastOpened: 5 },
    { ...old, name: "c", lastOpened: 9 },
  ] as never);
  expect(await names()).toEqual(["mine", "c", "a", "b"]);
});

test("a logbook is called what the driver calls it, and never nothing", async () => {
  await renameLogbook(shelf, "mine", "  Evenings ");
  expect(await stored()).toMatchObject({ title: "Evenings" });
  await expect(renameLogbook(shelf, "mine", "  ")).rejects.toMatchObject({
    code: "invalid",
    message: "Name not changed: a logbook needs a name.",
  });
});

test("an opening is noted with its turn, its day and the clock, and its days are counted", async () => {
  await createLogbook(shelf, { title: "Other", name: "other" });
  clock.pass(1000);
  await noteOpened(shelf, "mine", "2026-03-10");
  await noteOpened(shelf, "mine", "2026-03-10");
  const row = await stored();
  expect(row).toMatchObject({ turn: 4, lastOpened: at + 1000, openedOn: ["2026-03-10"], daysOpened: 1 });
  expect(await stored("other")).toMatchObject({ turn: 2, openedOn: [] });
});

test("the last thirty-one days of opening are kept, and all are counted", async () => {
  for (let n = 0; n < 33; n += 1) await noteOpened(shelf, "mine", addDays("2026-03-10", n));
  const row = await stored();
  expect(row?.openedOn).toHaveLength(31);
  expect([row?.openedOn[0], row?.openedOn.at(-1)]).toEqual(["2026-03-12", "2026-04-11"]);
  expect(row?.daysOpened).toBe(33);
});

test("days of a logbook from before they were counted are those it has a note of", async () => {
  const old = { ...mine, openedOn: ["2026-03-08", "2026-03-09"] };
  expect(daysOpened(old)).toBe(2);
  expect(daysOpened({ ...old, daysOpened: 7 })).toBe(7);
  await shelf.logbooks.put(old);
  await noteOpened(shelf, "mine", "2026-03-10");
  expect(await stored()).toMatchObject({ daysOpened: 3 });
});

test("laps and backups, jumps of the clock and what was told of it are noted of their logbook alone", async () => {
  await createLogbook(shelf, { title: "Other", name: "other" });
  await noteLaps(shelf, "mine", 3);
  await noteLaps(shelf, "mine", 2);
  expect(await stored()).toMatchObject({ lapsSinceBackup: 5 });
  clock.pass(1000);
  await noteBackup(shelf, "mine");
  expect(await stored()).toMatchObject({ lapsSinceBackup: 0, lastBackupAt: at + 1000, lastOpened: at });
  await noteClock(shelf, "mine");
  await noteToldAhead(shelf, "mine", at + 5);
  expect(await stored()).toMatchObject({ lastOpened: at + 1000, toldAhead: at + 5 });
  const other = await stored("other");
  expect(other).toMatchObject({ lapsSinceBackup: 0, lastOpened: at });
  expect(other).not.toHaveProperty("lastBackupAt");
  expect(other).not.toHaveProperty("toldAhead");
});

test("what was sent, and what waits to be removed for good, is noted with when", async () => {
  await noteSent(shelf, "mine", new Map([["a", 1]]));
  const waiting = new Map([["a", { deletedAt: 1, day: 2 }]]);
  await notePurged(shelf, "mine", "2026-03-10", waiting);
  expect(await shelf.sent.toArray()).toEqual([{ logbook: "mine", at, marks: new Map([["a", 1]]) }]);
  expect(await shelf.deleted.toArray()).toEqual([{ logbook: "mine", waiting }]);
  expect(await stored()).toMatchObject({ purgedOn: "2026-03-10" });
});

/** Fills every table of the shelf for a logbook. */
async function fill(name: string): Promise<void> {
  await setBackupFolder(shelf, { logbook: name, handle, tag: name, seen: {} });
  await noteSent(shelf, name, new Map([[name, 1]]));
  await notePurged(shelf, name, "2026-03-10", new Map());
  await writeDraft(shelf, { key: `${name}/entry|tab`, text: name });
  const packed = new TextEncoder().encode(name);
  await keepCopy(shelf, { logbook: name, title: name, why: "merge", sessions: 1, laps: 1, packed });
}
const held = async (name: string) => ({
  folder: (await backupFolder(shelf, name))?.tag,
  sent: (await shelf.sent.get(name))?.marks.size,
  deleted: (await shelf.deleted.get(name))?.logbook,
  drafts: (await readDrafts(shelf)).filter(({ key }) => key.startsWith(`${name}/`)).map(({ text }) => text),
  copies: (await keptCopies(shelf, name)).map(({ title }) => title),
});
const full = (name: string, of = name) => ({
  folder: of,
  sent: 1,
  deleted: name,
  drafts: [of],
  copies: [of],
});
const empty = { folder: undefined, sent: undefined, deleted: undefined, drafts: [], copies: [] };

test("a logbook that is removed goes with all that was kept of it, and nothing of another goes", async () => {
  await createLogbook(shelf, { title: "Other", name: "other" });
  await fill("mine");
  await fill("other");
  await removeLogbook(shelf, "mine");
  expect(await names()).toEqual(["other"]);
  expect(await held("mine")).toEqual(empty);
  expect(await held("other")).toEqual(full("other"));
  expect(await shelf.packs.count()).toBe(1);
});

test("a restored database takes over all that was kept of the old one, which waits in no list to be deleted", async () => {
  await createLogbook(shelf, { title: "Other", name: "other" });
  await fill("mine");
  await fill("other");
  await noteUnlisted(shelf, "new");
  clock.pass(1000);
  const next = await replaceLogbook(shelf, "mine", "new");
  expect(next).toMatchObject({ name: "new", title: "Mine", kind: "own", lastOpened: at + 1000, turn: 3 });
  expect(await listLogbooks(shelf)).toMatchObject([next, { name: "other" }]);
  expect(await held("mine")).toEqual(empty);
  expect(await held("new")).toEqual(full("new", "mine"));
  expect(await held("other")).toEqual(full("other"));
  expect(await shelf.unlisted.toArray()).toEqual([{ name: "mine", since: at + 1000 }]);
});

test("a logbook of which nothing was kept is replaced all the same", async () => {
  await replaceLogbook(shelf, "mine", "new");
  expect(await names()).toEqual(["new"]);
  expect(await held("new")).toEqual(empty);
});

test("a logbook another tab removed meanwhile is not replaced", async () => {
  await fill("gone");
  await expect(replaceLogbook(shelf, "gone", "new")).rejects.toMatchObject({
    code: "missing",
    message: "Not replaced: the logbook is no longer in the list.",
  });
  expect(await held("gone")).toEqual(full("gone"));
});

test("a logbook entered in the list is not among those to be deleted", async () => {
  await noteUnlisted(shelf, "new");
  expect(await shelf.unlisted.toArray()).toEqual([{ name: "new", since: at }]);
  await createLogbook(shelf, { title: "Restored", name: "new" });
  expect(await shelf.unlisted.count()).toBe(0);
});

test("what was noted unlisted and is listed after all is struck out, and its database stays", async () => {
  await made("mine");
  await noteUnlisted(shelf, "mine");
  await deleteUnlisted(shelf, "2026-03-10");
  expect(await shelf.unlisted.count()).toBe(0);
  // Nor where it was seen unlisted on another day.
  await shelf.unlisted.put({ name: "mine", since: at, seenOn: "2026-03-09" });
  await deleteUnlisted(shelf, "2026-03-10");
  expect(await shelf.unlisted.count()).toBe(0);
  expect(await names()).toEqual(["mine"]);
  expect(await databases()).toContain("mine");
});

test("what keeps the list of unlisted databases from being read is said, but for a list that is closed", async () => {
  const unlisted = { toArray: () => Promise.reject(new DOMException("full", "QuotaExceededError")) };
  await expect(deleteUnlisted({ ...shelf, unlisted } as never, "2026-03-10")).rejects.toMatchObject({
    code: "quota",
    message: expect.stringMatching(/^What a broken restore left behind was not removed: /),
  });
});

test("an unlisted database is looked at on one day and deleted on another", async () => {
  await made("left");
  await noteUnlisted(shelf, "left");
  for (let n = 0; n < 2; n += 1) {
    await deleteUnlisted(shelf, "2026-03-10");
    expect(await shelf.unlisted.toArray()).toEqual([{ name: "left", since: at, seenOn: "2026-03-10" }]);
    expect(await databases()).toContain("left");
  }
  await deleteUnlisted(shelf, "2026-03-11");
  expect(await shelf.unlisted.count()).toBe(0);
  expect(await databases()).not.toContain("left");
});

test("a folder chosen for backups is remembered, replaced and forgotten", async () => {
  expect(await backupFolder(shelf, "mine")).toBeUndefined();
  await setBackupFolder(shelf, { logbook: "mine", handle, tag: "ab", seen: {} });
  await setBackupFolder(shelf, { logbook: "mine", handle, tag: "cd", seen: {} });
  expect(await backupFolder(shelf, "mine")).toEqual({ logbook: "mine", handle, tag: "cd", seen: {} });
  await forgetBackupFolder(shelf, "mine");
  expect(await backupFolder(shelf, "mine")).toBeUndefined();
});

test("a database that another tab keeps open is waited for two seconds, and then it is said", async () => {
  const open = indexedDB.open("busy");
  await new Promise((resolve) => {
    open.onsuccess = resolve;
  });
  const times = vi.spyOn(globalThis, "setTimeout");
  const deleting = deleteDatabase("busy");
  await expect(deleting).rejects.toMatchObject({
    code: "closed",
    message: "Not erased yet: another tab has this logbook open. Close it.",
  });
  expect(times.mock.calls.map(([, ms]) => ms)).toContain(2000);
  times.mockRestore();
  open.result.close();
});

test("where it is told of a tab that holds things up, a deletion waits for it", async () => {
  const open = indexedDB.open("held");
  await new Promise((resolve) => {
    open.onsuccess = resolve;
  });
  let told = 0;
  await deleteDatabase("held", () => {
    told += 1;
    open.result.close();
  });
  expect(told).toBe(1);
  expect(await databases()).not.toContain("held");
});

test("the file of a kept state that has gone is missed in words", async () => {
  await expect(packOf(shelf, "nowhere")).rejects.toMatchObject({
    message: expect.stringMatching(/^Kept state not read: it is no longer there/),
  });
});

const failing: readonly (readonly [string, () => Promise<unknown>])[] = [
  ["Logbook not made", () => createLogbook(shelf, { title: "x" })],
  ["Name not changed", () => renameLogbook(shelf, "mine", "x")],
  ["Logbook not removed from the list", () => removeLogbook(shelf, "mine")],
  ["Logbook not replaced", () => replaceLogbook(shelf, "mine", "new")],
  ["Opening not noted", () => noteOpened(shelf, "mine", "2026-03-10")],
  ["Jump of the clock not noted", () => noteClock(shelf, "mine")],
  ["Dates after today not noted", () => noteToldAhead(shelf, "mine", 5)],
  ["Removal of deleted rows not noted", () => notePurged(shelf, "mine", "2026-03-10", new Map())],
  ["Laps since the last backup not counted", () => noteLaps(shelf, "mine", 1)],
  ["Date of the backup not noted", () => noteBackup(shelf, "mine")],
  ["Sending not noted", () => noteSent(shelf, "mine", new Map())],
  ["Folder not remembered", () => setBackupFolder(shelf, { logbook: "mine", handle, tag: "", seen: {} })],
  ["Automatic backup not ended", () => forgetBackupFolder(shelf, "mine")],
  ["Restore not begun", () => noteUnlisted(shelf, "new")],
  ["Kept state not read", () => packOf(shelf, "k")],
];
for (const [words, change] of failing)
  test(`${words} is what is said when the list of logbooks was closed by another tab`, async () => {
    shelf.database.close({ disableAutoOpen: true });
    await expect(change()).rejects.toMatchObject({
      code: "closed",
      message: expect.stringMatching(`^${words}: `),
    });
  });

test("what was left of a broken restore waits for another time where the list is closed", async () => {
  shelf.database.close({ disableAutoOpen: true });
  await expect(deleteUnlisted(shelf, "2026-03-10")).resolves.toBeUndefined();
});

test("a list that another tab upgrades lets go, and does not come back by itself", async () => {
  const newer = indexedDB.open(shelf.database.name, 999);
  await new Promise((resolve) => {
    newer.onsuccess = resolve;
  });
  newer.result.close();
  await expect(listLogbooks(shelf)).rejects.toMatchObject({ name: "DatabaseClosedError" });
});

test("a list that cannot be opened is named", async () => {
  const spy = vi.spyOn(indexedDB, "open").mockImplementation(() => {
    throw new DOMException("denied", "SecurityError");
  });
  await expect(openShelf({ clock: clock.now, newId: shelf.newId, name: "denied" })).rejects.toMatchObject({
    code: "refused",
    message: expect.stringMatching(/^List of logbooks not opened: /),
  });
  spy.mockRestore();
});

test("without a name the shelf is the one that every part of the app opens", async () => {
  const same = await openShelf({ clock: clock.now, newId: shelf.newId });
  expect(same.database.name).toBe("lap-ledger");
  expect(await databases()).toContain("lap-ledger");
  same.close();
  expect(same.database.isOpen()).toBe(false);
});
