import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRun,
  bringBackLap,
  deletedLaps,
  deletedRows,
  deleteLap,
  deleteRun,
  deleteSession,
  namesOfDeleted,
  runOf,
  runsOfSession,
  runsWithDeletedLaps,
  strandedRuns,
} from "#db";
import type { Run } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

async function withLaps() {
  const open = await anOpenSession();
  const { book, clock, runId } = open;
  const lapIds = [book.newId(), book.newId(), book.newId()] as const;
  for (const [at, id] of lapIds.entries()) {
    clock.pass(84_000);
    await addLap(book, { runId, id, lap: aLap(84_000 + at) });
  }
  return { ...open, lapIds };
}

test("deleted laps of runs are listed, the last deleted first, and one that is brought back is none", async () => {
  const { book, clock, runId, sessionId, lapIds } = await withLaps();
  expect(deletedLaps(await runsOfSession(book, sessionId))).toEqual([]);
  expect(await runsWithDeletedLaps(book)).toEqual([]);
  for (const lapId of [lapIds[0], lapIds[2]]) {
    clock.pass(1000);
    await deleteLap(book, { runId, lapId });
  }
  const runs = await runsWithDeletedLaps(book);
  expect(runs.map(({ id }) => id)).toEqual([runId]);
  expect(deletedLaps(runs).map(({ runId: of, lap }) => [of, lap.id, lap.ms])).toEqual([
    [runId, lapIds[2], 84_002],
    [runId, lapIds[0], 84_000],
  ]);
  const back = await bringBackLap(book, { runId, lapId: lapIds[0] });
  expect(back.what).toBe("Lap brought back");
  expect(deletedLaps(await runsOfSession(book, sessionId)).map(({ lap }) => lap.id)).toEqual([lapIds[2]]);
  const laps = (await runOf(book, runId))?.laps ?? [];
  expect(laps.map((lap) => "deletedAt" in lap)).toEqual([false, false, true]);
  await deleteRun(book, { runId });
  expect(await runsWithDeletedLaps(book)).toEqual([]);
});

test("deleted rows of all tables are listed, the last deleted first", async () => {
  const { book, clock, runId, sessionId } = await withLaps();
  expect(await deletedRows(book)).toEqual([]);
  clock.pass(1000);
  await deleteRun(book, { runId });
  clock.pass(1000);
  const { runId: second } = await addRun(book, { sessionId });
  await book.database
    .table("cars")
    .toCollection()
    .modify({ deletedAt: clock.now() + 500 });
  clock.pass(1000);
  await deleteSession(book, { sessionId });
  const rows = await deletedRows(book);
  expect(rows.map(({ table }) => table).toSorted()).toEqual(["cars", "runs", "runs", "sessions"]);
  expect(rows.map(({ deletedAt }) => deletedAt)).toEqual(
    rows.map(({ deletedAt }) => deletedAt).toSorted((a, b) => b - a),
  );
  expect(rows.at(-1)).toMatchObject({ table: "runs", id: runId, row: { id: runId, sessionId } });
  expect(rows.map(({ id }) => id)).toEqual(expect.arrayContaining([sessionId, second]));
});

test("a run under a deleted session that is not deleted itself is found: only a merge can make one", async () => {
  const { book, sessionId, runId } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  expect(await strandedRuns(book)).toEqual([]);
  await deleteSession(book, { sessionId });
  expect(await strandedRuns(book)).toEqual([]);
  const run = await book.database.table<Run>("runs").get(runId);
  const { deletedAt: _, ...live } = run as Run;
  await book.database.table("runs").put(live);
  expect((await strandedRuns(book)).map(({ id }) => id)).toEqual([runId]);
  expect(second).not.toBe(runId);
});

test("deleted runs are named by their combo, session and number, though all of these are deleted", async () => {
  const { book, sessionId, runId, comboId } = await withLaps();
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(85_000) });
  const runs = await runsOfSession(book, sessionId);
  await deleteRun(book, { runId });
  const gone = (await book.database.table<Run>("runs").get(runId)) as Run;
  const names = await namesOfDeleted(book, [gone, ...runs]);
  expect(names.numberOf(gone)).toBe(1);
  expect(names.numberOf(runs[1] as Run), "those after a deleted run close up").toBe(1);
  expect(names.combos.get(comboId)).toBe("Varnholt Ring · Club hatch");
  expect([...names.sessions.keys()]).toEqual([sessionId]);
  await deleteSession(book, { sessionId });
  await book.database.table("cars").toCollection().modify({ deletedAt: 5 });
  const after = await namesOfDeleted(book, [gone]);
  expect(after.combos.get(comboId)).toBe("Varnholt Ring · Club hatch");
  expect(after.sessions.get(sessionId)).toMatchObject({ date: "2026-03-10", deletedAt: expect.any(Number) });
});

test("a run is numbered among those of its own session, and what names a combo may be gone for good", async () => {
  const { book, comboId, runId } = await withLaps();
  const run = (await runOf(book, runId)) as Run;
  const other: Run = { ...run, id: book.newId(), sessionId: book.newId(), n: 4 };
  await book.database.table("runs").put(other);
  await book.database.table("layouts").clear();
  const names = await namesOfDeleted(book, [run, other]);
  expect([names.numberOf(run), names.numberOf(other)]).toEqual([1, 1]);
  expect(names.combos.get(comboId)).toBe(" · Club hatch");
  expect([...names.sessions.keys()]).toEqual([run.sessionId]);
  await book.database.table("cars").clear();
  expect((await namesOfDeleted(book, [])).combos.get(comboId)).toBe(" · ");
});
