import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, addLaps, deleteLap, editLap, moveLaps, splitRun, undoChange } from "#db";
import { newLaps } from "../../../src/live/newLaps.ts";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";

async function threeLaps() {
  const { book, runId, sessionId } = await anOpenSession();
  const ids = [book.newId(), book.newId(), book.newId()];
  const added = await addLaps(book, { runId, laps: ids.map((id) => ({ id, lap: aLap(84_000) })) });
  return { book, runId, sessionId, ids, added };
}

test("moved laps are not counted a second time among the laps that are in this browser only", async () => {
  const { book, runId, sessionId, ids, added } = await threeLaps();
  expect(newLaps(added)).toBe(3);
  const moved = await moveLaps(book, { from: runId, lapIds: ids.slice(1), to: { newRunIn: sessionId } });
  expect(newLaps(moved)).toBe(0);
  expect(newLaps(await undoChange(book, moved))).toBe(0);
  expect(newLaps(await splitRun(book, { runId, lapId: ids[1] ?? "" }))).toBe(0);
});

test("neither is a lap that was edited, or deleted and brought back; a new one beside them is", async () => {
  const { book, runId, ids } = await threeLaps();
  const lapId = ids[0] ?? "";
  expect(newLaps(await editLap(book, { runId, lapId, patch: { ms: 84_100 } }))).toBe(0);
  const deleted = await deleteLap(book, { runId, lapId });
  expect(newLaps(deleted)).toBe(0);
  expect(newLaps(await undoChange(book, deleted))).toBe(0);
  expect(newLaps(await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) }))).toBe(1);
});
