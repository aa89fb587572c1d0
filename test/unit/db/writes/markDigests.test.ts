import "fake-indexeddb/auto";

import { afterEach, expect, test } from "vitest";
import {
  addCombo,
  addLap,
  deleteSession,
  digestsOfCombo,
  editRun,
  editSession,
  endSession,
  type Logbook,
  moveRunToCombo,
  moveSessionToCombo,
  readDigests,
  reopenSession,
  runOf,
  type SessionPatch,
  undoChange,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";
import { failReadsOf } from "../../../support/unreadableRows.ts";

let mend: (() => void) | undefined;
afterEach(() => mend?.());

const maker = {
  methodVersion: "1",
  make: () => ({ laps: 0 }),
  isWhole: (digest: unknown): digest is { laps: number } => digest !== undefined,
  bestKeyOf: () => undefined,
};

/** An ended session whose figures are kept, and whether they still are. */
async function kept() {
  const open = await anOpenSession();
  const { book, comboId, sessionId } = open;
  await endSession(book, { sessionId });
  await digestsOfCombo(book, comboId, maker);
  const isStale = async (of = comboId) => (await readDigests(book, of, maker)).map(({ isNew }) => isNew);
  return { ...open, isStale };
}

test("the figures of an evening are stale once its target is another one", async () => {
  for (const patch of [{ targetMs: 82_000 }, { focus: "kerbs" }] as const) {
    const { book, sessionId, isStale } = await kept();
    expect(await isStale()).toEqual([false]);
    await editSession(book, { sessionId, patch });
    expect(await isStale(), Object.keys(patch)[0]).toEqual([true]);
  }
});

test("a note, a plan or the conditions make no figure stale", async () => {
  const patches: SessionPatch[] = [
    { note: "late" },
    { plan: [{ purpose: "warm up" }] },
    { conditions: "windy" },
  ];
  for (const patch of patches) {
    const { book, sessionId, isStale } = await kept();
    await editSession(book, { sessionId, patch });
    expect(await isStale(), Object.keys(patch)[0]).toEqual([false]);
  }
});

test("a run's kind and a lap make the figures of its session stale, and of no other", async () => {
  const { book, runId, comboId, isStale } = await kept();
  await editRun(book, { runId, patch: { kind: "drill" } });
  expect(await isStale()).toEqual([true]);
  await digestsOfCombo(book, comboId, maker);
  expect(await isStale()).toEqual([false]);
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  expect(await isStale()).toEqual([true]);
});

test("a run that goes to another session makes the figures of both stale", async () => {
  const { book, runId, comboId, isStale } = await kept();
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const move = await moveRunToCombo(book, { runId, comboId: other });
  expect([await isStale(), await isStale(other)]).toEqual([[true], [true]]);
  await digestsOfCombo(book, comboId, maker);
  await undoChange(book, move);
  expect([await isStale(), await isStale(other)]).toEqual([[true], []]);
});

const digestOf = async (book: Logbook, sessionId: string) => book.digests.get(sessionId);

test("what waits for figures is known by its combo, and whether it is open, whatever the clock says", async () => {
  const { book, clock, comboId, sessionId } = await anOpenSession();
  const begun = clock.now();
  expect(await digestOf(book, sessionId)).toEqual({
    sessionId,
    comboId,
    startedAt: begun,
    changedAt: expect.any(Number),
    openSince: begun,
  });
  clock.pass(-3_600_000);
  const before = (await digestOf(book, sessionId))?.changedAt ?? 0;
  await endSession(book, { sessionId });
  expect(await digestOf(book, sessionId)).toEqual({
    sessionId,
    comboId,
    startedAt: begun,
    changedAt: before + 1,
    staleSince: before + 1,
  });
  clock.pass(7_200_000);
  await reopenSession(book, { sessionId });
  expect(await digestOf(book, sessionId)).toMatchObject({ changedAt: clock.now(), openSince: begun });
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  await moveSessionToCombo(book, { sessionId, comboId: other });
  expect(await digestOf(book, sessionId)).toMatchObject({ comboId: other });
  await deleteSession(book, { sessionId });
  expect(await digestOf(book, sessionId)).toBeUndefined();
});

test("a lap is stored though the figures of its session cannot be read, and these are made anew", async () => {
  const { book, clock, runId, sessionId } = await anOpenSession();
  clock.pass(60_000);
  mend = failReadsOf([{ table: "digests", id: sessionId }]);
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  mend();
  expect((await runOf(book, runId))?.laps).toHaveLength(1);
  expect(await digestOf(book, sessionId)).toMatchObject({ sessionId, changedAt: clock.now() });
});
