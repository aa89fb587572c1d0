import "fake-indexeddb/auto";

import { forceCloseDatabase } from "fake-indexeddb";
import { expect, test, vi } from "vitest";
import {
  addLap,
  addRig,
  deleteCornerReview,
  deletePage,
  deleteReference,
  deleteRig,
  deleteRigTest,
  deleteRun,
  deleteSession,
  deleteTarget,
  dump,
  editLayout,
  type LogbookStatus,
  moveSessionToCombo,
  renameCar,
  renameTrack,
  runOf,
  setPreferences,
} from "#db";

import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("a write to a logbook that is not open is refused, and says why and what helps", async () => {
  const { book, runId } = await anOpenSession();
  const before = await dump(book);
  const said: [LogbookStatus["kind"], string, string][] = [
    [
      "blocked",
      "closed",
      "another tab of Lap Ledger holds the logbook open in an older version. Close it to go on.",
    ],
    ["newerTab", "newerTab", "Lap Ledger was updated in another tab. Reload this page; typed text is kept."],
    ["newer", "newer", "this logbook was last used by a newer version of Lap Ledger. Reload to get it."],
    ["gone", "gone", "the stored logbook has disappeared from this browser. Restore a backup."],
    [
      "closed",
      "closed",
      "the browser lost its connection to the logbook. Reload the page; typed text is kept.",
    ],
  ];
  for (const [kind, code, why] of said) {
    const closed = { ...book, status: { ...book.status, get: () => ({ kind }) } };
    await expect(addLap(closed, { runId, id: book.newId(), lap: aLap(83_000) })).rejects.toMatchObject({
      code,
      message: `Lap not stored: ${why}`,
    });
  }
  expect(await dump(book)).toEqual(before);
});

test("what is gone is named when something is to be done with it, whatever it is", async () => {
  const { book, comboId, sessionId } = await anOpenSession();
  const id = book.newId();
  const said: [Promise<unknown>, string][] = [
    [renameCar(book, { id, name: "New" }), "car is"],
    [renameTrack(book, { id, name: "New" }), "track is"],
    [editLayout(book, { layoutId: id, patch: {} }), "layout is"],
    [moveSessionToCombo(book, { sessionId, comboId: id }), "combo is"],
    [deletePage(book, id), "page is"],
    [deleteReference(book, id), "reference lap is"],
    [deleteSession(book, { sessionId: id }), "session is"],
    [deleteRun(book, { runId: id }), "run is"],
    [deleteRig(book, id), "rig settings are"],
    [deleteTarget(book, id), "target is"],
    [deleteRigTest(book, id), "rig test is"],
    [deleteCornerReview(book, id), "corner review is"],
  ];
  for (const [write, what] of said)
    await expect(write).rejects.toMatchObject({
      code: "missing",
      message: `Nothing was changed: the ${what} no longer there. It may have been deleted in another tab.`,
    });
  expect(comboId).not.toBe(id);
});

test("a row that was deleted is as gone as one that never was", async () => {
  const { book, runId } = await anOpenSession();
  await deleteRun(book, { runId });
  await expect(deleteRun(book, { runId })).rejects.toMatchObject({ code: "missing" });
  await expect(addLap(book, { runId, id: book.newId(), lap: aLap(83_000) })).rejects.toMatchObject({
    code: "missing",
  });
});

test("a connection that is lost and cannot be had again fails the write by its name, and nothing is stored", async () => {
  const { book, runId } = await anOpenSession();
  forceCloseDatabase(book.database.backendDB() as never);
  const open = vi.spyOn(book.database, "open").mockImplementation(() => {
    throw new DOMException("Connection lost", "UnknownError");
  });
  await expect(addLap(book, { runId, id: book.newId(), lap: aLap(83_000) })).rejects.toMatchObject({
    code: "closed",
    message: "Lap not stored: the browser could not reach the logbook. Reload the page; typed text is kept.",
  });
  open.mockRestore();
  await book.database.open();
  expect((await runOf(book, runId))?.laps).toEqual([]);
});

test("a connection that is lost again at the second try is told, not tried for ever", async () => {
  const { book, runId } = await anOpenSession();
  let tries = 0;
  const transaction = vi.spyOn(book.database, "transaction").mockImplementation((() => {
    tries += 1;
    throw new DOMException("closed", "InvalidStateError");
  }) as never);
  await expect(addLap(book, { runId, id: book.newId(), lap: aLap(83_000) })).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^Lap not stored: the browser lost its connection/),
  });
  expect(tries).toBe(2);
  transaction.mockRestore();
});

test("a connection that is lost once the write has begun is not had again: what was stored of it is not known", async () => {
  const { book, runId } = await anOpenSession();
  const begun = vi.spyOn(book.database, "transaction");
  const put = vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("lost", "InvalidStateError");
  });
  await expect(addLap(book, { runId, id: book.newId(), lap: aLap(83_000) })).rejects.toMatchObject({
    code: "closed",
  });
  put.mockRestore();
  expect(begun).toHaveBeenCalledTimes(1);
  begun.mockRestore();
  expect((await runOf(book, runId))?.laps).toEqual([]);
});

test("an error of another kind is not tried again, and says what was not done", async () => {
  const { book } = await anOpenSession();
  let tries = 0;
  const transaction = vi.spyOn(book.database, "transaction").mockImplementation((() => {
    tries += 1;
    throw new DOMException("no", "ConstraintError");
  }) as never);
  await expect(setPreferences(book, { settlingLaps: 1 })).rejects.toMatchObject({
    code: "failed",
    message: expect.stringMatching(/^Preferences not changed: the browser's database gave up/),
  });
  expect(tries).toBe(1);
  transaction.mockRestore();
});

test("a row is given out as it will be read: the same write finds what it has just stored", async () => {
  const { book, clock } = await anOpenSession();
  const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };
  const { id, edits, what } = await addRig(book, { ...rig, from: "2026-03-01" });
  expect(what).toBe("Rig settings added");
  expect(edits.filter(({ table }) => table === "rigs")).toEqual([
    {
      table: "rigs",
      id,
      after: { ...rig, from: "2026-03-01", id, createdAt: clock.now(), updatedAt: clock.now() },
    },
  ]);
});

test("no edit is told of a row that is after a write as it was before", async () => {
  const { book } = await anOpenSession();
  await setPreferences(book, { settlingLaps: 1 });
  const [edit] = (await setPreferences(book, { settlingLaps: 2 })).edits;
  expect(edit).toMatchObject({
    table: "preferences",
    before: { settlingLaps: 1 },
    after: { settlingLaps: 2 },
  });
});

test("a row that leaves behind a stamp keeps the stamps it had, twenty at most, and the leaps of a clock among them", async () => {
  const { book, clock } = await anOpenSession();
  const start = clock.now();
  await setPreferences(book, { settlingLaps: 0 });
  // The first write makes the row and changes it, a stamp apart: of these two the first is the one to go.
  clock.pass(1_000_000);
  for (let n = 0; n < 30; n += 1) {
    clock.pass(1000);
    await setPreferences(book, { settlingLaps: n % 2 === 0 ? 1 : 2 });
  }
  const row = (await dump(book)).preferences[0];
  expect(row?.had).toHaveLength(20);
  expect(row?.had?.[0]).toBe(start + 1);
  expect(row?.had).toEqual(row?.had?.toSorted((a, b) => a - b));
  expect(row?.updatedAt).toBe(clock.now());
  expect(row?.had).not.toContain(clock.now());
});
