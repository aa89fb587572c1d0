import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addRig,
  addRigTest,
  addRun,
  beginTestRun,
  deleteRigTest,
  deleteRun,
  editRun,
  endSession,
  keepSetting,
  leaveTest,
  moveRunToCombo,
  moveRunToSession,
  moveSessionToCombo,
  rigs,
  rigTests,
  runsOfSession,
  runsOfTest,
  startSession,
  stopTest,
  undoChange,
  voidTestRun,
} from "#db";
import type { RigTest } from "#domain";
import { aGainTest } from "../../../support/aGainTest.ts";
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
const aPlan = (comboId: string) => aGainTest(comboId, ["B", "A"], { question: "" });

async function aTestEvening() {
  const { book, clock, comboId, sessionId, runId } = await anOpenSession();
  const { id: rigId } = await addRig(book, aRecord("2026-03-01", "as it was"));
  const { id: testId } = await addRigTest(book, aPlan(comboId));
  const begin = (pair: number, side: "A" | "B", id?: string) =>
    beginTestRun(book, { sessionId, testId, pair, side, ...(id !== undefined && { id }) });
  const lapIn = async (id: string) => {
    clock.pass(85_000);
    await addLap(book, { runId: id, id: book.newId(), lap: aLap(85_000) });
  };
  const runs = () => runsOfSession(book, sessionId);
  const theTest = async () => (await rigTests(book))[0] as RigTest;
  return { book, clock, comboId, sessionId, runId, rigId, testId, begin, lapIn, runs, theTest };
}

test("an open run without laps becomes the run of the test, and undo takes that back", async () => {
  const { book, runId, testId, begin, runs } = await aTestEvening();
  await editRun(book, { runId, patch: { kind: "warm-up", effort: "easy", guest: "Ida", tyres: "soft" } });
  const change = await begin(1, "B");
  expect(change).toMatchObject({ runId, what: "Run 1 begun with setting B of the rig test" });
  const [run, ...more] = await runs();
  expect(more).toEqual([]);
  expect(run).toMatchObject({ kind: "pace", effort: "full", tyres: "soft" });
  expect(run?.rigTest).toEqual({ id: testId, pair: 1, side: "B" });
  expect(run).not.toHaveProperty("guest");
  await undoChange(book, change);
  expect((await runs())[0]).toMatchObject({ kind: "warm-up", guest: "Ida" });
  expect((await runs())[0]).not.toHaveProperty("rigTest");
});

test("an open run with laps ends, and the next one is of the test with the settings carried over", async () => {
  const { book, runId, rigId, testId, begin, lapIn, runs } = await aTestEvening();
  await editRun(book, { runId, patch: { tyres: "soft", rigId, effort: "brisk" } });
  await lapIn(runId);
  const id = book.newId();
  const { runId: first } = await begin(1, "B", id);
  expect(first).toBe(id);
  await lapIn(first);
  await begin(1, "A");
  const [before, one, two, ...more] = await runs();
  expect(more).toEqual([]);
  expect(before?.endedAt).toBeDefined();
  expect(before).not.toHaveProperty("rigTest");
  expect(one).toMatchObject({
    tyres: "soft",
    rigId,
    effort: "full",
    rigTest: { id: testId, pair: 1, side: "B" },
  });
  expect(one?.endedAt).toBeDefined();
  expect(two).toMatchObject({ tyres: "soft", rigId, rigTest: { pair: 1, side: "A" } });
  expect(two?.endedAt).toBeUndefined();
  expect((await begin(1, "B", id)).edits, "trying again makes no second one").toEqual([]);
  expect(await runs()).toHaveLength(3);
});

test("the run after a run of the test is of no test", async () => {
  const { book, sessionId, begin, lapIn, runs } = await aTestEvening();
  await lapIn((await begin(1, "B")).runId);
  await addRun(book, { sessionId });
  expect((await runs()).at(-1)).not.toHaveProperty("rigTest");
});

test("no run is begun for a test that has ended, on another combo, in a session that is over, or for no pair of it", async () => {
  const { book, sessionId, testId, begin, runs } = await aTestEvening();
  await expect(begin(3, "A")).rejects.toMatchObject({ message: expect.stringMatching(/no such pair/) });
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const { id: elsewhere } = await addRigTest(book, aPlan(other));
  const asked = { sessionId, pair: 1, side: "A" } as const;
  await expect(beginTestRun(book, { ...asked, testId: elsewhere })).rejects.toThrow(/another combo/);
  const stop = await stopTest(book, testId);
  await expect(begin(1, "A")).rejects.toThrow(/rig test has ended/);
  await undoChange(book, stop);
  await endSession(book, { sessionId });
  await expect(begin(1, "A")).rejects.toThrow(/session has ended/);
  expect((await runs()).filter(({ rigTest }) => rigTest)).toEqual([]);
});

test("a run is void with the reason, and counts again when that is taken back", async () => {
  const { book, runId, testId, begin, lapIn, runs } = await aTestEvening();
  await expect(voidTestRun(book, { runId, reason: "a dog" })).rejects.toThrow(/of no rig test/);
  await lapIn((await begin(1, "B")).runId);
  const place = { id: testId, pair: 1, side: "B" };
  const change = await voidTestRun(book, { runId, reason: " the dog barked " });
  expect((await runs())[0]?.rigTest).toEqual({ ...place, void: "the dog barked" });
  await expect(voidTestRun(book, { runId, reason: " " })).rejects.toThrow(/say why/);
  await undoChange(book, change);
  expect((await runs())[0]?.rigTest).toEqual(place);
  await voidTestRun(book, { runId, reason: "the phone" });
  await voidTestRun(book, { runId, reason: undefined });
  expect((await runs())[0]?.rigTest).toEqual(place);
});

test("a run voided while it is driven ends in the same write, and one without laps becomes practice", async () => {
  const { book, clock, testId, begin, lapIn, runs } = await aTestEvening();
  const { runId } = await begin(1, "B");
  await voidTestRun(book, { runId, reason: "the phone" });
  expect((await runs())[0]).not.toHaveProperty("rigTest");
  expect((await runs())[0]).not.toHaveProperty("endedAt");
  await begin(1, "B");
  await lapIn(runId);
  const change = await voidTestRun(book, { runId, reason: "the phone" });
  expect((await runs())[0]).toMatchObject({
    endedAt: clock.now(),
    rigTest: { id: testId, pair: 1, side: "B", void: "the phone" },
  });
  await undoChange(book, change);
  expect((await runs())[0]).not.toHaveProperty("endedAt");
  expect((await runs())[0]?.rigTest).not.toHaveProperty("void");
});

test("a test that is stopped has its end, a run begun for it without laps is let go, one with laps stays", async () => {
  const { book, clock, testId, begin, lapIn, runs, theTest } = await aTestEvening();
  await lapIn((await begin(1, "B")).runId);
  await begin(1, "A");
  const change = await stopTest(book, testId);
  expect((await theTest()).endedAt).toBe(clock.now());
  expect((await runs()).map(({ rigTest }) => rigTest?.side)).toEqual(["B", undefined]);
  await undoChange(book, change);
  expect(await theTest()).not.toHaveProperty("endedAt");
  expect((await runs()).map(({ rigTest }) => rigTest?.side)).toEqual(["B", "A"]);
});

test("the setting kept ends the test, and a record of it begins in the same write", async () => {
  const { book, testId, rigId, theTest } = await aTestEvening();
  const id = book.newId();
  const rig = { ...aRecord("2026-03-10", "less gain"), wheel: { gainPercent: 54 }, id };
  const change = await keepSetting(book, { testId, side: "B", rig });
  expect(await theTest()).toMatchObject({ kept: "B", rigB: id, endedAt: expect.any(Number) });
  expect((await rigs(book)).map((one) => one.id)).toEqual([rigId, id]);
  await keepSetting(book, { testId, side: "B", rig });
  expect(await rigs(book), "trying again makes no second record").toHaveLength(2);
  await undoChange(book, change);
  expect(await theTest()).not.toHaveProperty("kept");
  expect((await rigs(book)).map((one) => one.id)).toEqual([rigId]);
});

test("keeping what is in force adds no record and leaves the end as it was", async () => {
  const { book, clock, testId, theTest } = await aTestEvening();
  await stopTest(book, testId);
  const { endedAt } = await theTest();
  clock.pass(1000);
  await keepSetting(book, { testId, side: "A" });
  expect(await theTest()).toMatchObject({ kept: "A", endedAt });
  expect(await theTest()).not.toHaveProperty("rigA");
  expect(await rigs(book)).toHaveLength(1);
});

test("the runs of a test are found by what they say and by what an old row says, without deleted ones", async () => {
  const { book, runId, begin, lapIn, theTest } = await aTestEvening();
  await lapIn(runId);
  const { runId: own } = await begin(1, "B");
  const found = async (row: RigTest) => (await runsOfTest(book, row)).map(({ id }) => id);
  expect(await found(await theTest())).toEqual([own]);
  expect(await found({ ...(await theTest()), pairs: [{ first: "A", runA: runId, runB: "gone" }] })).toEqual([
    runId,
    own,
  ]);
  await deleteRun(book, { runId: own });
  expect(await found(await theTest())).toEqual([]);
});

test("a test that is deleted lets its runs go, and undo brings it back with them", async () => {
  const { book, comboId, testId, begin, lapIn, runs, theTest } = await aTestEvening();
  const { id: otherTest } = await addRigTest(book, aPlan(comboId));
  const { runId: first } = await begin(1, "B");
  await lapIn(first);
  await lapIn((await begin(1, "A")).runId);
  await voidTestRun(book, { runId: first, reason: "interrupted" });
  const before = await runs();
  const change = await deleteRigTest(book, testId);
  expect((await rigTests(book)).map(({ id }) => id)).toEqual([otherTest]);
  expect((await runs()).map((run) => "rigTest" in run)).toEqual([false, false]);
  expect((await runs()).map(({ laps }) => laps)).toEqual(before.map(({ laps }) => laps));
  await undoChange(book, change);
  expect((await theTest()).id).toBe(testId);
  expect((await runs()).map(({ rigTest }) => rigTest)).toEqual([
    { id: testId, pair: 1, side: "B", void: "interrupted" },
    { id: testId, pair: 1, side: "A" },
  ]);
});

test("one run is taken out of its test, the others stay", async () => {
  const { book, begin, lapIn, runs } = await aTestEvening();
  const { runId } = await begin(1, "B");
  await lapIn(runId);
  await begin(1, "A");
  const change = await leaveTest(book, runId);
  expect(change.what).toBe("Run 1 taken out of the rig test");
  expect((await runs()).map(({ rigTest }) => rigTest?.side)).toEqual([undefined, "A"]);
  await undoChange(book, change);
  expect((await runs()).map(({ rigTest }) => rigTest?.side)).toEqual(["B", "A"]);
});

test("a run that goes to another combo leaves its test, alone or with its session; on the same combo it stays in it", async () => {
  const { book, comboId, sessionId, begin, lapIn, runs } = await aTestEvening();
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  await lapIn((await begin(1, "B")).runId);
  const { runId: second } = await begin(1, "A");
  await lapIn(second);
  const moved = await moveRunToCombo(book, { runId: second, comboId: other });
  expect((await runsOfSession(book, moved.sessionId))[0]).not.toHaveProperty("rigTest");
  await undoChange(book, moved);
  expect((await runs()).map(({ rigTest }) => rigTest?.side)).toEqual(["B", "A"]);
  const whole = await moveSessionToCombo(book, { sessionId, comboId: other });
  expect((await runs()).map((run) => [run.comboId, run.rigTest])).toEqual([
    [other, undefined],
    [other, undefined],
  ]);
  await undoChange(book, whole);
  expect((await runs()).map((run) => [run.comboId, run.rigTest?.side])).toEqual([
    [comboId, "B"],
    [comboId, "A"],
  ]);
  await endSession(book, { sessionId });
  const { sessionId: later } = await startSession(book, {
    comboId,
    date: "2026-03-11",
    zone: "UTC",
  });
  await moveRunToSession(book, { runId: second, sessionId: later });
  expect((await runsOfSession(book, later)).at(-1)?.rigTest?.side).toBe("A");
});
