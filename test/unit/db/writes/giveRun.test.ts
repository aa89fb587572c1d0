import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  combosWithNames,
  deleteSession,
  dump,
  editLayout,
  editRun,
  editSession,
  giveRun,
  runOf,
  runsOfCombo,
  sessionsOfCombo,
  startSession,
  undoChange,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

test("a guest's run goes to their logbook, with its laps, as their own", async () => {
  const { book, runId } = await anOpenSession();
  const { book: theirs } = await aLogbook();
  await editRun(book, { runId, patch: { guest: "Jo" } });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  const given = await giveRun(book, theirs, runId);
  expect(await runOf(book, runId)).toBeUndefined();
  const [combo] = await combosWithNames(theirs);
  expect(combo).toMatchObject({ car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const [run] = await runsOfCombo(theirs, combo?.combo.id ?? "");
  expect(run).toMatchObject({ id: runId, laps: [{ ms: 83000 }] });
  expect(run).not.toHaveProperty("guest");
  expect(await sessionsOfCombo(theirs, combo?.combo.id ?? "")).toMatchObject([{ date: "2026-03-10" }]);
  for (const change of given.there.toReversed()) await undoChange(theirs, change);
  await undoChange(book, given.here);
  expect(await combosWithNames(theirs)).toEqual([]);
  expect((await runOf(book, runId))?.guest).toBe("Jo");
});

test("a run given twice is there once", async () => {
  const { book, runId } = await anOpenSession();
  const { book: theirs } = await aLogbook();
  const given = await giveRun(book, theirs, runId);
  await undoChange(book, given.here);
  await giveRun(book, theirs, runId);
  const [combo] = await combosWithNames(theirs);
  expect(await runsOfCombo(theirs, combo?.combo.id ?? "")).toHaveLength(1);
  await expect(giveRun(book, theirs, runId)).rejects.toMatchObject({ code: "missing" });
});

test("the run comes into the session of its day, its layout keeps the number of sectors, the rig stays behind", async () => {
  const { book, runId, clock } = await anOpenSession();
  const layout = await book.tables.layouts.toCollection().first();
  await editLayout(book, { layoutId: layout?.id ?? "", patch: { sectors: 3 } });
  await editRun(book, { runId, patch: { guest: "Jo", rigId: book.newId(), tyres: "soft" } });
  const { book: theirs, clock: theirClock } = await aLogbook();
  const { comboId } = await addCombo(theirs, {
    car: { name: "club HATCH" },
    track: { name: "Varnholt Ring" },
  });
  const on = (date: string) => startSession(theirs, { comboId, date, zone: "UTC" });
  await on("2026-03-09");
  const gone = await on("2026-03-10");
  await deleteSession(theirs, { sessionId: gone.sessionId });
  const there = await on("2026-03-10");
  theirClock.pass(60_000);
  clock.pass(60_000);
  const given = await giveRun(book, theirs, runId);
  expect([given.here.what, ...given.there.map(({ what }) => what)]).toEqual([
    "Run 1 deleted",
    "Combo already there",
    "Run moved from another logbook",
  ]);
  const run = await runOf(theirs, runId);
  expect(run).toMatchObject({
    sessionId: there.sessionId,
    comboId,
    tyres: "soft",
    updatedAt: theirClock.now(),
  });
  expect(run).not.toHaveProperty("rigId");
});

test("a session made for the run is over, of its day, and of the time its own was begun", async () => {
  const { book, runId, sessionId, clock } = await anOpenSession();
  const layout = await book.tables.layouts.toCollection().first();
  await editLayout(book, { layoutId: layout?.id ?? "", patch: { sectors: 3 } });
  await editSession(book, { sessionId, patch: { focus: "kerbs", note: "windy" } });
  const begun = clock.now();
  const { book: theirs } = await aLogbook(begun + 3_600_000);
  await giveRun(book, theirs, runId);
  const [combo] = await combosWithNames(theirs);
  expect(combo?.layout).toMatchObject({ name: "", sectors: 3 });
  const [session] = await sessionsOfCombo(theirs, combo?.combo.id ?? "");
  expect(session).toMatchObject({
    date: "2026-03-10",
    startedAt: begun,
    endedAt: begun,
    zone: "Europe/Berlin",
    isTimeOfDayKnown: true,
    focus: "free",
    note: "",
    createdAt: begun,
  });
});

test("a run whose session, combo or layout is gone is not given, and both logbooks stay as they are", async () => {
  for (const table of ["runs", "sessions", "combos", "layouts"]) {
    const { book, runId } = await anOpenSession();
    const { book: theirs } = await aLogbook();
    await book.database.table(table).clear();
    const before = await dump(book);
    await expect(giveRun(book, theirs, runId)).rejects.toMatchObject({
      code: "missing",
      message: "Run not moved: it is no longer there. It may have been deleted in another tab.",
    });
    expect(await dump(book), table).toEqual(before);
    expect((await dump(theirs)).combos).toEqual([]);
  }
});
