import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addRun,
  editRun,
  moveLaps,
  moveLapsToCombo,
  runOf,
  runsOfSession,
  sessionOf,
  sessionsOfCombo,
  startSession,
  undoChange,
} from "#db";
import { lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

async function withThreeLaps() {
  const open = await anOpenSession();
  const { book, runId } = open;
  const ids = [book.newId(), book.newId(), book.newId()];
  for (const [index, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(83_000 + index) });
  const { comboId: other } = await addCombo(book, {
    car: { name: "endurance trainer" },
    track: { name: "Tessemoor" },
  });
  const timesOf = async (id: string) => {
    const run = await runOf(book, id);
    return run && lapsInOrder(run).map(({ ms }) => ms);
  };
  return { ...open, ids, other, timesOf };
}

test("laps of the wrong combo go to a session of the right one on the same date, and undo takes all of it back", async () => {
  const { book, runId, sessionId, ids, other, timesOf } = await withThreeLaps();
  const change = await moveLapsToCombo(book, { from: runId, lapIds: ids.slice(1), comboId: other });
  expect(change.what).toBe("2 laps moved");
  expect(await timesOf(runId)).toEqual([83_000]);
  expect(await timesOf(change.runId)).toEqual([83_001, 83_002]);
  expect(await runOf(book, change.runId)).toMatchObject({ comboId: other, sessionId: change.sessionId });
  expect(await sessionsOfCombo(book, other)).toMatchObject([
    { id: change.sessionId, date: "2026-03-10", endedAt: expect.any(Number) },
  ]);
  expect((await sessionOf(book, sessionId))?.endedAt).toBeUndefined();
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect(await timesOf(runId)).toEqual([83_000, 83_001, 83_002]);
  expect(await sessionsOfCombo(book, other)).toEqual([]);
});

test("laps for a combo driven on the same date join its session as a run of their own", async () => {
  const { book, runId, ids, other } = await withThreeLaps();
  const there = await startSession(book, { comboId: other, date: "2026-03-10", zone: "Europe/Berlin" });
  const change = await moveLapsToCombo(book, { from: runId, lapIds: ids, comboId: other });
  expect(change.sessionId).toBe(there.sessionId);
  expect((await runsOfSession(book, there.sessionId)).map(({ n }) => n)).toEqual([1, 2]);
});

test("a guest's laps stay a guest's in the run they are moved to", async () => {
  const { book, runId, sessionId, ids } = await withThreeLaps();
  await editRun(book, { runId, patch: { guest: "Jo" } });
  const { runId: fresh } = await moveLaps(book, { from: runId, lapIds: ids, to: { newRunIn: sessionId } });
  expect((await runOf(book, fresh))?.guest).toBe("Jo");
});

test("laps moved out of an earlier run do not take the entry line from the run being driven", async () => {
  const { book, clock, runId, sessionId, ids } = await withThreeLaps();
  clock.pass(600_000);
  await addRun(book, { sessionId });
  clock.pass(600_000);
  const { runId: fresh } = await moveLaps(book, {
    from: runId,
    lapIds: ids.slice(2),
    to: { newRunIn: sessionId },
  });
  const [from, made] = [await runOf(book, runId), await runOf(book, fresh)];
  expect(made).toMatchObject({ startedAt: from?.startedAt, endedAt: from?.endedAt });
  expect(made?.endedAt).toEqual(expect.any(Number));
});

test("laps moved to a session of another date are dated as that session", async () => {
  const { book, runId, comboId, ids } = await withThreeLaps();
  const startedAt = Date.UTC(2026, 2, 3, 18);
  const earlier = { comboId, date: "2026-03-03", zone: "Europe/Berlin", startedAt, endedAt: startedAt };
  const { sessionId } = await startSession(book, earlier);
  const { runId: fresh } = await moveLaps(book, { from: runId, lapIds: ids, to: { newRunIn: sessionId } });
  expect(await runOf(book, fresh)).toMatchObject({ startedAt, endedAt: startedAt });
});
