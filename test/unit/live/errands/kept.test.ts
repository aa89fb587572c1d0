import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  type BackupFolder,
  deleteLap,
  dump,
  keptCopies,
  LedgerFault,
  noteSent,
  packOf,
  type Shelf,
} from "#db";
import { readBackup, readText } from "#files";
import { afterSession } from "../../../../src/live/errands/afterSession.ts";
import { readSource } from "../../../../src/live/errands/readSource.ts";
import { aFolder } from "../../../support/aFolder.ts";
import { aLap } from "../../../support/aLap.ts";
import { aShelvedEvening, fileOf, rowsNamed } from "../../../support/aShelvedEvening.ts";

/** What a backup file holds, as a program that knows nothing of this browser reads it. */
async function readBack(bytes: Blob) {
  const text = await readText(bytes);
  if (!text.ok) throw new Error(text.problem.wrong);
  const read = await readBackup(text.text, { lowest: 1, newest: 99, sha256: undefined });
  if (!read.ok) throw new Error(read.problem.wrong);
  const { title, tables } = read.backup;
  return { title, tables };
}

/**
 * The shelf with a folder chosen, and what is done after a session with it. A folder of the browser's can be stored, and
 * one in memory cannot, so its row stays out of the database.
 */
async function withFolder(handle: FileSystemDirectoryHandle, more: Partial<BackupFolder> = {}) {
  const evening = await aShelvedEvening();
  const { name, book } = evening;
  let row: BackupFolder | undefined = { logbook: name, handle, tag: "k7", ...more } as BackupFolder;
  const folders = {
    get: async () => row,
    put: async (changed: BackupFolder) => {
      row = changed;
    },
  };
  const shelf = { ...evening.shelf, folders: folders as unknown as Shelf["folders"] };
  const after = () =>
    afterSession(null, {
      book,
      shelf,
      readFile: readSource,
      tell: () => {},
      signal: new AbortController().signal,
    });
  return { ...evening, after, folder: () => row };
}

const copiesOf = async (shelf: Shelf, name: string) =>
  (await keptCopies(shelf, name)).map(({ why, title, sessions, laps }) => ({ why, title, sessions, laps }));

test("a backup holds every row under the title, whether it is made small or not, and the small one is smaller", async () => {
  const { name, book, send } = await aShelvedEvening();
  const rows = await dump(book);
  const [plain, small] = [
    await send(name, "backup", { title: "My evenings", isSmall: false }),
    await send(name, "backup", { title: "My evenings", isSmall: true }),
  ];
  expect(new TextDecoder().decode(plain.slice(0, 1))).toBe("{");
  expect(small.length).toBeLessThan(plain.length);
  for (const bytes of [plain, small]) {
    const { title, tables } = await readBack(new Blob([bytes]));
    expect(title).toBe("My evenings");
    expect(tables["runs"]).toEqual(rows.runs);
    expect(tables["sessions"]).toEqual(rows.sessions);
  }
});

test("a state kept before a replacement counts sessions and laps that are not deleted, and is the logbook as it was", async () => {
  const { name, book, shelf, runId, lapIds, send } = await aShelvedEvening();
  await deleteLap(book, { runId, lapId: lapIds[1] });
  const id = await send(name, "keep", { title: "Evenings", why: "replace" });
  expect(await copiesOf(shelf, name)).toEqual([{ why: "replace", title: "Evenings", sessions: 1, laps: 1 }]);
  const { title, tables } = await readBack(await packOf(shelf, id));
  expect(title).toBe("Evenings");
  expect(tables["runs"]).toEqual((await dump(book)).runs);
});

test("after a session the logbook is kept on the shelf once, and again only after a change", async () => {
  const { name, book, shelf, runId, send } = await aShelvedEvening();
  expect(await send(name, "afterSession", null)).toBeNull();
  await send(name, "afterSession", null);
  expect(await copiesOf(shelf, name)).toEqual([{ why: "session", title: "Evenings", sessions: 1, laps: 2 }]);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_600) });
  await send(name, "afterSession", null);
  expect((await copiesOf(shelf, name)).map(({ laps }) => laps)).toEqual([3, 2]);
});

test("after a session in the demo nothing is kept, nor of a logbook without a row", async () => {
  const { name, shelf, send } = await aShelvedEvening();
  await shelf.logbooks.update(name, { kind: "demo" });
  await send(name, "afterSession", null);
  expect(await copiesOf(shelf, name)).toEqual([]);
});

test("after a session a backup stands in the folder that was chosen, dated and under the logbook's title", async () => {
  const { handle, names } = aFolder({ "letter.txt": "dear friend" });
  const { name, clock, shelf, after, folder } = await withFolder(handle, { stopped: "it was full" });
  await after();
  const [letter, ...written] = names();
  expect(letter).toBe("letter.txt");
  expect(written).toHaveLength(1);
  expect(written[0]).toBe("Evenings-k7-2026-03-10T180000Z.json.gz");
  expect(folder()).toEqual({
    logbook: name,
    handle,
    tag: "k7",
    lastGoodAt: clock.now(),
    lastFile: written[0],
  });
  expect(await shelf.logbooks.get(name)).toMatchObject({ lastBackupAt: clock.now(), lapsSinceBackup: 0 });
});

const refusals: Readonly<Record<string, string>> = {
  NotFoundError: "the folder has been moved or deleted",
  NotAllowedError: "the browser asks again for leave to write into the folder",
  QuotaExceededError: "there is no room left where the folder is",
  NoModificationAllowedError: "the browser could not write the file (NoModificationAllowedError)",
};

for (const [kind, words] of Object.entries(refusals))
  test(`a folder that fails with ${kind} is noted in words, and the state is kept all the same`, async () => {
    const getFileHandle = async () => {
      throw new DOMException("no", kind);
    };
    const { handle } = aFolder({});
    const failing = Object.assign(handle, { getFileHandle });
    const { name, shelf, after, folder } = await withFolder(failing, { lastFile: "older" });
    await after();
    expect(folder()).toEqual({ logbook: name, handle, tag: "k7", lastFile: "older", stopped: words });
    expect(await copiesOf(shelf, name)).toHaveLength(1);
    expect(await shelf.logbooks.get(name)).not.toHaveProperty("lastBackupAt");
  });

test("a folder that the browser no longer lets the page write into is not written to", async () => {
  const { handle, names } = aFolder({});
  const asking = Object.assign(handle, { queryPermission: async () => "prompt" });
  const { after, folder } = await withFolder(asking);
  await after();
  expect(names()).toEqual([]);
  expect(folder()?.stopped).toBe(refusals["NotAllowedError"]);
});

test("what is sent to another device is the session asked for, or what was not sent before as it is", async () => {
  const { name, book, shelf, tools, sessionId, runId, comboId, send } = await aShelvedEvening();
  const one = await send(name, "part", { wanted: { kind: "session", sessionId }, title: "Evenings" });
  expect(one).toMatchObject({ sessions: 1, laps: 2 });
  expect(one).not.toHaveProperty("marks");
  const all = await send(name, "part", { wanted: { kind: "unsent" }, title: "Evenings" });
  const { title, tables } = await readBack(new Blob([all.bytes]));
  expect(title).toBe("Evenings");
  expect(tables["sessions"]).toMatchObject([{ id: sessionId, comboId }]);
  // Car, track, layout, combo, session, run.
  expect(all.rows).toBe(6);
  await noteSent(shelf, name, all.marks ?? new Map());
  expect(await send(name, "part", { wanted: { kind: "unsent" }, title: "Evenings" })).toMatchObject({
    rows: 0,
    laps: 0,
  });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_600) });
  const more = await send(name, "part", { wanted: { kind: "unsent" }, title: "Evenings" });
  expect(more).toMatchObject({ sessions: 1, laps: 3 });
  expect((await rowsNamed(name, tools)).runs).toHaveLength(1);
});

test("a file is restored as a logbook of its own, with its title and all of its rows", async () => {
  const { name, book, tools, send } = await aShelvedEvening();
  const rows = await dump(book);
  const told: string[] = [];
  const done = await send(
    name,
    "restore",
    { source: await fileOf(rows, "From the PC"), name: "restored" },
    { onProgress: ({ step }) => told.push(step) },
  );
  expect(done).toEqual({ title: "From the PC", rows: 6 });
  expect(await rowsNamed("restored", tools)).toEqual(rows);
  expect(told).toContain("6 of 6 rows stored");
});

test("a file that is no backup is refused with what is wrong, and nothing is changed", async () => {
  const { name, book, shelf, send } = await aShelvedEvening();
  const before = await dump(book);
  const source = new Blob(["{}"]);
  const looked = await send(name, "look", { source });
  expect(looked.ok).toBe(false);
  const merge = send(name, "merge", { source, from: "PC", title: "Evenings", isDateConfirmed: false });
  await expect(merge).rejects.toThrow(/Nothing was changed\.$/);
  await expect(merge).rejects.toBeInstanceOf(LedgerFault);
  expect(await dump(book)).toEqual(before);
  expect(await copiesOf(shelf, name)).toEqual([]);
});

test("an errand that is stopped changes nothing and says so", async () => {
  const { name, book, send } = await aShelvedEvening();
  const stop = new AbortController();
  stop.abort();
  const source = await fileOf(await dump(book));
  await expect(
    send(
      name,
      "merge",
      { source, from: "PC", title: "Evenings", isDateConfirmed: false },
      { signal: stop.signal },
    ),
  ).rejects.toMatchObject({ code: "cancelled", message: "Stopped; nothing was changed." });
});
