import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addLaps,
  addRun,
  addSummaryRun,
  bringBack,
  bringBackLap,
  changeSessionDate,
  deleteCornerReview,
  deleteLap,
  deleteRigTest,
  deleteRun,
  deleteSession,
  dropAside,
  editCorners,
  editLap,
  editLayout,
  editRun,
  editSession,
  endRun,
  endSession,
  importLaps,
  joinCars,
  joinCombos,
  joinLayouts,
  joinTracks,
  mendAside,
  moveLaps,
  moveLapsToCombo,
  moveRunToCombo,
  moveRunToSession,
  moveSessionToCombo,
  renameCar,
  reopenSession,
  setNotBest,
  splitRun,
  splitSession,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import { asideRow } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("what cannot be stored says first what was not done, each write in its own words", async () => {
  const { book: open, comboId, sessionId, runId } = await anOpenSession();
  const book = { ...open, status: { ...open.status, get: () => ({ kind: "gone" }) as const } };
  const id = open.newId();
  const same = { keepId: comboId, dropId: id };
  const named = { car: { name: "Kart" }, track: { name: "Tessemoor" } };
  const aside = asideRow("cars", { id, name: 42 }, "name: not a text", 3);
  const lap = aLap(84_000);
  const summary = { laps: 3 };
  const writes: readonly (readonly [string, Promise<unknown>])[] = [
    ["Lap not stored", addLap(book, { runId, id, lap })],
    ["Laps not stored", addLaps(book, { runId, laps: [{ id, lap }] })],
    ["Lap not changed", editLap(book, { runId, lapId: id, patch: {} })],
    ["Lap not changed", setNotBest(book, { runId, lapId: id, isNotBest: true })],
    ["Lap not deleted", deleteLap(book, { runId, lapId: id })],
    ["Lap not brought back", bringBackLap(book, { runId, lapId: id })],
    ["Not brought back", bringBack(book, { table: "runs", id })],
    ["Laps not moved", moveLaps(book, { from: runId, lapIds: [id], to: { runId } })],
    ["Laps not moved", moveLapsToCombo(book, { from: runId, lapIds: [id], comboId })],
    ["Run not stored", addRun(book, { sessionId })],
    ["Run not stored", addSummaryRun(book, { sessionId, summary })],
    ["Run not changed", editRun(book, { runId, patch: {} })],
    ["Run not ended", endRun(book, { runId })],
    ["Run not deleted", deleteRun(book, { runId })],
    ["Run not split", splitRun(book, { runId, lapId: id })],
    ["Run not moved", moveRunToCombo(book, { runId, comboId })],
    ["Run not moved", moveRunToSession(book, { runId, sessionId })],
    ["Session not started", startSession(book, { comboId, date: "2026-03-11", zone: "UTC" })],
    ["Session not changed", editSession(book, { sessionId, patch: {} })],
    ["Session not ended", endSession(book, { sessionId })],
    ["Session not opened again", reopenSession(book, { sessionId })],
    ["Session not deleted", deleteSession(book, { sessionId })],
    ["Session not split", splitSession(book, { sessionId, fromRunId: runId })],
    ["Session not moved", moveSessionToCombo(book, { sessionId, comboId })],
    [
      "Date not changed",
      changeSessionDate(book, { sessionId, date: "2026-03-11", startedAt: 1, isTimeOfDayKnown: true }),
    ],
    ["Combo not stored", addCombo(book, named)],
    ["Name not changed", renameCar(book, { id, name: "Kart" })],
    ["Layout not changed", editLayout(book, { layoutId: id, patch: {} })],
    ["Corner not changed", editCorners(book, { layoutId: id, corners: [{ number: 1, patch: {} }] })],
    ["Page not turned", turnPage(book, { comboIds: [comboId], from: 1, reason: "new" })],
    ["Combos not joined", joinCombos(book, same)],
    ["Cars not joined", joinCars(book, same)],
    ["Tracks not joined", joinTracks(book, same)],
    ["Layouts not joined", joinLayouts(book, same)],
    ["Rig test not deleted", deleteRigTest(book, id)],
    ["Corner review not deleted", deleteCornerReview(book, id)],
    ["Nothing imported", importLaps(book, { sessions: [], takesKnown: false })],
    ["Not put back", mendAside(book, { aside, row: {} })],
    ["Not deleted", dropAside(book, aside)],
    ["Not undone", undoChange(book, { what: "Lap 1 added", edits: [] })],
  ];
  for (const [what, write] of writes)
    await expect(write, what).rejects.toMatchObject({
      code: "gone",
      message: `${what}: the stored logbook has disappeared from this browser. Restore a backup.`,
    });
});
