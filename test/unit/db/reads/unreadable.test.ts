import "fake-indexeddb/auto";

import { afterEach, expect, test } from "vitest";
import { aboutUnreadable, addRun, combosWithNames, runsOfSession, startSession, unreadableRuns } from "#db";
import { anOpenSession } from "../../../support/aLogbook.ts";
import { failReadsOf } from "../../../support/unreadableRows.ts";

let mend: (() => void) | undefined;
afterEach(() => mend?.());

test("a run that cannot be read is named in its own session only, and not for a car that cannot be", async () => {
  const { book, comboId, sessionId, runId } = await anOpenSession();
  const { runId: second } = await addRun(book, { sessionId });
  const other = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  const [combo] = await combosWithNames(book);
  expect(await unreadableRuns(book, sessionId)).toEqual([]);
  mend = failReadsOf([
    { table: "cars", id: combo?.car.id ?? "" },
    { table: "runs", id: second },
  ]);
  await combosWithNames(book);
  expect(await unreadableRuns(book, sessionId)).toEqual([]);
  await runsOfSession(book, sessionId);
  expect(await unreadableRuns(book, sessionId)).toEqual([{ id: second, n: 2 }]);
  expect(await unreadableRuns(book, other.sessionId)).toEqual([]);
  expect(await aboutUnreadable(book, { table: "runs", id: runId })).toEqual({
    table: "runs",
    id: runId,
    sessionId,
    date: "2026-03-10",
  });
});

test("the figures of a session are named by the session, a row of no session by itself", async () => {
  const { book, sessionId } = await anOpenSession();
  const figures = { table: "digests", id: sessionId };
  expect(await aboutUnreadable(book, figures)).toEqual({
    ...figures,
    sessionId,
    date: "2026-03-10",
    comboName: "Varnholt Ring · Club hatch",
  });
  const nowhere = { table: "runs", id: book.newId() };
  expect(await aboutUnreadable(book, nowhere)).toEqual(nowhere);
  const none = { table: "sessions", id: book.newId() };
  expect(await aboutUnreadable(book, none)).toEqual(none);
  await book.database.table("sessions").delete(sessionId);
  expect(await aboutUnreadable(book, figures)).toEqual({ ...figures, sessionId });
});

test("a session that cannot be read is named by its start and its combo", async () => {
  const { book, clock, sessionId } = await anOpenSession();
  const row = { table: "sessions", id: sessionId };
  expect(await aboutUnreadable(book, row)).toEqual({
    ...row,
    sessionId,
    startedAt: clock.now(),
    comboName: "Varnholt Ring · Club hatch",
  });
  await book.database.table("combos").clear();
  expect(await aboutUnreadable(book, row)).toEqual({ ...row, sessionId, startedAt: clock.now() });
});
