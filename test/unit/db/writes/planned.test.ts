import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addRigTest,
  addRun,
  beginTestRun,
  countTry,
  deleteRun,
  driveLine,
  editRun,
  endRun,
  leaveOutLine,
  moveLaps,
  moveRunToCombo,
  reopenRun,
  runsOfSession,
  sessionOf,
  splitSession,
  startSession,
  takePlan,
  undoChange,
} from "#db";
import type { PlannedRun } from "#domain";
import { aGainTest } from "../../../support/aGainTest.ts";
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

test("a session that began without a plan takes one along: the run that holds nothing yet drives its first line", async () => {
  const { book, sessionId } = await anOpenSession();
  const lines = async () => (await runsOfSession(book, sessionId)).map(({ line }) => line);
  const [run] = await runsOfSession(book, sessionId);
  const taken = await takePlan(book, { sessionId, lines: plan });
  expect((await sessionOf(book, sessionId))?.plan).toEqual(plan);
  expect(await lines()).toEqual([plan[0]?.id]);
  await expect(takePlan(book, { sessionId, lines: plan })).rejects.toThrow("has a plan already");
  await undoChange(book, taken);
  expect(await lines()).toEqual([undefined]);
  await addLap(book, { runId: run?.id ?? "", id: book.newId(), lap: aLap(90_000) });
  await takePlan(book, { sessionId, lines: plan });
  expect(await lines()).toEqual([undefined]);
  await addRun(book, { sessionId });
  expect(await lines()).toEqual([undefined, plan[0]?.id]);
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
  await leaveOutLine(book, { sessionId, lineId: plan[0]?.id ?? "" });
  await driveLine(book, { runId, lineId: plan[0]?.id });
  expect((await sessionOf(book, sessionId))?.plan).toEqual(plan);
  await driveLine(book, { runId, lineId: undefined });
  expect(await runs()).toEqual([["pace", "full", undefined]]);
  await expect(driveLine(book, { runId, lineId: book.newId() })).rejects.toThrow("no longer in the plan");
});

test("a run that holds laps takes another line without its kind and effort, and the notice says where they do not fit", async () => {
  const { book, sessionId, runs } = await planned();
  const [run] = await runsOfSession(book, sessionId);
  const runId = run?.id ?? "";
  const [warmUp, drill] = plan.map(({ id }) => id);
  await addLap(book, { runId, id: book.newId(), lap: aLap(90_000) });
  const drive = async (lineId: string | undefined) => (await driveLine(book, { runId, lineId })).what;
  expect(await drive(drill)).toBe("Run drives “Corner 5”, and stays a warm-up run");
  expect(await runs()).toEqual([["warm-up", "easy", drill]]);
  expect(await drive(undefined)).toBe("Run without a line of the plan");
  expect(await drive(warmUp)).toBe("Run drives “Warm up”");
  expect(await runs()).toEqual([["warm-up", "easy", warmUp]]);
});

test("a drill of which tries are counted stays a drill on a timed line", async () => {
  const { book, sessionId, runs } = await planned();
  const [run] = await runsOfSession(book, sessionId);
  const runId = run?.id ?? "";
  await driveLine(book, { runId, lineId: plan[1]?.id });
  await countTry(book, { runId, drill: "braking", corner: 5, isGood: true });
  const { what } = await driveLine(book, { runId, lineId: plan[0]?.id });
  expect(what).toBe("Run drives “Warm up”, and stays a drill");
  expect(await runs()).toEqual([["drill", "learning", plan[0]?.id]]);
});

test("a run that is moved to another session drives no line there, and its line is free again", async () => {
  const { book, sessionId, runs } = await planned();
  const [run] = await runsOfSession(book, sessionId);
  const other = await addCombo(book, { car: { name: "Kart" }, track: { name: "Sand Hollow" } });
  const { sessionId: thereId } = await moveRunToCombo(book, { runId: run?.id ?? "", comboId: other.comboId });
  expect((await runsOfSession(book, thereId))[0]).not.toHaveProperty("line");
  await addRun(book, { sessionId });
  expect(await runs()).toEqual([["warm-up", "easy", plan[0]?.id]]);
});

test("laps that are moved to a run of their own drive no line of the plan", async () => {
  const { book, sessionId, runs } = await planned();
  const [run] = await runsOfSession(book, sessionId);
  const from = run?.id ?? "";
  const lapIds = [book.newId(), book.newId()];
  for (const id of lapIds) await addLap(book, { runId: from, id, lap: aLap(90_000) });
  await endRun(book, { runId: from });
  await moveLaps(book, { from, lapIds: lapIds.slice(1), to: { newRunIn: sessionId } });
  expect(await runs()).toEqual([
    ["warm-up", "easy", plan[0]?.id],
    ["warm-up", "easy", undefined],
  ]);
});

test("a session that is split takes the lines of its runs with it, and those to come where it goes on", async () => {
  const { book, sessionId } = await planned();
  const [first] = await runsOfSession(book, sessionId);
  await addLap(book, { runId: first?.id ?? "", id: book.newId(), lap: aLap(90_000) });
  const { runId } = await addRun(book, { sessionId, settings: { line: undefined } });
  await addLap(book, { runId, id: book.newId(), lap: aLap(90_000) });
  const split = await splitSession(book, { sessionId, fromRunId: runId });
  expect((await sessionOf(book, sessionId))?.plan).toEqual([plan[0]]);
  expect((await sessionOf(book, split.sessionId))?.plan).toEqual([plan[1]]);
  await undoChange(book, split);
  expect((await sessionOf(book, sessionId))?.plan).toEqual(plan);
});

test("a run of a rig test drives the test's line of the plan, and no other", async () => {
  const { book, comboId } = await anOpenSession();
  const { id: testId } = await addRigTest(book, aGainTest(comboId, ["B", "A"], {}));
  const start = async (lines: readonly PlannedRun[]) => {
    const { sessionId } = await startSession(book, {
      comboId,
      date: "2026-03-10",
      zone: "Europe/Berlin",
      plan: lines,
    });
    await beginTestRun(book, { sessionId, testId, pair: 1, side: "B" });
    return (await runsOfSession(book, sessionId)).map(({ line, kind, rigTest }) => [line, kind, rigTest?.id]);
  };
  expect(await start(plan)).toEqual([[undefined, "pace", testId]]);
  const own = { id: book.newId(), purpose: "The next run of the rig test", rigTest: testId };
  expect(await start([...plan, own])).toEqual([[own.id, "pace", testId]]);
});

test("a guest at the wheel drives no line: the next run of the driver's own does", async () => {
  const { book, sessionId, runs } = await planned();
  const [first] = await runsOfSession(book, sessionId);
  await editRun(book, { runId: first?.id ?? "", patch: { guest: "Jo" } });
  await addRun(book, { sessionId });
  expect((await runs()).at(-1)).toEqual(["warm-up", "easy", plan[0]?.id]);
});

test("a run that holds no more than tries counted is there: going on with the run before does not take it away", async () => {
  const { book, sessionId } = await planned();
  const [first] = await runsOfSession(book, sessionId);
  const { runId } = await addRun(book, { sessionId });
  await countTry(book, { runId, drill: "braking", corner: 5, isGood: true });
  await reopenRun(book, { runId: first?.id ?? "" });
  expect((await runsOfSession(book, sessionId)).map(({ id }) => id)).toEqual([first?.id, runId]);
});
