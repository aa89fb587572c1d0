import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addReference,
  addRun,
  bringBack,
  bringBackLap,
  combosWithNames,
  deleteLap,
  deleteReference,
  deleteRun,
  deleteSession,
  referencesOfCombo,
  runOf,
  runsOfSession,
  sessionOf,
  startSession,
  undoChange,
} from "#db";
import { lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

test("a session comes back with the runs that were deleted with it, not with one deleted before", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const { runId: second } = await addRun(book, { sessionId });
  await deleteRun(book, { runId });
  clock.pass(2000);
  await deleteSession(book, { sessionId });
  const change = await bringBack(book, { table: "sessions", id: sessionId });
  expect(change.what).toBe("Brought back");
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([second]);
  expect(await sessionOf(book, sessionId)).not.toHaveProperty("deletedAt");
  await undoChange(book, change);
  expect(await sessionOf(book, sessionId)).toBeUndefined();
  expect(await runsOfSession(book, sessionId)).toEqual([]);
});

test("a run deleted just before its session, by a clock a little behind, is taken to have gone with it", async () => {
  for (const [apart, isBack] of [
    [-1000, false],
    [-999, true],
    [999, true],
    [1000, false],
  ] as const) {
    const { book, sessionId, runId } = await anOpenSession();
    await deleteSession(book, { sessionId });
    const { deletedAt = 0 } = (await book.tables.sessions.get(sessionId)) ?? {};
    const at = deletedAt + apart;
    await book.database.table("runs").update(runId, { deletedAt: at, updatedAt: at, had: [] });
    await bringBack(book, { table: "sessions", id: sessionId });
    expect((await runOf(book, runId)) !== undefined, `${apart} ms`).toBe(isBack);
  }
});

test("a session that is there stays as it is when it is brought back, and so do runs deleted from it", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await deleteRun(book, { runId });
  const { edits } = await bringBack(book, { table: "sessions", id: sessionId });
  expect(edits).toEqual([]);
  expect(await runOf(book, runId)).toBeUndefined();
});

test("a run comes back with its session and what names its combo, and with no other run", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const { runId: second } = await addRun(book, { sessionId });
  await deleteSession(book, { sessionId });
  for (const table of ["combos", "cars", "layouts", "tracks"])
    await book.database.table(table).toCollection().modify({ deletedAt: 5 });
  await bringBack(book, { table: "runs", id: second });
  expect(await sessionOf(book, sessionId)).toBeDefined();
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([second]);
  expect(await runOf(book, runId)).toBeUndefined();
  expect(await combosWithNames(book)).toMatchObject([
    { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } },
  ]);
});

test("another row comes back alone", async () => {
  const { book, comboId } = await anOpenSession();
  const { id } = await addReference(book, { comboId, ms: 82_000, decimals: 3, source: "a friend" });
  await deleteReference(book, id);
  await book.database.table("cars").toCollection().modify({ deletedAt: 5 });
  await bringBack(book, { table: "references", id });
  expect(await referencesOfCombo(book, comboId)).toHaveLength(1);
  const cars = await book.tables.cars.toArray();
  expect(cars.map(({ deletedAt }) => deletedAt)).toEqual([5]);
});

test("what has been deleted for good does not come back, and the driver is told", async () => {
  const { book } = await aLogbook();
  await expect(bringBack(book, { table: "cars", id: book.newId() })).rejects.toMatchObject({
    code: "missing",
    message: "Not brought back: it has been deleted for good.",
  });
});

test("a run whose combo, layout or session is gone for good comes back all the same", async () => {
  for (const table of ["combos", "layouts", "sessions"]) {
    const { book, runId } = await anOpenSession();
    await deleteRun(book, { runId });
    await book.database.table(table).clear();
    await bringBack(book, { table: "runs", id: runId });
    expect(await runOf(book, runId), table).toBeDefined();
  }
});

test("of two deleted laps the one asked for comes back, and undo deletes it again", async () => {
  const { book, runId, clock } = await anOpenSession();
  const ids = [book.newId(), book.newId(), book.newId()] as const;
  for (const [at, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(84_000 + at) });
  for (const lapId of ids.slice(0, 2)) await deleteLap(book, { runId, lapId });
  clock.pass(1000);
  const times = async () => lapsInOrder((await runOf(book, runId)) ?? { laps: [] }).map(({ ms }) => ms);
  const change = await bringBackLap(book, { runId, lapId: ids[0] });
  expect(change.what).toBe("Lap brought back");
  expect(await times()).toEqual([84_000, 84_002]);
  await undoChange(book, change);
  expect(await times()).toEqual([84_002]);
  await deleteRun(book, { runId });
  await expect(bringBackLap(book, { runId, lapId: ids[0] })).rejects.toMatchObject({ code: "missing" });
});

test("a session of another combo begun meanwhile is left alone by what comes back", async () => {
  const { book, comboId, sessionId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const there = await startSession(book, { comboId: other, date: "2026-03-10", zone: "UTC" });
  await deleteSession(book, { sessionId: there.sessionId });
  await deleteSession(book, { sessionId });
  await bringBack(book, { table: "sessions", id: sessionId });
  expect(await sessionOf(book, sessionId)).toMatchObject({ comboId });
  expect(await sessionOf(book, there.sessionId)).toBeUndefined();
});
