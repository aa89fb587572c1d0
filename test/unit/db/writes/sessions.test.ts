import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  addRun,
  addSummaryRun,
  bringBack,
  changeSessionDate,
  deleteSession,
  dump,
  editRun,
  endRun,
  endSession,
  lastSession,
  moveRunToCombo,
  moveRunToSession,
  moveSessionToCombo,
  reopenSession,
  runOf,
  runsOfSession,
  sessionOf,
  sessionsOfCombo,
  sessionsOpen,
  sessionWithRuns,
  splitRun,
  splitSession,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import { type Lap, lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

const minute = 60_000;
const hour = 60 * minute;

test("ten pace laps after a warm-up of easy effort are pace laps: kind and effort go back after every run", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await editRun(book, { runId, patch: { kind: "warm-up", effort: "easy", surface: "damp", guest: "Jo" } });
  const { runId: next } = await addRun(book, { sessionId });
  expect(await runOf(book, next)).toMatchObject({ kind: "pace", effort: "full", surface: "damp" });
  await editRun(book, { runId: next, patch: { kind: "drill", effort: "learning" } });
  const summary = { laps: 8 };
  const { runId: whole } = await addSummaryRun(book, { sessionId, summary, fills: next });
  expect(await runOf(book, whole)).toMatchObject({ kind: "drill", effort: "learning", summary });
  const last = (await runsOfSession(book, sessionId)).at(-1);
  expect(last).toMatchObject({ kind: "pace", effort: "full", surface: "damp" });
});

test("a run whose end was forgotten is split at a lap: the run ended before it, and the next begins at pace", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  await editRun(book, { runId, patch: { kind: "warm-up", effort: "easy", tyres: "soft" } });
  const ids = [book.newId(), book.newId(), book.newId(), book.newId()];
  const typedAt: number[] = [];
  for (const [index, id] of ids.entries()) {
    clock.pass(index === 2 ? 9 * minute : 85_000);
    typedAt.push(clock.now());
    await addLap(book, { runId, id, lap: aLap(85_000 + index) });
  }
  const change = await splitRun(book, { runId, lapId: ids[2] ?? "" });
  expect(change.what).toBe("Run 2 begun");
  const timesOf = (laps: readonly Lap[]) => laps.map(({ ms }) => ms);
  const [first, second] = await runsOfSession(book, sessionId);
  expect(first).toMatchObject({ id: runId, kind: "warm-up", endedAt: typedAt[1] });
  expect(timesOf(lapsInOrder(first ?? { laps: [] }))).toEqual([85_000, 85_001]);
  expect(second).toMatchObject({ kind: "pace", effort: "full", tyres: "soft" });
  expect(second?.startedAt).toBe((typedAt[2] ?? 0) - 85_002);
  expect(second).not.toHaveProperty("endedAt");
  expect(timesOf(lapsInOrder(second ?? { laps: [] }))).toEqual([85_002, 85_003]);
  await undoChange(book, change);
  const runs = await runsOfSession(book, sessionId);
  expect(runs.map((run) => timesOf(lapsInOrder(run)))).toEqual([[85_000, 85_001, 85_002, 85_003]]);
  expect(runs[0]).not.toHaveProperty("endedAt");
});

test("a run is not split at its first lap, and not after it has ended", async () => {
  const { book, runId } = await anOpenSession();
  const ids = [book.newId(), book.newId()];
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(85_000) });
  await expect(splitRun(book, { runId, lapId: ids[0] ?? "" })).rejects.toMatchObject({ code: "invalid" });
  await editRun(book, { runId, patch: { endedAt: book.clock() } });
  await expect(splitRun(book, { runId, lapId: ids[1] ?? "" })).rejects.toMatchObject({ code: "invalid" });
});

test("a run takes over the settings of the run before, and the run before ends", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  await editRun(book, {
    runId,
    patch: { tyres: "soft", fuelLitres: 12, gridPlace: 4, guest: "Jo" },
  });
  await addLap(book, { runId, id: book.newId(), lap: aLap(85_000) });
  clock.pass(600_000);
  const next = await addRun(book, { sessionId, settings: { fuelLitres: 8 } });
  expect(next.what).toBe("Run 2 begun");
  const run = await runOf(book, next.runId);
  expect(run).toMatchObject({ n: 2, tyres: "soft", fuelLitres: 8, startedAt: clock.now() });
  expect(run).not.toHaveProperty("gridPlace");
  expect(run).not.toHaveProperty("guest");
  expect((await runOf(book, runId))?.endedAt).toBe(clock.now());
});

test("a new session takes over the settings of the combo's last own run, not its kind, effort or surface", async () => {
  const { book, sessionId, runId, comboId } = await anOpenSession();
  await editRun(book, { runId, patch: { setup: "low wing", kind: "race", surface: "wet" } });
  await endSession(book, { sessionId });
  const { runId: next } = await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  expect(await runOf(book, next)).toMatchObject({ setup: "low wing", kind: "pace", surface: "dry", n: 1 });
});

test("starting twice with the same id makes one session", async () => {
  const { book, comboId } = await anOpenSession();
  const fields = { id: book.newId(), comboId, date: "2026-03-11", zone: "Europe/Berlin" };
  const first = await startSession(book, fields);
  const second = await startSession(book, fields);
  expect(second).toMatchObject({ sessionId: first.sessionId, runId: first.runId, edits: [] });
});

test("open sessions are found until they end, and again when opened again", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  const open = async () => (await sessionsOpen(book)).map(({ id }) => id);
  expect(await open()).toEqual([sessionId]);
  clock.pass(hour);
  await endSession(book, { sessionId, note: "brake earlier" });
  expect(await open()).toEqual([]);
  expect(await runOf(book, runId)).toMatchObject({ endedAt: clock.now() });
  expect(await lastSession(book, Number.MAX_SAFE_INTEGER)).toMatchObject({
    id: sessionId,
    note: "brake earlier",
  });
  await reopenSession(book, { sessionId });
  expect(await open()).toEqual([sessionId]);
  expect(await runOf(book, runId)).not.toHaveProperty("endedAt");
});

test("a session entered afterwards takes runs and laps although it has ended", async () => {
  const { book, comboId } = await anOpenSession();
  const startedAt = Date.UTC(2026, 2, 1, 11);
  const past = { comboId, date: "2026-03-01", zone: "Europe/Berlin", startedAt, endedAt: startedAt };
  const { sessionId, runId } = await startSession(book, { ...past, isTimeOfDayKnown: false });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000, { source: "memory", decimals: 1 }) });
  const summary = { laps: 12, bestMs: 83100, bestDecimals: 1 };
  const second = await addSummaryRun(book, { sessionId, summary });
  expect(await runOf(book, second.runId)).toMatchObject({ summary, startedAt });
  expect((await sessionsOpen(book)).map(({ id }) => id)).not.toContain(sessionId);
});

test("a session moved to another date takes its runs and its end along", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  clock.pass(hour);
  await endSession(book, { sessionId });
  const before = await sessionOf(book, sessionId);
  const startedAt = (before?.startedAt ?? 0) - 24 * hour;
  const to = { sessionId, date: "2026-03-09", startedAt, isTimeOfDayKnown: true };
  const change = await changeSessionDate(book, to);
  expect(await sessionOf(book, sessionId)).toMatchObject({
    date: "2026-03-09",
    startedAt,
    endedAt: startedAt + hour,
  });
  expect(await runOf(book, runId)).toMatchObject({ startedAt, endedAt: startedAt + hour });
  await undoChange(book, change);
  expect(await sessionOf(book, sessionId)).toMatchObject({
    date: "2026-03-10",
    startedAt: before?.startedAt,
  });
  expect(await runOf(book, runId)).toMatchObject({ startedAt: before?.startedAt });
});

test("a run moved to another combo joins that combo's session of the day, or makes one", async () => {
  const { book, sessionId, runId, comboId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, {
    car: { name: "Formula junior" },
    track: { name: "Varnholt Ring" },
  });
  const first = await moveRunToCombo(book, { runId, comboId: other });
  expect(first.sessionId).not.toBe(sessionId);
  expect(await runOf(book, runId)).toMatchObject({ comboId: other, sessionId: first.sessionId, n: 1 });
  const { runId: second } = await addRun(book, { sessionId });
  const again = await moveRunToCombo(book, { runId: second, comboId: other });
  expect(again.sessionId).toBe(first.sessionId);
  expect((await runsOfSession(book, first.sessionId)).map(({ id }) => id)).toEqual([runId, second]);
  await undoChange(book, again);
  await undoChange(book, first);
  expect(await runOf(book, runId)).toMatchObject({ comboId, sessionId, n: 1 });
  expect(await sessionsOfCombo(book, other)).toEqual([]);
});

test("a session moved back in time takes the page along that was turned with it, and leaves it when moved forward", async () => {
  const { book, sessionId, comboId, clock } = await anOpenSession();
  const ahead = clock.now() + 10 * 365 * 24 * hour;
  const at = (startedAt: number, date: string) =>
    changeSessionDate(book, { sessionId, date, startedAt, isTimeOfDayKnown: true });
  const pages = async () => (await dump(book)).pages.map(({ from }) => from);
  await at(ahead, "2036-03-08");
  await turnPage(book, { comboIds: [comboId], from: ahead, reason: "new tyre model" });
  await turnPage(book, { comboIds: [comboId], from: ahead + hour, reason: "of another session" });
  const back = await at(clock.now(), "2026-03-10");
  expect(await pages()).toEqual([clock.now(), ahead + hour]);
  await at(clock.now() + hour, "2026-03-10");
  expect(await pages()).toEqual([clock.now(), ahead + hour]);
  await at(clock.now(), "2026-03-10");
  await undoChange(book, back);
  expect(await pages()).toEqual([ahead, ahead + hour]);
});

test("a session moved to another combo takes its runs along", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, {
    car: { name: "Formula junior" },
    track: { name: "Varnholt Ring" },
  });
  await moveSessionToCombo(book, { sessionId, comboId: other });
  expect(await runOf(book, runId)).toMatchObject({ comboId: other });
  expect((await sessionsOfCombo(book, other)).map(({ id }) => id)).toEqual([sessionId]);
});

test("a session split at its second run becomes two", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  clock.pass(hour);
  const { runId: second } = await addRun(book, { sessionId });
  const { sessionId: added } = await splitSession(book, { sessionId, fromRunId: second });
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([runId]);
  expect((await runsOfSession(book, added)).map(({ id, n }) => [id, n])).toEqual([[second, 1]]);
  expect((await sessionsOpen(book)).map(({ id }) => id)).toEqual([added]);
  await moveRunToSession(book, { runId: second, sessionId });
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([runId, second]);
});

test("a session split at a lap: the laps from there on and the later runs go, and one undo brings all back", async () => {
  const { book, sessionId, runId, clock } = await anOpenSession();
  const laps = [84_000, 85_000, 86_000].map((ms) => ({ id: book.newId(), lap: aLap(ms) }));
  await addLaps(book, { runId, laps });
  await editRun(book, { runId, patch: { tyres: "soft" } });
  clock.pass(hour);
  const { runId: second } = await addRun(book, { sessionId });
  await addLap(book, { runId: second, id: book.newId(), lap: aLap(83_000) });
  const rows = await dump(book);
  const change = await splitSession(book, { sessionId, fromRunId: runId, fromLapId: laps[1]?.id ?? "" });
  const timesOf = async (id: string) =>
    (await runsOfSession(book, id)).map((run) => lapsInOrder(run).map(({ ms }) => ms));
  expect(await timesOf(sessionId)).toEqual([[84_000]]);
  expect(await timesOf(change.sessionId)).toEqual([[85_000, 86_000], [83_000]]);
  const [first, later] = await runsOfSession(book, change.sessionId);
  const old = await runOf(book, runId);
  expect(first).toMatchObject({ n: 1, tyres: "soft", startedAt: (old?.startedAt ?? 0) + 84_000 });
  expect([first?.endedAt, later?.endedAt]).toEqual([clock.now(), undefined]);
  expect(old?.endedAt).toBe(first?.startedAt);
  expect((await sessionsOpen(book)).map(({ id }) => id)).toEqual([change.sessionId]);
  await undoChange(book, change);
  expect(await timesOf(sessionId)).toEqual([[84_000, 85_000, 86_000], [83_000]]);
  expect((await sessionsOpen(book)).map(({ id }) => id)).toEqual([sessionId]);
  const ids = rows.runs.map(({ id, laps: held }) => [id, held.map((lap) => lap.id)]);
  const live = (await dump(book)).runs.filter(({ deletedAt }) => deletedAt === undefined);
  expect(live.map(({ id, laps: held }) => [id, held.map((lap) => lap.id)])).toEqual(ids);
});

test("a session is not split before its first lap, nor at a lap that has gone", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(84_000) });
  for (const from of [{}, { fromLapId: id }, { fromLapId: "gone" }])
    await expect(splitSession(book, { sessionId, fromRunId: runId, ...from })).rejects.toMatchObject({
      code: "invalid",
    });
  expect(await sessionsOpen(book)).toHaveLength(1);
});

test("a deleted session goes with its runs and comes back with them", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const change = await deleteSession(book, { sessionId });
  expect(await sessionWithRuns(book, sessionId)).toBeUndefined();
  expect(await runOf(book, runId)).toBeUndefined();
  expect(await sessionsOpen(book)).toEqual([]);
  await bringBack(book, { table: "sessions", id: sessionId });
  expect((await sessionWithRuns(book, sessionId))?.runs.map(({ id }) => id)).toEqual([runId]);
  expect((await undoChange(book, change)).skipped).not.toEqual([]);
});

test("a session that has got laps since is not undone with its start", async () => {
  const { book, comboId } = await anOpenSession();
  const change = await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  await addLap(book, { runId: change.runId, id: book.newId(), lap: aLap(83000) });
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual(["the run has laps added since", "the session is in use by now"]);
  expect(undone.edits).toEqual([]);
  expect(await sessionOf(book, change.sessionId)).toBeDefined();
});

test("a run never ends before it began", async () => {
  const { book, runId, clock } = await anOpenSession();
  clock.pass(-hour);
  await endRun(book, { runId });
  const run = await runOf(book, runId);
  expect(run?.endedAt).toBe(run?.startedAt);
});
