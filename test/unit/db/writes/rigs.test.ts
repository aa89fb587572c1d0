import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, addRig, addRun, endSession, runsOfSession, startSession, undoChange } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

const aRecord = (from: string, name: string) => ({
  from,
  name,
  screen: {},
  view: {},
  wheel: {},
  pedals: {},
  seat: {},
  note: "",
});

/** An open session of 10 March 2026, begun with a record of the 1st. */
async function anEvening() {
  const { book, comboId, clock, sessionId: before } = await anOpenSession();
  await endSession(book, { sessionId: before });
  const { id: old } = await addRig(book, aRecord("2026-03-01", "before"));
  clock.pass(1000);
  const { sessionId, runId } = await startSession(book, {
    comboId,
    date: "2026-03-10",
    zone: "Europe/Berlin",
    run: { rigId: old },
  });
  const lapIn = async (id: string) => {
    clock.pass(85_000);
    await addLap(book, { runId: id, id: book.newId(), lap: aLap(85_000) });
  };
  const rigsOfRuns = async () => (await runsOfSession(book, sessionId)).map(({ rigId }) => rigId);
  return { book, clock, old, sessionId, runId, lapIn, rigsOfRuns };
}

test("laps driven before a change of the rig in mid-session stay before it, and the next run is driven with it", async () => {
  const { book, clock, old, sessionId, runId, lapIn, rigsOfRuns } = await anEvening();
  await lapIn(runId);
  const { id: changed } = await addRig(book, aRecord("2026-03-10", "gain down"));
  await lapIn(runId);
  clock.pass(1000);
  await addRun(book, { sessionId });
  await addRun(book, { sessionId });
  expect(await rigsOfRuns()).toEqual([old, changed, changed]);
});

test("a run that was begun and has no lap yet is driven with the change, and undo takes that back", async () => {
  const { book, old, rigsOfRuns } = await anEvening();
  const change = await addRig(book, aRecord("2026-03-10", "gain down"));
  expect(await rigsOfRuns()).toEqual([change.id]);
  await undoChange(book, change);
  expect(await rigsOfRuns()).toEqual([old]);
});

test("a record of another day moves no run of tonight", async () => {
  const { book, clock, old, sessionId, runId, lapIn, rigsOfRuns } = await anEvening();
  await addRig(book, aRecord("2026-03-11", "tomorrow's"));
  await addRig(book, aRecord("2026-02-01", "an older one, written down late"));
  expect(await rigsOfRuns()).toEqual([old]);
  await lapIn(runId);
  clock.pass(1000);
  await addRun(book, { sessionId });
  expect(await rigsOfRuns()).toEqual([old, old]);
});

test("a setting chosen for one run goes on in the next ones until a change is written down", async () => {
  const { book, clock, old, sessionId, lapIn, rigsOfRuns } = await anEvening();
  const { id: newer } = await addRig(book, aRecord("2026-03-10", "gain down"));
  clock.pass(1000);
  const { runId: back } = await addRun(book, { sessionId, settings: { rigId: old } });
  await lapIn(back);
  await addRun(book, { sessionId });
  expect(await rigsOfRuns()).toEqual([newer, old, old]);
});
