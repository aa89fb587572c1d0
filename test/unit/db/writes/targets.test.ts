import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCornerReview,
  addReference,
  addRig,
  addRigTest,
  archiveTarget,
  cornerReviewsOfCombo,
  deleteReference,
  deleteRig,
  deleteTarget,
  editCornerReview,
  editReference,
  editRig,
  editRigTest,
  editTarget,
  keepForecasts,
  referencesOfCombo,
  renewTarget,
  rigTests,
  setPreferences,
  setTarget,
  setTargetsAhead,
  targetsOfCombo,
} from "#db";
import { anOpenSession } from "../../../support/aLogbook.ts";

const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };

test("targets set by a clock ahead count from now on, and those it set rightly stay as they are", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const now = clock.now();
  const set = (value: number, setAt: number) =>
    setTarget(book, { comboId, kind: "best", value, setOn: "2036-03-10", setAt });
  await set(82_000, now + 1);
  await set(81_000, now);
  await set(80_000, now + 2);
  const { id: gone } = await set(79_000, now + 9);
  await deleteTarget(book, gone);
  clock.pass(60_000);
  const change = await setTargetsAhead(book, { upTo: now + 1, on: "2026-03-11" });
  expect(change.what).toBe("Target dated right");
  const setAts = async () =>
    (await targetsOfCombo(book, comboId)).map(({ value, setAt, setOn }) => [value, setAt, setOn]);
  expect(await setAts()).toEqual([
    [81_000, now, "2036-03-10"],
    [82_000, now + 1, "2036-03-10"],
    [80_000, clock.now(), "2026-03-11"],
  ]);
  expect((await book.tables.targets.get(gone))?.setOn).toBe("2036-03-10");
  expect((await setTargetsAhead(book, { upTo: now - 1, on: "2026-03-12" })).what).toBe(
    "3 targets dated right",
  );
});

test("a missed target is set anew as it was, once, from today's figure, and goes into the archive", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const written = { process: "brake later", why: "the race", note: "new tyres" } as const;
  const missed = { comboId, kind: "meanOf", laps: 5, value: 82_000, ...written } as const;
  const { id } = await setTarget(book, { ...missed, setOn: "2026-02-01", by: "2026-03-01", start: 84_000 });
  clock.pass(60_000);
  const newId = book.newId();
  const renewal = { id, newId, by: "2026-04-10", setOn: "2026-03-11", start: 83_000 };
  expect((await renewTarget(book, renewal)).what).toBe("Target set anew");
  await renewTarget(book, renewal);
  const rows = await targetsOfCombo(book, comboId);
  expect(rows).toHaveLength(2);
  const { archivedAt, ...old } = rows.find((row) => row.id === id) ?? {};
  expect(old).toMatchObject({ ...missed, by: "2026-03-01", start: 84_000 });
  expect(archivedAt).toBe(clock.now());
  const fresh = rows.find((row) => row.id === newId);
  expect(fresh).toMatchObject({ ...missed, by: "2026-04-10", setOn: "2026-03-11", start: 83_000 });
  expect(fresh?.setAt).toBe(clock.now());
  expect(fresh).not.toHaveProperty("archivedAt");
});

test("what was wanted before stays in a target's history, but for a slip put right on the day", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const set = { comboId, kind: "best", value: 82_000, setOn: "2026-03-10", by: "2026-04-01" } as const;
  const { id } = await setTarget(book, set);
  const row = async () => (await targetsOfCombo(book, comboId))[0];
  await editTarget(book, { id, patch: { value: 82_500 }, on: "2026-03-10" });
  expect(await row()).not.toHaveProperty("earlier");
  await editTarget(book, { id, patch: { process: "brake later" }, on: "2026-03-20" });
  expect(await row()).not.toHaveProperty("earlier");
  clock.set(Date.UTC(2026, 2, 20, 18));
  await editTarget(book, { id, patch: { value: 82_200 }, on: "2026-03-20" });
  await editTarget(book, { id, patch: { value: 82_100 }, on: "2026-03-20" });
  const first = { kind: "best", value: 82_500, by: "2026-04-01", untilDay: "2026-03-20", until: clock.now() };
  expect((await row())?.earlier).toEqual([first]);
  clock.set(Date.UTC(2026, 2, 25, 18));
  const change = await editTarget(book, {
    ...{ id, on: "2026-03-25" },
    patch: { kind: "meanOf", laps: 5, by: undefined },
  });
  expect((await row())?.earlier).toEqual([
    first,
    { kind: "best", value: 82_100, by: "2026-04-01", untilDay: "2026-03-25", until: clock.now() },
  ]);
  expect(change.edits).toHaveLength(1);
});

test("what was done to a target, a reference lap, a rig record or a test is said in its words", async () => {
  const { book, comboId, sessionId } = await anOpenSession();
  const target = await setTarget(book, { comboId, kind: "best", value: 82_000, setOn: "2026-03-10" });
  const asked = { question: "Is far better?", rigA: book.newId(), rigB: book.newId(), pairs: [] };
  const rigTest = await addRigTest(book, { comboId, ...asked, pairsPlanned: 6, level: 0.9, seed: 7 });
  const reference = await addReference(book, { comboId, ms: 82_000, decimals: 3, source: "a friend" });
  const record = await addRig(book, { ...rig, from: "2026-03-01" });
  const review = await addCornerReview(book, { comboId, sessionId, on: "2026-03-10", corners: [] });
  const said = [
    target,
    await editTarget(book, { id: target.id, patch: { value: 81_000 }, on: "2026-03-10" }),
    await archiveTarget(book, { id: target.id }),
    await archiveTarget(book, { id: target.id, isArchived: false }),
    await deleteTarget(book, target.id),
    rigTest,
    await editRigTest(book, { id: rigTest.id, patch: { endedAt: 5 } }),
    reference,
    await editReference(book, { id: reference.id, patch: { ms: 81_000 } }),
    await deleteReference(book, reference.id),
    await editRig(book, { id: record.id, patch: { name: "near" } }),
    await deleteRig(book, record.id),
    review,
    await editCornerReview(book, { id: review.id, patch: { corners: [{ number: 5 }] } }),
    await setPreferences(book, { settlingLaps: 1 }),
  ].map(({ what }) => what);
  expect(said).toEqual([
    "Target added",
    "Target changed",
    "Target archived",
    "Target taken out of the archive",
    "Target deleted",
    "Rig test added",
    "Rig test changed",
    "Reference lap added",
    "Reference lap changed",
    "Reference lap deleted",
    "Rig settings changed",
    "Rig settings deleted",
    "Corner review added",
    "Corner review changed",
    "Preferences changed",
  ]);
  expect((await rigTests(book)).map(({ endedAt }) => endedAt)).toEqual([5]);
  expect((await cornerReviewsOfCombo(book, comboId))[0]?.corners).toEqual([{ number: 5 }]);
});

test("what cannot be stored says of what it was, each by its own name", async () => {
  const { book, comboId, sessionId } = await anOpenSession();
  const closed = { ...book, status: { ...book.status, get: () => ({ kind: "gone" }) as const } };
  const id = book.newId();
  const asked = { question: "?", rigA: id, rigB: id, pairs: [], pairsPlanned: 6, level: 0.9, seed: 7 };
  const said: [Promise<unknown>, string][] = [
    [setTarget(closed, { comboId, kind: "best", value: 1, setOn: "2026-03-10" }), "Target not stored"],
    [editTarget(closed, { id, patch: {}, on: "2026-03-10" }), "Target not changed"],
    [archiveTarget(closed, { id }), "Target not archived"],
    [renewTarget(closed, { id, newId: id, by: "2026-04-10", setOn: "2026-03-10" }), "Target not set anew"],
    [setTargetsAhead(closed, { upTo: 1, on: "2026-03-10" }), "Targets not dated right"],
    [deleteTarget(closed, id), "Target not deleted"],
    [keepForecasts(closed, { make: [], score: [], on: "2026-03-10" }), "Forecasts not kept"],
    [addReference(closed, { comboId, ms: 1, decimals: 3, source: "" }), "Reference lap not stored"],
    [deleteRig(closed, id), "Rig settings not deleted"],
    [addRigTest(closed, { comboId, ...asked }), "Rig test not stored"],
    [
      addCornerReview(closed, { comboId, sessionId, on: "2026-03-10", corners: [] }),
      "Corner review not stored",
    ],
    [setPreferences(closed, {}), "Preferences not changed"],
  ];
  for (const [write, what] of said)
    await expect(write).rejects.toMatchObject({
      message: `${what}: the stored logbook has disappeared from this browser. Restore a backup.`,
    });
});

test("a target in the archive bears the instant it went there", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const { id } = await setTarget(book, { comboId, kind: "best", value: 82_000, setOn: "2026-03-10" });
  clock.pass(60_000);
  await archiveTarget(book, { id });
  expect((await targetsOfCombo(book, comboId))[0]?.archivedAt).toBe(clock.now());
  await archiveTarget(book, { id, isArchived: false });
  expect((await targetsOfCombo(book, comboId))[0]).not.toHaveProperty("archivedAt");
});

test("a reference lap stored already is told with its id, and nothing else is done for it", async () => {
  const { book, comboId } = await anOpenSession();
  const row = { id: book.newId(), comboId, ms: 82_000, decimals: 3, source: "a friend" };
  expect(await addReference(book, row)).toMatchObject({ id: row.id, what: "Reference lap added" });
  expect(await addReference(book, { ...row, ms: 1 })).toEqual({
    what: "Reference lap already stored",
    edits: [],
    id: row.id,
  });
  expect((await referencesOfCombo(book, comboId)).map(({ ms }) => ms)).toEqual([82_000]);
});
