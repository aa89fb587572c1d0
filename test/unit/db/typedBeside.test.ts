import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addLap,
  addRig,
  addRun,
  checkRows,
  deleteLap,
  dump,
  editLap,
  setTarget,
  startSession,
  typedBeside,
} from "#db";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";

test("nothing typed is nothing, whatever the logbook came with", async () => {
  const { book } = await aFullLogbook();
  const came = await dump(book);
  const { part, laps, others, changed } = typedBeside(came, came);
  expect([laps.size, others, changed]).toEqual([0, 0, 0]);
  expect(part.sessions).toEqual([]);
});

test("a lap typed into a run that came with it goes with its session and combo, without the run's own laps", async () => {
  const { book, clock, runId, sessionId } = await aFullLogbook();
  const came = await dump(book);
  clock.pass(60_000);
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83_100) });
  const { part, laps, others, changed } = typedBeside(await dump(book), came);
  expect([...laps]).toEqual([[sessionId, 1]]);
  expect([others, changed]).toEqual([0, 0]);
  expect(part.runs.flatMap((run) => run.laps.map((lap) => lap.id))).toEqual([id]);
  expect(part.combos).toHaveLength(1);
  expect(checkRows(part).bad).toEqual([]);
});

test("a session typed on a combo that came with it leaves the rig settings of others behind", async () => {
  const { book, clock, comboId } = await aFullLogbook();
  const came = await dump(book);
  clock.pass(86_400_000);
  const rigId = came.rigs[0]?.id ?? "";
  const on = { comboId, date: "2026-03-11", zone: "Europe/Berlin", run: { rigId } } as const;
  const { runId, sessionId } = await startSession(book, on);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_100) });
  const { part, laps } = typedBeside(await dump(book), came);
  expect([...laps]).toEqual([[sessionId, 1]]);
  expect(part.sessions.map(({ id }) => id)).toEqual([sessionId]);
  expect(part.rigs).toEqual([]);
  expect(part.runs.map((run) => run.rigId)).toEqual([undefined]);
  expect(checkRows(part).bad).toEqual([]);
});

test("rig settings and targets typed go along and are counted; runs only begun and laps deleted again do not", async () => {
  const { book, clock, comboId, runId, sessionId } = await aFullLogbook();
  const came = await dump(book);
  clock.pass(60_000);
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83_100) });
  await deleteLap(book, { runId, lapId: id });
  await addRun(book, { sessionId });
  const tried = typedBeside(await dump(book), came);
  expect([tried.laps.size, tried.others, tried.part.runs.length]).toEqual([0, 0, 0]);

  const [rig] = came.rigs;
  if (rig === undefined) throw new Error("The full logbook has rig settings.");
  const { id: _, createdAt: __, updatedAt: ___, ...fields } = rig;
  await addRig(book, { ...fields, from: "2026-03-12" });
  const [target] = came.targets;
  if (target === undefined) throw new Error("The full logbook has a target.");
  const { id: _4, createdAt: _5, updatedAt: _6, ...wanted } = target;
  await setTarget(book, { ...wanted, comboId });
  const { part, others } = typedBeside(await dump(book), came);
  expect(others).toBe(2);
  expect([part.rigs.length, part.targets.length]).toEqual([1, 1]);
});

test("what came with it and was changed is told, and stays", async () => {
  const { book, clock, runId } = await aFullLogbook();
  const came = await dump(book);
  clock.pass(60_000);
  const lapId = came.runs.find(({ id }) => id === runId)?.laps.find((lap) => lap.deletedAt === undefined)?.id;
  await editLap(book, { runId, lapId: lapId ?? "", patch: { note: "late" } });
  const { part, laps, changed } = typedBeside(await dump(book), came);
  expect([laps.size, changed, part.runs.length]).toEqual([0, 1, 0]);
});
