import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRig,
  addRun,
  addSummaryRun,
  deleteRig,
  deleteRun,
  editRun,
  endRun,
  endSession,
  runOf,
  runsOfSession,
  splitRun,
  startSession,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

const minute = 60_000;
const summary = { laps: 8, bestMs: 83_100, bestDecimals: 1 };
const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };

test("a run asked for twice with one id is made once, lap by lap or as a summary", async () => {
  const { book, sessionId } = await anOpenSession();
  const [id, other] = [book.newId(), book.newId()];
  expect(await addRun(book, { sessionId, id })).toMatchObject({ runId: id, what: "Run 1 begun" });
  const again = { what: "Run already stored", edits: [], runId: id };
  expect(await addRun(book, { sessionId, id })).toEqual(again);
  expect(await addSummaryRun(book, { sessionId, id, summary })).toEqual(again);
  await addSummaryRun(book, { sessionId, id: other, summary });
  expect(await addSummaryRun(book, { sessionId, id: other, summary })).toMatchObject({
    edits: [],
    runId: other,
  });
});

test("a summary in an open session has ended with it and the next run begins; what was open ends", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  await editRun(book, { runId, patch: { tyres: "soft", kind: "drill" } });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  clock.pass(10 * minute);
  const settings = { kind: "warm-up" } as const;
  const change = await addSummaryRun(book, { sessionId, summary, settings });
  expect(change.what).toBe("Run 2 stored as a summary");
  const [first, whole, next, ...more] = await runsOfSession(book, sessionId);
  expect(first).toMatchObject({ id: runId, endedAt: clock.now() });
  expect(whole).toMatchObject({
    id: change.runId,
    n: 2,
    kind: "warm-up",
    effort: "full",
    tyres: "soft",
    summary,
    startedAt: clock.now(),
    endedAt: clock.now(),
  });
  expect(next).toMatchObject({ n: 3, kind: "pace", tyres: "soft", laps: [] });
  expect(next).not.toHaveProperty("summary");
  expect(next).not.toHaveProperty("endedAt");
  expect(more).toEqual([]);
});

test("a summary fills the run that is named and gives it nothing else", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  clock.pass(minute);
  const settings = { kind: "warm-up" } as const;
  const change = await addSummaryRun(book, { sessionId, summary, settings, fills: runId });
  expect(change).toMatchObject({ runId, what: "Run 1 stored as a summary" });
  const runs = await runsOfSession(book, sessionId);
  expect(runs).toMatchObject([
    { id: runId, summary, kind: "pace", endedAt: clock.now() },
    { n: 2, laps: [] },
  ]);
});

test("in a session that has ended a run is put at its end, and neither is another begun nor one ended", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const begun = clock.now();
  clock.pass(minute);
  await endSession(book, { sessionId });
  await editRun(book, { runId, patch: { endedAt: undefined } });
  clock.pass(60 * minute);
  const whole = await addSummaryRun(book, { sessionId, summary });
  expect(await runOf(book, whole.runId)).toMatchObject({ n: 2, startedAt: begun });
  expect(await runOf(book, whole.runId)).not.toHaveProperty("endedAt");
  const later = await addRun(book, { sessionId });
  expect(await runOf(book, later.runId)).toMatchObject({ n: 3, startedAt: begun });
  expect((await runsOfSession(book, sessionId)).map(({ endedAt }) => endedAt)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});

test("settings come from the last run that is there, numbers go on behind one that was deleted", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await editRun(book, {
    runId,
    patch: { tyres: "soft", setup: "low wing", assists: "none", fuelLitres: 12 },
  });
  const { runId: second } = await addRun(book, { sessionId, settings: { tyres: "hard" } });
  await deleteRun(book, { runId: second });
  const { runId: third } = await addRun(book, { sessionId, settings: { note: "again" } });
  expect(await runOf(book, third)).toMatchObject({
    n: 3,
    tyres: "soft",
    setup: "low wing",
    assists: "none",
    fuelLitres: 12,
    note: "again",
    laps: [],
  });
});

test("a run is ended at the instant given, else now, and changed and deleted by its number", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const begun = clock.now();
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  clock.pass(10 * minute);
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(84_000) });
  expect((await endRun(book, { runId: second, at: clock.now() + 5 })).what).toBe("Run 2 ended");
  expect((await runOf(book, second))?.endedAt).toBe(clock.now() + 5);
  await endRun(book, { runId, at: begun - 5 });
  expect((await runOf(book, runId))?.endedAt).toBe(begun);
  await endRun(book, { runId });
  expect((await runOf(book, runId))?.endedAt).toBe(clock.now());
  const seen = await runOf(book, second);
  if (seen === undefined) throw new Error("no run");
  const first = await editRun(book, { runId: second, patch: { tyres: "soft" }, expected: seen });
  expect(first.what).toBe("Run 2 changed");
  const edit = await editRun(book, { runId: second, patch: { tyres: "hard" }, expected: seen });
  expect(edit.overwrote).toEqual(["tyres"]);
  expect((await deleteRun(book, { runId })).what).toBe("Run 1 deleted");
  expect((await deleteRun(book, { runId: second })).what).toBe("Run 1 deleted");
});

test("a run that is open ends when the next begins, one that has ended or was deleted keeps its end", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const { runId: second } = await addRun(book, { sessionId });
  await endRun(book, { runId, at: clock.now() + 1 });
  await deleteRun(book, { runId: second });
  clock.pass(minute);
  await addRun(book, { sessionId });
  const rows = await book.tables.runs.bulkGet([runId, second]);
  expect(rows.map((row) => row?.endedAt)).toEqual([clock.now() - minute + 1, undefined]);
});

test("a rig record that was deleted, or is dated after the session's day, is not driven with", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  clock.pass(minute);
  const { id } = await addRig(book, { ...rig, from: "2026-03-10" });
  const { id: later } = await addRig(book, { ...rig, from: "2026-03-11" });
  await deleteRig(book, id);
  clock.pass(minute);
  const { runId: second } = await addRun(book, { sessionId });
  expect(await runOf(book, second)).not.toHaveProperty("rigId");
  expect(later).not.toBe(id);
});

test("a change of the rig moves no run of a session that has ended, none that has ended, and none with laps or a summary", async () => {
  const { book, comboId, clock, sessionId, runId } = await anOpenSession();
  const rigOf = async (of: string) => (await runOf(book, of))?.rigId;
  await endRun(book, { runId });
  clock.pass(minute);
  await addRig(book, { ...rig, from: "2026-03-10" });
  expect(await rigOf(runId)).toBeUndefined();
  await editRun(book, { runId, patch: { endedAt: undefined, summary } });
  await addRig(book, { ...rig, from: "2026-03-10" });
  expect(await rigOf(runId)).toBeUndefined();
  await endSession(book, { sessionId });
  const past = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC", endedAt: clock.now() });
  await addRig(book, { ...rig, from: "2026-03-10" });
  expect(await rigOf(past.runId)).toBeUndefined();
  const open = await startSession(book, { comboId, date: "2026-03-09", zone: "UTC" });
  await addRig(book, { ...rig, from: "2026-03-10" });
  expect(await rigOf(open.runId), "a session of the day before the change").toBeUndefined();
  const { id } = await addRig(book, { ...rig, from: "2026-03-09" });
  expect(await rigOf(open.runId)).toBe(id);
});

test("a run added to a session that has ended begins with its last run, and is driven with no rig written down since", async () => {
  const { book, clock, sessionId, runId } = await anOpenSession();
  const { id: old } = await addRig(book, { ...rig, from: "2026-03-01" });
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  clock.pass(minute);
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(84_000) });
  const begun = clock.now();
  clock.pass(minute);
  await endSession(book, { sessionId });
  await addRig(book, { ...rig, from: "2026-03-10" });
  clock.pass(minute);
  const { runId: third } = await addRun(book, { sessionId });
  expect(await runOf(book, third)).toMatchObject({ startedAt: begun, rigId: old });
});

test("a run that was split off is driven with no rig that was written down after it began", async () => {
  const { book, clock, runId } = await anOpenSession();
  const { id: old } = await addRig(book, { ...rig, from: "2026-03-01" });
  const ids = [book.newId(), book.newId()] as const;
  for (const id of ids) {
    clock.pass(90_000);
    await addLap(book, { runId, id, lap: aLap(84_000) });
  }
  await addRig(book, { ...rig, from: "2026-03-10" });
  const { runId: split } = await splitRun(book, { runId, lapId: ids[1] });
  expect((await runOf(book, split))?.rigId).toBe(old);
});

test("a session all of whose runs were deleted is gone on with, without a rig that nobody chose", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  await deleteRun(book, { runId });
  clock.pass(minute);
  await addRig(book, { ...rig, from: "2026-03-10" });
  clock.pass(minute);
  const { runId: next } = await addRun(book, { sessionId });
  const run = await runOf(book, next);
  expect(run).toMatchObject({ n: 2, kind: "pace", surface: "dry" });
  expect(run).not.toHaveProperty("rigId");
});

test("a record that was deleted does not stand before an older one that is written down now", async () => {
  const { book, runId, clock } = await anOpenSession();
  const { id: gone } = await addRig(book, { ...rig, from: "2026-03-10" });
  await deleteRig(book, gone);
  clock.pass(minute);
  const { id } = await addRig(book, { ...rig, from: "2026-03-09" });
  expect((await runOf(book, runId))?.rigId).toBe(id);
});
