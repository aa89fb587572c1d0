import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addRun, deleteRun, runsOfSession, startSession } from "#db";
import type { PlannedRun } from "#domain";
import { anOpenSession } from "../../../support/aLogbook.ts";

const plan: readonly PlannedRun[] = [
  { id: "01234567-89ab-7cde-8f01-0000000000a1", purpose: "Warm up", kind: "warm-up", effort: "easy" },
  { id: "01234567-89ab-7cde-8f01-0000000000a2", purpose: "Corner 5", kind: "drill", effort: "learning" },
];

/** A session that was started with a plan. */
async function planned() {
  const { book, comboId } = await anOpenSession();
  const { sessionId } = await startSession(book, {
    comboId,
    date: "2026-03-10",
    zone: "Europe/Berlin",
    plan,
  });
  const runs = async () =>
    (await runsOfSession(book, sessionId)).map(({ kind, effort, line }) => [kind, effort, line]);
  return { book, sessionId, runs };
}

test("each run takes the next line of the plan with its kind and effort, and runs beyond it are at pace", async () => {
  const { book, sessionId, runs } = await planned();
  await addRun(book, { sessionId });
  await addRun(book, { sessionId });
  expect(await runs()).toEqual([
    ["warm-up", "easy", plan[0]?.id],
    ["drill", "learning", plan[1]?.id],
    ["pace", "full", undefined],
  ]);
});

test("a run that is deleted gives its line back, and what is said of a run goes before the plan", async () => {
  const { book, sessionId, runs } = await planned();
  const { runId } = await addRun(book, { sessionId });
  await deleteRun(book, { runId });
  await addRun(book, { sessionId, settings: { kind: "pace" } });
  expect((await runs()).at(-1)).toEqual(["pace", "learning", plan[1]?.id]);
});
