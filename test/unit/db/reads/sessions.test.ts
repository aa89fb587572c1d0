import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addRun,
  deleteRun,
  deleteSession,
  eachRunsOf,
  endSession,
  type Logbook,
  lastSession,
  recentSessions,
  runOf,
  runsOfCombo,
  runsOfSession,
  sessionBefore,
  sessionCount,
  sessionOf,
  sessionsInDoubt,
  sessionsOfCombo,
  sessionsOpen,
  sessionWithRuns,
  startSession,
} from "#db";
import type { Id, Run, Session } from "#domain";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const ids = (rows: readonly { readonly id: Id }[]) => rows.map(({ id }) => id);

async function aCombo(at?: number) {
  const { book, clock } = await aLogbook(at);
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  return { book, clock, comboId };
}

/** A session at 19:00 UTC of a day, over unless it is to stay open. */
async function on(book: Logbook, comboId: Id, date: string, isOpen = false) {
  const startedAt = Date.parse(`${date}T19:00:00Z`);
  const ended = isOpen ? {} : { endedAt: startedAt + 3_600_000 };
  const started = await startSession(book, { comboId, date, zone: "UTC", startedAt, ...ended });
  return { ...started, startedAt };
}

test("open sessions are given newest first, those dated after tomorrow last, and none that is gone", async () => {
  const { book, comboId } = await aCombo();
  const old = await on(book, comboId, "2026-03-01", true);
  const ahead = await on(book, comboId, "2036-03-01", true);
  const now = await on(book, comboId, "2026-03-10", true);
  await on(book, comboId, "2026-03-09");
  const in3 = [ahead.sessionId, now.sessionId, old.sessionId];
  expect(ids(await sessionsOpen(book))).toEqual(in3);
  expect(ids(await sessionsOpen(book, ahead.startedAt))).toEqual([
    now.sessionId,
    old.sessionId,
    ahead.sessionId,
  ]);
  expect(ids(await sessionsOpen(book, ahead.startedAt + 1))).toEqual(in3);
  await book.database.table("sessions").delete(now.sessionId);
  expect(ids(await sessionsOpen(book))).toEqual([ahead.sessionId, old.sessionId]);
});

test("the last session is the newest before tomorrow is over, and one dated later only where there is no other", async () => {
  const { book, comboId } = await aCombo();
  const until = Date.UTC(2026, 2, 12);
  expect(await lastSession(book, until)).toBeUndefined();
  const far = await on(book, comboId, "2037-03-01");
  const farther = await on(book, comboId, "2038-03-01");
  expect((await lastSession(book, until))?.id).toBe(farther.sessionId);
  await deleteSession(book, { sessionId: farther.sessionId });
  expect((await lastSession(book, until))?.id).toBe(far.sessionId);
  await on(book, comboId, "2026-03-01");
  const now = await on(book, comboId, "2026-03-10");
  expect((await lastSession(book, until))?.id).toBe(now.sessionId);
  await deleteSession(book, { sessionId: now.sessionId });
  expect((await lastSession(book, until))?.date).toBe("2026-03-01");
});

test("a session of the instant itself is not before it", async () => {
  const { book, comboId } = await aCombo();
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  await on(book, other, "2026-03-02");
  const first = await on(book, comboId, "2026-03-01");
  const second = await on(book, comboId, "2026-03-03");
  expect((await sessionBefore(book, comboId, second.startedAt))?.id).toBe(first.sessionId);
  expect((await sessionBefore(book, comboId, second.startedAt + 1))?.id).toBe(second.sessionId);
  expect(await sessionBefore(book, comboId, first.startedAt)).toBeUndefined();
  expect(await sessionBefore(book, other, first.startedAt), "an older combo's is not asked").toBeUndefined();
  await deleteSession(book, { sessionId: second.sessionId });
  expect((await sessionBefore(book, comboId, second.startedAt + 1))?.id).toBe(first.sessionId);
  expect(ids(await recentSessions(book, 5, second.startedAt)).length).toBe(2);
});

test("sessions and runs are listed without what is deleted, in order", async () => {
  const { book, comboId } = await aCombo();
  const second = await on(book, comboId, "2026-03-03");
  const first = await on(book, comboId, "2026-03-01");
  const gone = await on(book, comboId, "2026-03-02");
  const { runId } = await addRun(book, { sessionId: first.sessionId });
  const { runId: dropped } = await addRun(book, { sessionId: first.sessionId });
  await deleteSession(book, { sessionId: gone.sessionId });
  await deleteRun(book, { runId: dropped });
  expect(ids(await sessionsOfCombo(book, comboId))).toEqual([first.sessionId, second.sessionId]);
  expect(ids(await runsOfCombo(book, comboId))).toEqual([first.runId, runId, second.runId]);
  expect(ids(await runsOfSession(book, first.sessionId))).toEqual([first.runId, runId]);
  expect(await sessionCount(book)).toBe(2);
  expect(await sessionOf(book, gone.sessionId)).toBeUndefined();
  expect(await runOf(book, dropped)).toBeUndefined();
  expect(await runOf(book, book.newId())).toBeUndefined();
});

test("a session is given with its combo and its runs, and not where it is gone", async () => {
  const { book, comboId, sessionId, runId } = await anOpenSession();
  const read = await sessionWithRuns(book, sessionId);
  expect(read).toMatchObject({ session: { id: sessionId }, combo: { id: comboId }, runs: [{ id: runId }] });
  expect(await sessionWithRuns(book, book.newId())).toBeUndefined();
  await book.database.table("combos").delete(comboId);
  expect(await sessionWithRuns(book, sessionId)).toMatchObject({ combo: undefined, runs: [{ id: runId }] });
});

test("in doubt are sessions dated after tomorrow and those a clock of a year before the app has dated", async () => {
  const { book, comboId, clock } = await aCombo();
  const today = "2026-03-10";
  await on(book, comboId, "2025-06-01");
  await on(book, comboId, "2026-03-11");
  const ahead = await on(book, comboId, "2026-03-12");
  const aheadToo = await on(book, comboId, "2036-01-01");
  const goneToo = await on(book, comboId, "2036-01-02");
  await deleteSession(book, { sessionId: goneToo.sessionId });
  clock.set(Date.UTC(2016, 6, 3, 20));
  const early = await on(book, comboId, "2016-07-03");
  const older = await on(book, comboId, "2016-07-02");
  await on(book, comboId, "2014-07-03");
  const gone = await on(book, comboId, "2016-07-03");
  await deleteSession(book, { sessionId: gone.sessionId });
  // The last hours of such a clock, in a zone where the year of the app has begun.
  clock.set(Date.UTC(2025, 11, 31, 23));
  const { sessionId: atNewYear } = await startSession(book, { comboId, date: "2026-01-01", zone: "UTC" });
  await book.database.table("sessions").update(atNewYear, { startedAt: Date.UTC(2026, 0, 1, 10) });
  expect(ids(await sessionsInDoubt(book, today))).toEqual([
    older.sessionId,
    early.sessionId,
    atNewYear,
    ahead.sessionId,
    aheadToo.sessionId,
  ]);
});

test("on a device whose clock stands years back, a session is in doubt once, not twice", async () => {
  const { book, comboId, clock } = await aCombo(Date.UTC(2016, 6, 3, 20));
  const { sessionId } = await startSession(book, { comboId, date: "2016-07-03", zone: "UTC" });
  clock.pass(86_400_000);
  const real = await on(book, comboId, "2026-01-01");
  expect(ids(await sessionsInDoubt(book, "2016-07-04"))).toEqual([sessionId, real.sessionId]);
});

test("runs of many sessions are handed on, of each that is wanted once, of others and deleted ones none", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  const session = (await book.tables.sessions.get(sessionId)) as Session;
  const run = (await book.tables.runs.get(runId)) as Run;
  const made = Array.from({ length: 450 }, () => ({
    session: book.newId(),
    first: book.newId(),
    second: book.newId(),
  }));
  await book.database.table("sessions").bulkAdd(made.map((one) => ({ ...session, id: one.session })));
  await book.database.table("runs").bulkAdd(
    made.flatMap((one) => [
      { ...run, id: one.second, sessionId: one.session, n: 2 },
      { ...run, id: one.first, sessionId: one.session, n: 1 },
    ]),
  );
  const unwanted = made[100]?.session ?? "";
  const gone = made[7]?.first ?? "";
  await book.database.table("runs").update(gone, { deletedAt: 5 });
  const wanted = made.map((one) => one.session).filter((id) => id !== unwanted);
  const parts: Id[][] = [];
  await eachRunsOf(book, wanted.toReversed(), (runs) => parts.push(ids(runs)));
  expect(parts.every((part) => part.length <= 400)).toBe(true);
  const expected = made
    .filter((one) => one.session !== unwanted)
    .flatMap((one) => (one.first === gone ? [one.second] : [one.first, one.second]));
  expect(parts.flat().toSorted()).toEqual(expected.toSorted());
  const ofOne = made[3];
  const all = parts.flat();
  expect(all.indexOf(ofOne?.first ?? "")).toBe(all.indexOf(ofOne?.second ?? "") - 1);
  const none: unknown[] = [];
  await eachRunsOf(book, [], (runs) => none.push(runs));
  expect(none).toEqual([]);
});

test("a session that was ended is not open, and one ended and deleted is in no list", async () => {
  const { book, sessionId, comboId } = await anOpenSession();
  await endSession(book, { sessionId });
  expect(await sessionsOpen(book)).toEqual([]);
  await deleteSession(book, { sessionId });
  expect(await sessionsOfCombo(book, comboId)).toEqual([]);
  expect(await sessionCount(book)).toBe(0);
});
