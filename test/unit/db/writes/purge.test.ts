import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, deleteLap, deleteRun, deleteSession, dump, purgeDeleted, startSession } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";
import { failingStore } from "../../../support/failingStore.ts";

async function withLaps() {
  const open = await anOpenSession();
  const { book, clock, runId } = open;
  const ids = [book.newId(), book.newId(), book.newId()] as const;
  for (const [at, id] of ids.entries()) {
    clock.pass(84_000);
    await addLap(book, { runId, id, lap: aLap(84_000 + at) });
  }
  const timesLeft = async () => (await dump(book)).runs.flatMap(({ laps }) => laps.map(({ ms }) => ms));
  return { ...open, ids, timesLeft };
}

test("a deleted lap goes for good on the thirtieth day on which the logbook is opened, not before", async () => {
  const { book, runId, ids, timesLeft } = await withLaps();
  await deleteLap(book, { runId, lapId: ids[1] });
  const first = await purgeDeleted(book, new Map(), 100);
  expect(first).toMatchObject({ removed: 0 });
  expect([...first.waiting]).toEqual([[ids[1], { deletedAt: expect.any(Number), day: 100 }]]);
  const later = await purgeDeleted(book, first.waiting, 129);
  expect([later.removed, [...later.waiting.values()].map(({ day }) => day)]).toEqual([0, [100]]);
  expect(await timesLeft()).toEqual([84_000, 84_001, 84_002]);
  const last = await purgeDeleted(book, later.waiting, 130);
  expect([last.removed, last.waiting.size]).toEqual([1, 0]);
  expect(await timesLeft()).toEqual([84_000, 84_002]);
});

test("each deletion waits by itself, and what is not deleted never waits", async () => {
  const { book, runId, ids, timesLeft } = await withLaps();
  await deleteLap(book, { runId, lapId: ids[0] });
  const first = await purgeDeleted(book, new Map(), 1);
  await deleteLap(book, { runId, lapId: ids[2] });
  const second = await purgeDeleted(book, first.waiting, 10);
  expect([...second.waiting].map(([id, { day }]) => [id, day])).toEqual([
    [ids[0], 1],
    [ids[2], 10],
  ]);
  const third = await purgeDeleted(book, second.waiting, 31);
  expect([third.removed, [...third.waiting.keys()]]).toEqual([1, [ids[2]]]);
  expect(await timesLeft()).toEqual([84_001, 84_002]);
  expect((await purgeDeleted(book, third.waiting, 40)).removed).toBe(1);
  expect(await timesLeft()).toEqual([84_001]);
});

test("a deleted session goes with its runs, each counted, and another evening stays whole", async () => {
  const { book, comboId, sessionId, timesLeft } = await withLaps();
  const other = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  const lapId = book.newId();
  await addLap(book, { runId: other.runId, id: lapId, lap: aLap(90_000) });
  await deleteSession(book, { sessionId });
  const { waiting } = await purgeDeleted(book, new Map(), 1);
  expect(waiting.size, "the session and its run").toBe(2);
  expect((await purgeDeleted(book, waiting, 31)).removed).toBe(2);
  expect((await dump(book)).sessions.map(({ id }) => id)).toEqual([other.sessionId]);
  expect(await timesLeft()).toEqual([90_000]);
});

test("what is deleted anew waits anew", async () => {
  const { book, clock, sessionId } = await withLaps();
  await deleteSession(book, { sessionId });
  const { waiting } = await purgeDeleted(book, new Map(), 1);
  clock.pass(1000);
  const runs = book.database.table("runs");
  await runs.toCollection().modify({ deletedAt: clock.now() });
  const again = await purgeDeleted(book, waiting, 31);
  expect(again.removed, "the session, but not its run").toBe(1);
  expect([...again.waiting.values()]).toEqual([{ deletedAt: clock.now(), day: 31 }]);
});

test("nothing is removed while the logbook is closed, nor half where the disk fails", async () => {
  const { book, runId } = await withLaps();
  await deleteRun(book, { runId });
  const before = await dump(book);
  const { waiting } = await purgeDeleted(book, new Map(), 1);
  const fault = failingStore(1);
  await expect(purgeDeleted(book, waiting, 31)).rejects.toMatchObject({
    code: "quota",
    message: expect.stringMatching(/^Deleted rows not removed: this browser has no space left/),
  });
  fault.mend();
  expect(await dump(book)).toEqual(before);
  const closed = { ...book, status: { ...book.status, get: () => ({ kind: "closed" }) as const } };
  await expect(purgeDeleted(closed, waiting, 31)).rejects.toMatchObject({
    message: expect.stringMatching(/^Deleted rows not removed: the browser lost its connection/),
  });
  expect((await purgeDeleted(book, waiting, 31)).removed).toBe(1);
});
