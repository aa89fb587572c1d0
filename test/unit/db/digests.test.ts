import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRun,
  type DigestMaker,
  deleteSession,
  digestsOfCombo,
  editSession,
  endSession,
  fastestSession,
  freshenDigests,
  markOfCombo,
  readDigests,
  startSession,
  undoChange,
} from "#db";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";

interface Times {
  readonly version: number;
  readonly times: Int32Array;
}

function aMaker(version = 1) {
  const made: string[] = [];
  const maker: DigestMaker<Times> = {
    make: (session, runs) => {
      made.push(session.id);
      const laps = runs.flatMap((run) => run.laps).filter(({ deletedAt }) => deletedAt === undefined);
      return { version, times: Int32Array.from(laps, ({ ms }) => ms ?? -1) };
    },
    methodVersion: String(version),
    isWhole: (digest): digest is Times => (digest as Times).times instanceof Int32Array,
    bestKeyOf: ({ times }) => (times.length === 0 ? undefined : Math.min(...times)),
  };
  return { made, maker };
}

test("figures are made once, kept, and made again when a lap is added", async () => {
  const { book, runId, comboId, sessionId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  const { made, maker } = aMaker();
  await digestsOfCombo(book, comboId, maker);
  const [again] = await digestsOfCombo(book, comboId, maker);
  expect(made).toEqual([sessionId]);
  expect(again?.digest.times).toEqual(Int32Array.from([83000]));
  await addLap(book, { runId, id: book.newId(), lap: aLap(83100) });
  const [renewed] = await digestsOfCombo(book, comboId, maker);
  expect(renewed?.digest.times).toEqual(Int32Array.from([83000, 83100]));
  expect(made).toHaveLength(2);
});

test("figures made by another method are stale", async () => {
  const { book, comboId } = await anOpenSession();
  await digestsOfCombo(book, comboId, aMaker(1).maker);
  const { made, maker } = aMaker(2);
  await digestsOfCombo(book, comboId, maker);
  expect(made).toHaveLength(1);
});

test("reading without keeping stores nothing", async () => {
  const { book, comboId } = await anOpenSession();
  const { made, maker } = aMaker();
  await readDigests(book, comboId, maker);
  await readDigests(book, comboId, maker);
  expect(made).toHaveLength(2);
});

test("figures are not kept when a lap came in while they were made", async () => {
  const { book, runId, comboId } = await anOpenSession();
  const { maker } = aMaker();
  let added: Promise<unknown> = Promise.resolve();
  const slow: DigestMaker<Times> = {
    ...maker,
    make: (session, runs) => {
      added = addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
      return maker.make(session, runs);
    },
  };
  await digestsOfCombo(book, comboId, slow);
  await added;
  const [after] = await readDigests(book, comboId, maker);
  expect(after?.isNew).toBe(true);
  expect(after?.digest.times).toEqual(Int32Array.from([83000]));
});

test("the mark of a combo moves with every change of its laps, also when the clock went back", async () => {
  const { book, runId, comboId, clock, sessionId } = await anOpenSession();
  const marks = [await markOfCombo(book, comboId)];
  const see = async () => marks.push(await markOfCombo(book, comboId));
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  await see();
  clock.pass(-3_600_000);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  await see();
  await addRun(book, { sessionId });
  await see();
  const gone = await deleteSession(book, { sessionId });
  await see();
  await undoChange(book, gone);
  await see();
  await editSession(book, { sessionId, patch: { note: "brake earlier" } });
  await see();
  expect(new Set(marks).size).toBe(marks.length);
});

test("the fastest session of a page is found, whether its figures are kept or yet to be made", async () => {
  const { book, runId, comboId, sessionId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83500) });
  const other = await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  await addLap(book, { runId: other.runId, id: book.newId(), lap: aLap(83000) });
  const { maker, made } = aMaker();
  const span = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
  const fastest = async (except?: string) =>
    (await fastestSession(book, { comboId, span, ...(except ? { except } : {}) }, maker))?.sessionId;
  expect(await fastest()).toBe(other.sessionId);
  expect(await freshenDigests(book, maker), "an open session is read as it stands").toBe(0);
  await endSession(book, { sessionId });
  await endSession(book, { sessionId: other.sessionId });
  expect(await fastest()).toBe(other.sessionId);
  expect(await freshenDigests(book, maker)).toBe(2);
  expect(await freshenDigests(book, maker)).toBe(0);
  made.length = 0;
  expect(await fastest()).toBe(other.sessionId);
  expect(await fastest(other.sessionId)).toBe(sessionId);
  expect(made).toEqual([]);
  const later = { from: Date.UTC(2027, 0, 1), to: Number.POSITIVE_INFINITY };
  expect(await fastestSession(book, { comboId, span: later }, maker)).toBeUndefined();
});

test("figures that hold what cannot be used are made again and kept", async () => {
  const { book, comboId, sessionId } = await anOpenSession();
  const { made, maker } = aMaker();
  await digestsOfCombo(book, comboId, maker);
  await book.database.table("digests").update(sessionId, { digest: { version: 1, times: null } });
  const [again] = await digestsOfCombo(book, comboId, maker);
  expect(again?.digest.times).toEqual(Int32Array.from([]));
  await digestsOfCombo(book, comboId, maker);
  expect(made).toHaveLength(2);
});
