import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addPlan, deleteSession, startSession, waitingPlan } from "#db";
import type { PlannedRun } from "#domain";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("a plan waits until a session begins with its lines, and again when that is taken back", async () => {
  const { book, comboId, clock } = await anOpenSession();
  expect(await waitingPlan(book, comboId)).toBeUndefined();
  const lines: readonly PlannedRun[] = [{ id: book.newId(), purpose: "Corner 5", laps: 8 }];
  const { id } = await addPlan(book, { comboId, lines });
  await addPlan(book, { name: "Short evening", lines: [] });
  expect((await waitingPlan(book, comboId))?.id).toBe(id);
  clock.pass(60_000);
  const begun = { comboId, date: "2026-03-10", zone: "Europe/Berlin", plan: lines };
  const { sessionId } = await startSession(book, begun);
  expect(await waitingPlan(book, comboId)).toBeUndefined();
  await deleteSession(book, { sessionId });
  expect((await waitingPlan(book, comboId))?.id).toBe(id);
});

test("the plan changed last is the one that waits", async () => {
  const { book, comboId, clock } = await anOpenSession();
  await addPlan(book, { comboId, lines: [] });
  clock.pass(1000);
  const second = await addPlan(book, { comboId, lines: [] });
  expect((await waitingPlan(book, comboId))?.id).toBe(second.id);
});
