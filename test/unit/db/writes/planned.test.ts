import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRun,
  deleteRun,
  driveLine,
  leaveOutLine,
  runsOfSession,
  sessionOf,
  startSession,
} from "#db";
import type { PlannedRun } from "#domain";
import { aLap } from "../../../support/aLap.ts";
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

test("a line that is left out hands the open run on to the next one, and comes back when it is taken in again", async () => {
  const { book, sessionId, runs } = await planned();
  const [warmUp = "", drill = ""] = plan.map(({ id }) => id);
  await leaveOutLine(book, { sessionId, lineId: warmUp });
  expect((await sessionOf(book, sessionId))?.plan).toMatchObject([{ skipped: true }, { id: drill }]);
  expect(await runs()).toEqual([["drill", "learning", drill]]);
  await leaveOutLine(book, { sessionId, lineId: drill });
  expect(await runs()).toEqual([["pace", "full", undefined]]);
  await leaveOutLine(book, { sessionId, lineId: warmUp, isLeftOut: false });
  expect((await sessionOf(book, sessionId))?.plan?.[0]).not.toHaveProperty("skipped");
  expect(await runs()).toEqual([["warm-up", "easy", warmUp]]);
});

test("a run that holds laps keeps its line when that is left out", async () => {
  const { book, sessionId, runs } = await planned();
  const [warmUp = ""] = plan.map(({ id }) => id);
  const [run] = await runsOfSession(book, sessionId);
  await addLap(book, { runId: run?.id ?? "", id: book.newId(), lap: aLap(90_000) });
  await leaveOutLine(book, { sessionId, lineId: warmUp });
  expect(await runs()).toEqual([["warm-up", "easy", warmUp]]);
});

test("a run drives another line when it is told to, or none", async () => {
  const { book, sessionId, runs } = await planned();
  const [run] = await runsOfSession(book, sessionId);
  const runId = run?.id ?? "";
  const lineId = plan[1]?.id;
  expect((await driveLine(book, { runId, lineId })).what).toBe("Run drives “Corner 5”");
  expect(await runs()).toEqual([["drill", "learning", lineId]]);
  await driveLine(book, { runId, lineId: undefined });
  expect(await runs()).toEqual([["pace", "full", undefined]]);
  await expect(driveLine(book, { runId, lineId: book.newId() })).rejects.toThrow("no longer in the plan");
});
