import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addPlan, deleteSession, planToCome, startSession, waitingPlan } from "#db";
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
  const plan = () => ({ comboId, lines: [{ id: book.newId(), purpose: "Corner 5" }] });
  await addPlan(book, plan());
  clock.pass(1000);
  const second = await addPlan(book, plan());
  expect((await waitingPlan(book, comboId))?.id).toBe(second.id);
});

test("minutes go on from the plan before, also once it is begun; a row of minutes alone is no plan", async () => {
  const { book, comboId, clock } = await anOpenSession();
  expect(await planToCome(book, comboId)).toEqual({ row: undefined, minutes: undefined });
  const lines: readonly PlannedRun[] = [{ id: book.newId(), purpose: "Corner 5" }];
  await addPlan(book, { comboId, minutes: 45, lines });
  clock.pass(60_000);
  await startSession(book, { comboId, date: "2026-03-10", zone: "Europe/Berlin", plan: lines });
  expect(await planToCome(book, comboId)).toEqual({ row: undefined, minutes: 45 });
  const { id } = await addPlan(book, { comboId, minutes: 30, lines: [] });
  expect(await planToCome(book, comboId)).toMatchObject({ row: { id }, minutes: 30 });
  expect(await waitingPlan(book, comboId)).toBeUndefined();
});
