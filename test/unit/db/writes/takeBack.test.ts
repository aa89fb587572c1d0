import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  addReference,
  addRig,
  addRigTest,
  addRun,
  bringBackLap,
  type Change,
  deleteLap,
  deleteReference,
  deleteRun,
  deleteTarget,
  dump,
  editLap,
  editReference,
  editRun,
  editSession,
  endSession,
  type Logbook,
  moveLaps,
  referencesOfCombo,
  runOf,
  runsOfSession,
  sessionOf,
  setTarget,
  startSession,
  targetsOfCombo,
  turnPage,
  undoChange,
} from "#db";
import { type Id, lapsInOrder } from "#domain";
import { addForecast } from "../../../support/addForecast.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };
const aReference = (book: Logbook, comboId: Id) =>
  addReference(book, { comboId, ms: 82_000, decimals: 3, source: "a friend" });

test("undo, redo and undo again are called by what was done first", async () => {
  const { book, comboId } = await anOpenSession();
  const done = await aReference(book, comboId);
  const undone = await undoChange(book, done);
  expect(undone).toMatchObject({
    what: "Undone: Reference lap added",
    of: "Reference lap added",
    isDoneAgain: false,
  });
  expect(await referencesOfCombo(book, comboId)).toEqual([]);
  const again = await undoChange(book, undone);
  expect(again).toMatchObject({
    what: "Done again: Reference lap added",
    of: "Reference lap added",
    isDoneAgain: true,
  });
  expect(await referencesOfCombo(book, comboId)).toHaveLength(1);
  const last = await undoChange(book, again);
  expect(last).toMatchObject({ what: "Undone: Reference lap added", isDoneAgain: false, skipped: [] });
  expect(await referencesOfCombo(book, comboId)).toEqual([]);
});

test("undo of what was made leaves it where it was changed since, and says nothing where it is gone already", async () => {
  const { book, comboId } = await anOpenSession();
  const change = await aReference(book, comboId);
  await editReference(book, { id: change.id, patch: { source: "a rival" } });
  expect(await undoChange(book, change)).toMatchObject({
    edits: [],
    skipped: ["the reference lap has been changed since"],
  });
  await deleteReference(book, change.id);
  expect(await undoChange(book, change)).toMatchObject({ edits: [], skipped: [] });
  await book.database.table("references").clear();
  expect(await undoChange(book, change)).toMatchObject({ edits: [], skipped: [] });
});

test("undo of an edit puts back the fields nobody has changed since, with a stamp of its own, and tells of the others", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const { id } = await aReference(book, comboId);
  clock.pass(1000);
  const change = await editReference(book, { id, patch: { source: "a rival", ms: 81_000 } });
  await editReference(book, { id, patch: { ms: 80_000 } });
  clock.pass(1000);
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual(["the reference lap has been changed again since"]);
  expect(await referencesOfCombo(book, comboId)).toMatchObject([
    { ms: 80_000, source: "a friend", updatedAt: clock.now() },
  ]);
  expect((await undoChange(book, change)).skipped).toEqual([
    "the reference lap has been changed again since",
  ]);
  await book.database.table("references").clear();
  expect(await undoChange(book, change)).toMatchObject({
    edits: [],
    skipped: ["the reference lap is no longer there"],
  });
});

test("a row that a change took out is put back as it was, unless it is there again", async () => {
  const { book, comboId } = await anOpenSession();
  const { id } = await aReference(book, comboId);
  const before = await book.tables.references.get(id);
  if (before === undefined) throw new Error("no row");
  const change: Change = { what: "Taken out", edits: [{ table: "references", id, before }] };
  expect((await undoChange(book, change)).skipped).toEqual(["the reference lap is there again already"]);
  await book.database.table("references").delete(id);
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect(await book.tables.references.get(id)).toEqual(before);
});

test("what something else belongs to by now is not taken back, whatever it is", async () => {
  const using: Readonly<Record<string, (book: Logbook, comboId: Id) => Promise<unknown>>> = {
    session: (book, comboId) => startSession(book, { comboId, date: "2026-03-10", zone: "UTC" }),
    page: (book, comboId) => turnPage(book, { comboIds: [comboId], from: 1000, reason: "new" }),
    target: (book, comboId) => setTarget(book, { comboId, kind: "best", value: 82_000, setOn: "2026-03-10" }),
    reference: aReference,
    "rig test": (book, comboId) =>
      addRigTest(book, {
        comboId,
        question: "?",
        rigA: book.newId(),
        rigB: book.newId(),
        pairsPlanned: 6,
        level: 0.9,
        seed: 7,
        pairs: [],
      }),
  };
  for (const [name, use] of Object.entries(using)) {
    const { book } = await aLogbook();
    const made = await addCombo(book, { car: { name: "Kart" }, track: { name: "Tessemoor" } });
    await use(book, made.comboId);
    const undone = await undoChange(book, made);
    expect(undone.skipped, name).toEqual([
      "the combo is in use by now",
      "the layout is in use by now",
      "the track is in use by now",
      "the car is in use by now",
    ]);
    expect(undone.edits).toEqual([]);
  }
  const { book, comboId } = await anOpenSession();
  const target = await setTarget(book, { comboId, kind: "best", value: 82_000, setOn: "2026-03-10" });
  const forecast = {
    targetId: target.id,
    comboId,
    madeOn: "2026-03-11",
    by: "2026-04-01",
    chance: 0.4,
    method: "m",
  };
  await addForecast(book, forecast);
  expect((await undoChange(book, target)).skipped).toEqual(["the target is in use by now"]);
  await book.database.table("forecasts").toCollection().modify({ deletedAt: 5 });
  expect((await undoChange(book, target)).skipped).toEqual([]);
  expect(await targetsOfCombo(book, comboId)).toEqual([]);
  await expect(deleteTarget(book, target.id)).rejects.toMatchObject({ code: "missing" });
});

test("a session that was only ended since goes with the start that is taken back", async () => {
  const { book, comboId, sessionId: first } = await anOpenSession();
  const start = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  await endSession(book, { sessionId: start.sessionId });
  expect((await undoChange(book, start)).skipped).toEqual([]);
  expect(await sessionOf(book, start.sessionId)).toBeUndefined();
  const next = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  await editSession(book, { sessionId: next.sessionId, patch: { focus: "kerbs" } });
  const undone = await undoChange(book, next);
  expect(undone.skipped).toEqual(["the session has been changed since"]);
  expect(await sessionOf(book, next.sessionId)).toBeDefined();
  expect(await sessionOf(book, first)).toBeDefined();
});

test("each thing that cannot be taken back is said once", async () => {
  const { book, runId } = await anOpenSession();
  const laps = [83_000, 83_100].map((ms) => ({ id: book.newId(), lap: aLap(ms) }));
  const change = await addLaps(book, { runId, laps });
  for (const { id } of laps) await editLap(book, { runId, lapId: id, patch: { note: "late" } });
  expect((await undoChange(book, change)).skipped).toEqual(["a lap has been changed again since"]);
  expect(lapsInOrder((await runOf(book, runId)) ?? { laps: [] })).toHaveLength(2);
});

async function twoRuns() {
  const open = await anOpenSession();
  const { book, runId, sessionId, clock } = open;
  const ids = [book.newId(), book.newId(), book.newId()] as const;
  for (const [at, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(84_000 + at) });
  const { runId: second } = await addRun(book, { sessionId });
  const timesOf = async (of: Id) => lapsInOrder((await runOf(book, of)) ?? { laps: [] }).map(({ ms }) => ms);
  clock.pass(1000);
  return { ...open, ids, second, timesOf };
}

test("a lap that was moved on since stays where it is, and one that was put elsewhere in its run keeps that place", async () => {
  const { book, runId, sessionId, second, ids, timesOf } = await twoRuns();
  const change = await moveLaps(book, { from: runId, lapIds: [...ids], to: { runId: second } });
  const { runId: third } = await addRun(book, { sessionId });
  await moveLaps(book, { from: second, lapIds: [ids[0]], to: { runId: third } });
  await moveLaps(book, { from: second, lapIds: [ids[1]], to: { runId: second, afterLapId: ids[2] } });
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual(["a lap has been moved again since"]);
  expect(await timesOf(third)).toEqual([84_000]);
  expect(await timesOf(second)).toEqual([]);
  const laps = lapsInOrder((await runOf(book, runId)) ?? { laps: [] });
  expect(laps.map(({ ms, n }) => [ms, n])).toEqual([
    [84_002, 3],
    [84_001, 4],
  ]);
});

test("a lap whose old run has been deleted stays in the one it was moved to, and the driver is told", async () => {
  const { book, runId, second, ids, timesOf } = await twoRuns();
  const change = await moveLaps(book, { from: runId, lapIds: [ids[0]], to: { runId: second } });
  await deleteRun(book, { runId });
  const told = ["the run a lap came from has been deleted since"];
  expect((await undoChange(book, change)).skipped).toEqual(told);
  expect(await timesOf(second)).toEqual([84_000]);
  await book.database.table("runs").delete(runId);
  expect((await undoChange(book, change)).skipped).toEqual([...told, "the run is no longer there"]);
  expect(await timesOf(second)).toEqual([84_000]);
});

test("a lap that is back in its run has a stamp of now, and what was noted in it since", async () => {
  const { book, clock, runId, second, ids } = await twoRuns();
  const change = await moveLaps(book, { from: runId, lapIds: [ids[1]], to: { runId: second } });
  await editLap(book, { runId: second, lapId: ids[1], patch: { note: "late" } });
  clock.pass(5000);
  expect((await undoChange(book, change)).skipped).toEqual([]);
  const lap = (await runOf(book, runId))?.laps.find(({ id }) => id === ids[1]);
  expect(lap).toMatchObject({ n: 2, note: "late", updatedAt: clock.now() });
});

test("of a lap that was edited, undo puts back what stands as it was left, and tells of the rest", async () => {
  const { book, clock, runId, ids } = await twoRuns();
  const lapId = ids[0];
  const change = await editLap(book, { runId, lapId, patch: { ms: 82_000, note: "late" } });
  await editLap(book, { runId, lapId, patch: { ms: 81_000 } });
  clock.pass(5000);
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual(["a lap has been changed again since"]);
  const lap = (await runOf(book, runId))?.laps[0];
  expect(lap).toMatchObject({ ms: 81_000, updatedAt: clock.now() });
  expect(lap).not.toHaveProperty("note");
  expect((await runOf(book, runId))?.laps[1]?.updatedAt, "other laps are left").toBeLessThan(
    clock.now() - 4000,
  );
  const again = await undoChange(book, change);
  expect(again).toMatchObject({ edits: [], skipped: ["a lap has been changed again since"] });
});

test("undo of a new lap that was deleted since changes nothing, and of one brought back by a change deletes it", async () => {
  const { book, runId, ids, timesOf } = await twoRuns();
  const id = book.newId();
  const added = await addLap(book, { runId, id, lap: aLap(90_000) });
  await deleteLap(book, { runId, lapId: id });
  expect(await undoChange(book, added)).toMatchObject({ edits: [], skipped: [] });
  await deleteLap(book, { runId, lapId: ids[0] });
  const back = await bringBackLap(book, { runId, lapId: ids[0] });
  await undoChange(book, back);
  expect(await timesOf(runId)).toEqual([84_001, 84_002]);
});

test("undo of an edit of a run leaves its laps, and undo of its laps leaves its settings", async () => {
  const { book, runId, ids, timesOf } = await twoRuns();
  const edit = await editRun(book, { runId, patch: { tyres: "soft" } });
  const lap = await editLap(book, { runId, lapId: ids[0], patch: { ms: 70_000 } });
  await editRun(book, { runId, patch: { setup: "low" } });
  expect((await undoChange(book, lap)).skipped).toEqual([]);
  expect((await undoChange(book, edit)).skipped).toEqual([]);
  expect(await timesOf(runId)).toEqual([84_000, 84_001, 84_002]);
  expect(await runOf(book, runId)).toMatchObject({ setup: "low" });
  expect(await runOf(book, runId)).not.toHaveProperty("tyres");
});

test("undo of laps whose run is gone for good says that the run is gone", async () => {
  const { book, runId, ids } = await twoRuns();
  const change = await editLap(book, { runId, lapId: ids[0], patch: { ms: 70_000 } });
  await book.database.table("runs").delete(runId);
  expect(await undoChange(book, change)).toMatchObject({
    edits: [],
    skipped: ["the run is no longer there"],
  });
});

test("a run that was begun and changed since stays, and so does one with a lap that was added since", async () => {
  const { book, sessionId } = await twoRuns();
  const begun = await addRun(book, { sessionId });
  await editRun(book, { runId: begun.runId, patch: { tyres: "soft" } });
  expect((await undoChange(book, begun)).skipped).toEqual(["the run has been changed since"]);
  const next = await addRun(book, { sessionId });
  const id = book.newId();
  await addLap(book, { runId: next.runId, id, lap: aLap(90_000) });
  expect((await undoChange(book, next)).skipped).toEqual(["the run has laps added since"]);
  expect((await runsOfSession(book, sessionId)).map(({ id: of }) => of)).toEqual(
    expect.arrayContaining([begun.runId, next.runId]),
  );
  const last = await addRun(book, { sessionId });
  const dropped = book.newId();
  await addLap(book, { runId: last.runId, id: dropped, lap: aLap(90_000) });
  await deleteLap(book, { runId: last.runId, lapId: dropped });
  expect((await undoChange(book, last)).skipped).toEqual([]);
  expect(await runOf(book, last.runId)).toBeUndefined();
});

test("undo of one change in many rows takes back what it can", async () => {
  const { book, clock } = await anOpenSession();
  const change = await addRig(book, { ...rig, from: "2026-03-10" });
  expect(change.edits.map(({ table }) => table)).toEqual(["rigs", "runs"]);
  clock.pass(1000);
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect((await dump(book)).rigs.every(({ deletedAt }) => deletedAt === clock.now())).toBe(true);
});

test("undo of an edit says nothing of a lap beside it that was moved away since", async () => {
  const { book, runId, second, ids, timesOf } = await twoRuns();
  const change = await editLap(book, { runId, lapId: ids[0], patch: { ms: 70_000 } });
  await moveLaps(book, { from: runId, lapIds: [ids[1]], to: { runId: second } });
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect(await timesOf(runId)).toEqual([84_000, 84_002]);
  expect(await timesOf(second)).toEqual([84_001]);
});

test("undo of a lap's time says nothing of a note that was written since, and keeps it", async () => {
  const { book, runId, ids } = await twoRuns();
  const change = await editLap(book, { runId, lapId: ids[0], patch: { ms: 70_000 } });
  await editLap(book, { runId, lapId: ids[0], patch: { note: "late" } });
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect((await runOf(book, runId))?.laps[0]).toMatchObject({ ms: 84_000, note: "late" });
});
