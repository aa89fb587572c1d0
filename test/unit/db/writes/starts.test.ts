import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addRun,
  deleteRun,
  deleteSession,
  editRun,
  editSession,
  endSession,
  reopenSession,
  runOf,
  runsOfSession,
  sessionOf,
  startSession,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

const minute = 60_000;

test("a session begins now, free and without a note, with a run of its time; what is given holds instead", async () => {
  const { book, comboId, clock } = await anOpenSession();
  clock.pass(minute);
  const on = { date: "2026-03-11", zone: "Europe/Berlin" };
  const plain = await startSession(book, { comboId, ...on });
  expect(plain.what).toBe("Session started");
  expect(await sessionOf(book, plain.sessionId)).toEqual({
    id: plain.sessionId,
    comboId,
    ...on,
    startedAt: clock.now(),
    isTimeOfDayKnown: true,
    focus: "free",
    note: "",
    createdAt: clock.now(),
    updatedAt: clock.now(),
  });
  expect(await runOf(book, plain.runId)).toEqual({
    id: plain.runId,
    sessionId: plain.sessionId,
    comboId,
    n: 1,
    startedAt: clock.now(),
    kind: "pace",
    effort: "full",
    surface: "dry",
    note: "",
    laps: [],
    createdAt: clock.now(),
    updatedAt: clock.now(),
  });
  const [id, runId] = [book.newId(), book.newId()];
  const startedAt = clock.now() - 30 * minute;
  const given = { focus: "kerbs", note: "windy", conditions: "cold", targetMs: 83_000 } as const;
  const run = { kind: "drill", effort: "easy", surface: "wet", tyres: "soft" } as const;
  const asked = { id, runId, comboId, ...on, startedAt, isTimeOfDayKnown: false, ...given, run };
  expect(await startSession(book, asked)).toMatchObject({ sessionId: id, runId });
  expect(await sessionOf(book, id)).toMatchObject({ startedAt, isTimeOfDayKnown: false, ...given });
  expect(await runOf(book, runId)).toMatchObject({ startedAt, ...run });
  expect(await startSession(book, asked)).toEqual({
    what: "Session already started",
    edits: [],
    sessionId: id,
    runId,
  });
});

test("a session of a combo that is gone is not started", async () => {
  const { book, comboId } = await anOpenSession();
  await book.database.table("combos").update(comboId, { deletedAt: 5 });
  await expect(startSession(book, { comboId, date: "2026-03-11", zone: "UTC" })).rejects.toMatchObject({
    code: "missing",
  });
});

test("settings come from the combo's last run that the driver drove: no guest's, none deleted, none older", async () => {
  const { book, comboId, clock, runId, sessionId } = await anOpenSession();
  await editRun(book, { runId, patch: { tyres: "soft" } });
  clock.pass(minute);
  const { runId: second } = await addRun(book, {
    sessionId,
    settings: { tyres: "hard", rigId: book.newId() },
  });
  const rigId = (await runOf(book, second))?.rigId;
  clock.pass(minute);
  const { runId: guests } = await addRun(book, { sessionId, settings: { guest: "Jo", tyres: "slick" } });
  clock.pass(minute);
  const { runId: gone } = await addRun(book, { sessionId, settings: { tyres: "old" } });
  await deleteRun(book, { runId: gone });
  const next = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  expect(await runOf(book, next.runId)).toMatchObject({ tyres: "hard", rigId });
  expect(await runOf(book, next.runId)).not.toHaveProperty("guest");
  expect(guests).not.toBe(next.runId);
});

test("a session ends now or when it is told to, never before its start, and so do its open runs", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const begun = clock.now();
  const change = await endSession(book, { sessionId, at: begun - minute });
  expect(change.what).toBe("Session ended");
  expect(await sessionOf(book, sessionId)).toMatchObject({ endedAt: begun, note: "" });
  expect((await runOf(book, runId))?.endedAt).toBe(begun);
  const again = await reopenSession(book, { sessionId });
  expect(again.what).toBe("Session opened again");
  expect(await sessionOf(book, sessionId)).not.toHaveProperty("endedAt");
  clock.pass(10 * minute);
  const { runId: second } = await addRun(book, { sessionId });
  clock.pass(minute);
  await endSession(book, { sessionId, at: begun + 10 * minute + 5, note: "brake earlier" });
  expect(await sessionOf(book, sessionId)).toMatchObject({
    endedAt: begun + 10 * minute + 5,
    note: "brake earlier",
  });
  expect((await runsOfSession(book, sessionId)).map(({ endedAt }) => endedAt)).toEqual([
    begun + 10 * minute,
    begun + 10 * minute + 5,
  ]);
  await reopenSession(book, { sessionId });
  expect((await runsOfSession(book, sessionId)).map(({ endedAt }) => endedAt)).toEqual([
    begun + 10 * minute,
    undefined,
  ]);
  expect(second).not.toBe(runId);
});

test("a session without a run that is there is opened and ended all the same", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await deleteRun(book, { runId });
  await endSession(book, { sessionId });
  expect((await book.tables.runs.get(runId))?.endedAt, "a deleted run keeps as it was").toBeUndefined();
  await reopenSession(book, { sessionId });
  expect(await sessionOf(book, sessionId)).not.toHaveProperty("endedAt");
});

test("an edit of a session says what it went over, and its deletion takes no run twice", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  const seen = await sessionOf(book, sessionId);
  if (seen === undefined) throw new Error("no session");
  expect((await editSession(book, { sessionId, patch: { note: "a" }, expected: seen })).what).toBe(
    "Session changed",
  );
  const second = await editSession(book, { sessionId, patch: { note: "b" }, expected: seen });
  expect(second.overwrote).toEqual(["note"]);
  const { runId: other } = await addRun(book, { sessionId });
  await addLap(book, { runId: other, id: book.newId(), lap: aLap(84_000) });
  await deleteRun(book, { runId });
  const deletedAt = (await book.tables.runs.get(runId))?.deletedAt;
  clock.pass(minute);
  const change = await deleteSession(book, { sessionId });
  expect(change.what).toBe("Session deleted");
  expect(change.edits.map(({ id }) => id).toSorted()).toEqual([sessionId, other].toSorted());
  expect((await book.tables.runs.get(runId))?.deletedAt).toBe(deletedAt);
});

test("a session whose first run is gone for good is still not started twice", async () => {
  const { book, comboId } = await anOpenSession();
  const asked = { id: book.newId(), comboId, date: "2026-03-11", zone: "UTC" };
  await startSession(book, asked);
  await book.database.table("runs").clear();
  expect(await startSession(book, asked)).toMatchObject({ edits: [], sessionId: asked.id, runId: "" });
});

test("the first session of a combo takes no settings from another combo's", async () => {
  const { book, runId } = await anOpenSession();
  await editRun(book, { runId, patch: { tyres: "soft" } });
  const { comboId } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const first = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  expect(await runOf(book, first.runId)).not.toHaveProperty("tyres");
});
