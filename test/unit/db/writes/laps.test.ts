import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addLaps,
  addRun,
  combosWithNames,
  deleteLap,
  editLap,
  moveLaps,
  runOf,
  setNotBest,
  splitSession,
  undoChange,
} from "#db";
import { lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

type Opened = Awaited<ReturnType<typeof anOpenSession>>;
const timesOf = async ({ book }: Opened, runId: string) => {
  const run = await runOf(book, runId);
  return run && lapsInOrder(run).map(({ ms }) => ms);
};

test("a lap is stored behind the last one, with stamps and id as given", async () => {
  const open = await anOpenSession();
  const { book, runId, clock } = open;
  const first = await addLap(book, { runId, id: book.newId(), lap: aLap(83456) });
  expect(first.what).toBe("Lap 1 added");
  clock.pass(90_000);
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83900, { remarks: [{ kind: "off", corner: 5 }] }) });
  const run = await runOf(book, runId);
  expect(run?.laps[1]).toEqual({
    id,
    n: 2,
    ms: 83900,
    decimals: 3,
    source: "typed",
    remarks: [{ kind: "off", corner: 5 }],
    createdAt: clock.now(),
    updatedAt: clock.now(),
  });
});

test("Enter pressed twice, or tried again after a crash, makes one lap", async () => {
  const open = await anOpenSession();
  const { book, runId, sessionId } = open;
  const id = book.newId();
  await Promise.all([
    addLap(book, { runId, id, lap: aLap(83456) }),
    addLap(book, { runId, id, lap: aLap(83456) }),
  ]);
  const other = await addRun(book, { sessionId });
  const again = await addLap(book, { runId: other.runId, id, lap: aLap(83456) });
  expect(again.edits).toEqual([]);
  expect(await timesOf(open, runId)).toEqual([83456]);
  expect(await timesOf(open, other.runId)).toEqual([]);
});

test("ten laps typed at once are numbered in the order typed", async () => {
  const open = await anOpenSession();
  const { book, runId } = open;
  const times = Array.from({ length: 10 }, (_, index) => 83_000 + index);
  await Promise.all(times.map((ms) => addLap(book, { runId, id: book.newId(), lap: aLap(ms) })));
  expect(await timesOf(open, runId)).toEqual(times);
});

test("laps keep their order when the clock goes back a month between two of them", async () => {
  const open = await anOpenSession();
  const { book, runId, clock } = open;
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  clock.set(Date.UTC(2026, 1, 10, 18));
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83001) });
  expect(await timesOf(open, runId)).toEqual([83000, 83001]);
  const before = (await runOf(book, runId))?.laps[0];
  await editLap(book, { runId, lapId: before?.id ?? "", patch: { ms: 82000, decimals: 3 } });
  const after = (await runOf(book, runId))?.laps[0];
  expect(after?.updatedAt).toBe((before?.updatedAt ?? 0) + 1);
});

test("pasted laps are added together and undone together", async () => {
  const open = await anOpenSession();
  const { book, runId } = open;
  const laps = [83000, 83100, 83200].map((ms) => ({ id: book.newId(), lap: aLap(ms) }));
  const change = await addLaps(book, { runId, laps });
  expect(change.what).toBe("3 laps added");
  await undoChange(book, change);
  expect(await timesOf(open, runId)).toEqual([]);
});

test("two tabs editing different fields of a lap both keep theirs, and the same field is said", async () => {
  const open = await anOpenSession();
  const { book, runId } = open;
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83456) });
  const seen = (await runOf(book, runId))?.laps[0];
  if (seen === undefined) throw new Error("no lap");
  await editLap(book, { runId, lapId: id, patch: { note: "late apex" }, expected: seen });
  const other = await editLap(book, { runId, lapId: id, patch: { ms: 83400 }, expected: seen });
  expect(other.overwrote).toBeUndefined();
  const third = await editLap(book, { runId, lapId: id, patch: { ms: 83300 }, expected: seen });
  expect(third.overwrote).toEqual(["ms"]);
  expect(third.what).toBe("Lap 1 changed; it had been changed elsewhere meanwhile");
  expect((await runOf(book, runId))?.laps[0]).toMatchObject({ ms: 83300, note: "late apex" });
});

test("a field given as undefined is removed", async () => {
  const { book, runId } = await anOpenSession();
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83456, { note: "x" }) });
  await editLap(book, { runId, lapId: id, patch: { note: undefined } });
  expect(Object.keys((await runOf(book, runId))?.laps[0] ?? {})).not.toContain("note");
  await setNotBest(book, { runId, lapId: id, isNotBest: true });
  expect((await runOf(book, runId))?.laps[0]?.isNotBest).toBe(true);
  await setNotBest(book, { runId, lapId: id, isNotBest: false });
  expect(Object.keys((await runOf(book, runId))?.laps[0] ?? {})).not.toContain("isNotBest");
});

test("moved laps belong to the other run only, and undo brings them back to their places", async () => {
  const open = await anOpenSession();
  const { book, runId, sessionId } = open;
  const ids = [book.newId(), book.newId(), book.newId()];
  for (const [index, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(83_000 + index) });
  const change = await moveLaps(book, { from: runId, lapIds: ids.slice(1), to: { newRunIn: sessionId } });
  expect(change.what).toBe("2 laps moved");
  expect(await timesOf(open, runId)).toEqual([83000]);
  expect(await timesOf(open, change.runId)).toEqual([83001, 83002]);
  await editLap(book, { runId: change.runId, lapId: ids[1] ?? "", patch: { note: "kept" } });
  const undone = await undoChange(book, change);
  expect(undone.skipped).toEqual([]);
  expect(await timesOf(open, runId)).toEqual([83000, 83001, 83002]);
  expect(await runOf(book, change.runId)).toBeUndefined();
  expect((await runOf(book, runId))?.laps.find(({ id }) => id === ids[1])?.note).toBe("kept");
  await undoChange(book, undone);
  expect(await timesOf(open, change.runId)).toEqual([83001, 83002]);
});

test("laps can be moved between two laps of another run", async () => {
  const open = await anOpenSession();
  const { book, runId, sessionId } = open;
  const ids = [book.newId(), book.newId()];
  for (const [index, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(83_000 + index) });
  const { runId: second } = await addRun(book, { sessionId });
  const moving = [book.newId(), book.newId()];
  for (const [index, id] of moving.entries())
    await addLap(book, { runId: second, id, lap: aLap(90_000 + index) });
  await moveLaps(book, { from: second, lapIds: moving, to: { runId, afterLapId: ids[0] ?? "" } });
  expect(await timesOf(open, runId)).toEqual([83000, 90000, 90001, 83001]);
});

test("deleting a lap says which, and undo leaves what was altered since", async () => {
  const open = await anOpenSession();
  const { book, runId } = open;
  const ids = [book.newId(), book.newId()];
  for (const [index, id] of ids.entries()) await addLap(book, { runId, id, lap: aLap(83_000 + index) });
  const change = await deleteLap(book, { runId, lapId: ids[1] ?? "" });
  expect(change.what).toBe("Lap 2 deleted");
  const edit = await editLap(book, { runId, lapId: ids[0] ?? "", patch: { ms: 82_000, note: "a" } });
  await editLap(book, { runId, lapId: ids[0] ?? "", patch: { ms: 81_000 } });
  const undone = await undoChange(book, edit);
  expect(undone.skipped).toEqual(["a lap has been changed again since"]);
  expect((await runOf(book, runId))?.laps[0]).toMatchObject({ ms: 81_000 });
  expect((await runOf(book, runId))?.laps[0]?.note).toBeUndefined();
  const back = await undoChange(book, change);
  expect(back.what).toBe("Undone: Lap 2 deleted");
  expect(await timesOf(open, runId)).toEqual([81_000, 83_001]);
  expect((await undoChange(book, back)).what).toBe("Done again: Lap 2 deleted");
  expect(await timesOf(open, runId)).toEqual([81_000]);
});

test("a lap deleted in another tab is not edited, and the driver is told", async () => {
  const { book, runId } = await anOpenSession();
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83456) });
  await deleteLap(book, { runId, lapId: id });
  await expect(editLap(book, { runId, lapId: id, patch: { ms: 1 } })).rejects.toMatchObject({
    code: "missing",
    message: expect.stringContaining("no longer there"),
  });
});

test("a session cannot be split at its first run", async () => {
  const { book, sessionId, runId } = await anOpenSession();
  await expect(splitSession(book, { sessionId, fromRunId: runId })).rejects.toMatchObject({
    code: "invalid",
  });
});

test("the first lap with sectors says how many the layout has, and taking it back takes that back", async () => {
  const { book, runId } = await anOpenSession();
  const sectorsOf = async () => (await combosWithNames(book))[0]?.layout.sectors;
  const inTwo = aLap(58_520, { sectors: [27_100, 31_420] });
  const first = await addLap(book, { runId, id: book.newId(), lap: inTwo });
  expect(await sectorsOf()).toBe(2);
  const inThree = aLap(58_520, { sectors: [27_100, 20_000, 11_420] });
  await addLap(book, { runId, id: book.newId(), lap: inThree });
  expect(await sectorsOf()).toBe(2);
  await undoChange(book, first);
  expect(await sectorsOf()).toBeUndefined();
  await addLaps(book, { runId, laps: [{ id: book.newId(), lap: inThree }] });
  expect(await sectorsOf()).toBe(3);
});

test("what is done to a lap is said by its place among those that are there", async () => {
  const open = await anOpenSession();
  const { book, runId } = open;
  const ids = [book.newId(), book.newId(), book.newId()] as const;
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(84_000) });
  await deleteLap(book, { runId, lapId: ids[0] });
  expect((await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) })).what).toBe("Lap 3 added");
  expect((await setNotBest(book, { runId, lapId: ids[2], isNotBest: true })).what).toBe("Lap 2 is not a PB");
  expect((await setNotBest(book, { runId, lapId: ids[2], isNotBest: false })).what).toBe("Lap 2 may be a PB");
  expect((await editLap(book, { runId, lapId: ids[1], patch: { note: "x" } })).what).toBe("Lap 1 changed");
  expect((await deleteLap(book, { runId, lapId: ids[2] })).what).toBe("Lap 2 deleted");
});

test("a lap goes where it is sent, else behind the last place, also a deleted lap's", async () => {
  const { book, runId } = await anOpenSession();
  const ids = [book.newId(), book.newId()] as const;
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(84_000) });
  await deleteLap(book, { runId, lapId: ids[1] });
  await addLap(book, { runId, id: book.newId(), lap: aLap(85_000) });
  await addLap(book, { runId, id: book.newId(), lap: aLap(86_000, { n: 0.5 }) });
  const placed = async () =>
    lapsInOrder((await runOf(book, runId)) ?? { laps: [] }).map(({ n, ms }) => [n, ms]);
  expect(await placed()).toEqual([
    [0.5, 86_000],
    [1, 84_000],
    [3, 85_000],
  ]);
  const pasted = [87_000, 88_000].map((ms) => ({ id: book.newId(), lap: aLap(ms) }));
  await addLaps(book, { runId, laps: pasted });
  expect((await placed()).slice(3)).toEqual([
    [4, 87_000],
    [5, 88_000],
  ]);
  expect(
    (await runOf(book, runId))?.laps.map(({ n }) => n),
    "the row keeps them in order",
  ).toEqual([0.5, 1, 2, 3, 4, 5]);
});

test("laps pasted twice are there once, and nothing is said to be new", async () => {
  const open = await anOpenSession();
  const { book, runId, clock } = open;
  const laps = [83_000, 83_100].map((ms) => ({ id: book.newId(), lap: aLap(ms) }));
  expect((await addLaps(book, { runId, laps: laps.slice(0, 1) })).what).toBe("1 lap added");
  clock.pass(1000);
  const both = await addLaps(book, { runId, laps });
  expect(both.what).toBe("1 lap added");
  expect(await timesOf(open, runId)).toEqual([83_000, 83_100]);
  expect((await runOf(book, runId))?.laps.map(({ n }) => n)).toEqual([1, 2]);
  expect(await addLaps(book, { runId, laps })).toEqual({ what: "0 laps added", edits: [] });
});

test("a lap stored already is told so, also in another run of the session, and a lap of another evening is not it", async () => {
  const { book, runId, sessionId } = await anOpenSession();
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(83_456) });
  const again = { what: "Lap already stored", edits: [] };
  expect(await addLap(book, { runId, id, lap: aLap(90_000) })).toEqual(again);
  const { runId: second } = await addRun(book, { sessionId });
  expect(await addLap(book, { runId: second, id, lap: aLap(90_000) })).toEqual(again);
});

test("a lap that is changed or deleted leaves the others, and the stamps of its run, as they are", async () => {
  const { book, runId, clock } = await anOpenSession();
  const ids = [book.newId(), book.newId()] as const;
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(84_000) });
  const before = await runOf(book, runId);
  const added = clock.now();
  clock.pass(1000);
  await editLap(book, { runId, lapId: ids[0], patch: { note: "late" } });
  clock.pass(1000);
  await deleteLap(book, { runId, lapId: ids[1] });
  const after = await runOf(book, runId);
  expect([after?.updatedAt, after?.createdAt]).toEqual([before?.updatedAt, before?.createdAt]);
  expect(after?.laps).toEqual([
    { ...before?.laps[0], note: "late", updatedAt: added + 1000, had: [added] },
    { ...before?.laps[1], updatedAt: added + 2000, deletedAt: added + 2000, had: [added] },
  ]);
  for (const write of [
    deleteLap(book, { runId, lapId: ids[1] }),
    setNotBest(book, { runId, lapId: book.newId(), isNotBest: true }),
  ])
    await expect(write).rejects.toMatchObject({
      code: "missing",
      message:
        "Nothing was changed: the lap is no longer there. It may have been deleted or moved in another tab.",
    });
});

test("the layout learns its sectors from a lap that was edited too, from one of two sectors at least, and once", async () => {
  const { book, runId } = await anOpenSession();
  const sectorsOf = async () => (await combosWithNames(book))[0]?.layout.sectors;
  const id = book.newId();
  await addLap(book, { runId, id, lap: aLap(58_520, { sectors: [58_520] }) });
  await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(58_520) }] });
  expect(await sectorsOf()).toBeUndefined();
  await editLap(book, { runId, lapId: id, patch: { note: "x" } });
  expect(await sectorsOf()).toBeUndefined();
  await editLap(book, { runId, lapId: id, patch: { sectors: [27_100, 31_420] } });
  expect(await sectorsOf()).toBe(2);
  await editLap(book, { runId, lapId: id, patch: { sectors: [27_100, 20_000, 11_420] } });
  expect(await sectorsOf()).toBe(2);
});

test("of several laps the first with sectors says how many there are", async () => {
  const { book, runId } = await anOpenSession();
  const laps = [{}, { sectors: [27_100, 20_000, 11_420] }, { sectors: [27_100, 31_420] }].map((fields) => ({
    id: book.newId(),
    lap: aLap(58_520, fields),
  }));
  await addLaps(book, { runId, laps });
  expect((await combosWithNames(book))[0]?.layout.sectors).toBe(3);
});

test("two laps of one place stand in the order of their ids, whichever came first", async () => {
  const { book, runId } = await anOpenSession();
  const [first, second] = [book.newId(), book.newId()];
  await addLap(book, { runId, id: second, lap: aLap(84_000, { n: 1 }) });
  await addLap(book, { runId, id: first, lap: aLap(85_000, { n: 1 }) });
  expect((await runOf(book, runId))?.laps.map(({ id }) => id)).toEqual([first, second].toSorted());
});
