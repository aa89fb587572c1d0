import "fake-indexeddb/auto";

import { beforeEach, expect, test } from "vitest";
import {
  createLogbook,
  forgetOldCopies,
  idMaker,
  type KeptBecause,
  keepCopy,
  keptCopies,
  listLogbooks,
  noteOpened,
  openShelf,
  packOf,
  type Shelf,
} from "#db";
import { addDays } from "#domain";
import { failingStore } from "../../support/failingStore.ts";
import { fixedClock } from "../../support/fixedClock.ts";

const clock = fixedClock(Date.UTC(2026, 2, 10));
let shelf: Shelf;
let name: string;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  clock.set(Date.UTC(2026, 2, 10));
  shelf = await openShelf({ clock: clock.now, newId: idMaker(clock.now), name: `kept-${opened}` });
  ({ name } = await createLogbook(shelf, { title: "Mine" }));
});

async function keep(n: number, why: KeptBecause = "session") {
  clock.pass(1000);
  const packed = new TextEncoder().encode(`state ${n}`);
  return keepCopy(shelf, { logbook: name, title: "Mine", why, sessions: n, laps: n, packed });
}
const sessionsIn = async () => (await keptCopies(shelf, name)).map(({ sessions }) => sessions);

test("the last ten states after sessions stay, the newest first, each with its bytes", async () => {
  for (let n = 1; n <= 12; n += 1) await keep(n);
  expect(await sessionsIn()).toEqual([12, 11, 10, 9, 8, 7, 6, 5, 4, 3]);
  expect(await shelf.packs.count()).toBe(10);
  const [newest] = await keptCopies(shelf, name);
  expect(await (await packOf(shelf, newest?.id ?? "")).text()).toBe("state 12");
});

test("ten states made while the clock stood in 2036 neither hide nor push out those made since", async () => {
  clock.set(Date.UTC(2036, 2, 4));
  for (let n = 1; n <= 10; n += 1) await keep(n);
  clock.set(Date.UTC(2026, 2, 11));
  for (let n = 11; n <= 14; n += 1) await keep(n);
  expect(await sessionsIn()).toEqual([14, 13, 12, 11, 10, 9, 8, 7, 6, 5]);
  // The newest is known as such: the same state is not kept again.
  await keep(14);
  expect(await sessionsIn()).toHaveLength(10);
});

test("states from before there was a count are older than any with one", async () => {
  const copy = { logbook: name, title: "Mine", why: "session", laps: 1, bytes: 1 } as const;
  await shelf.kept.add({ ...copy, id: shelf.newId(), sessions: 1, madeAt: Date.UTC(2036, 2, 4) });
  await keep(2);
  expect(await sessionsIn()).toEqual([2, 1]);
});

test("the same state is not kept twice", async () => {
  const first = await keep(1);
  expect(await keep(1)).toEqual(first);
  expect(await sessionsIn()).toEqual([1]);
});

test("states before merges do not push out states after sessions", async () => {
  await keep(1);
  for (let n = 2; n <= 6; n += 1) await keep(n, "merge");
  expect(await sessionsIn()).toEqual([6, 5, 4, 1]);
});

test("a replaced logbook is kept until it was opened on thirty days since, whatever the clock says", async () => {
  await keep(7, "replace");
  const look = async () => {
    const [logbook] = await listLogbooks(shelf);
    if (logbook) await forgetOldCopies(shelf, logbook);
    return sessionsIn();
  };
  for (const year of [2016, 2036]) {
    clock.set(Date.UTC(year, 0, 1));
    expect(await look()).toEqual([7]);
  }
  for (let day = 0; day < 31; day += 1) await noteOpened(shelf, name, addDays("2026-03-11", day));
  expect(await look()).toEqual([]);
  expect(await shelf.packs.count()).toBe(0);
});

test("a full disk is said, and what was kept before stays", async () => {
  await keep(1);
  const fault = failingStore(1);
  await expect(keep(2)).rejects.toMatchObject({
    code: "quota",
    message: expect.stringContaining("no space left"),
  });
  fault.mend();
  expect(await sessionsIn()).toEqual([1]);
  expect(await shelf.packs.count()).toBe(1);
});

test("a replaced logbook is kept through twenty-nine more days of opening and goes on the thirtieth", async () => {
  await noteOpened(shelf, name, "2026-03-10");
  expect(await keep(7, "replace")).toMatchObject({ openDay: 1 });
  const look = async () => {
    const [logbook] = await listLogbooks(shelf);
    if (logbook) await forgetOldCopies(shelf, logbook);
    return sessionsIn();
  };
  for (let day = 1; day <= 29; day += 1) await noteOpened(shelf, name, addDays("2026-03-10", day));
  expect(await look()).toEqual([7]);
  await noteOpened(shelf, name, addDays("2026-03-10", 30));
  expect(await look()).toEqual([]);
});

test("a replaced logbook kept before the days were counted is given thirty more", async () => {
  const old = { logbook: name, title: "Mine", why: "replace", laps: 1, bytes: 1, sessions: 7 } as const;
  await shelf.kept.add({ ...old, id: shelf.newId(), madeAt: 1 });
  const [logbook] = await listLogbooks(shelf);
  if (logbook === undefined) throw new Error("no logbook");
  const at = (daysOpened: number) => forgetOldCopies(shelf, { ...logbook, daysOpened });
  await at(100);
  expect(await keptCopies(shelf, name)).toMatchObject([{ sessions: 7, openDay: 100 }]);
  await at(129);
  expect(await sessionsIn()).toEqual([7]);
  await at(130);
  expect(await sessionsIn()).toEqual([]);
});

test("states after sessions and before merges do not go by days", async () => {
  await keep(1);
  await keep(2, "merge");
  const [logbook] = await listLogbooks(shelf);
  if (logbook) await forgetOldCopies(shelf, { ...logbook, daysOpened: 500 });
  expect(await sessionsIn()).toEqual([2, 1]);
  expect((await keptCopies(shelf, name)).map(({ openDay }) => openDay)).toEqual([0, 0]);
});

test("a state is kept with its number, its size and the clock; of a logbook in no list, without its day", async () => {
  const packed = new Uint8Array([1, 2, 3]);
  const copy = { logbook: "elsewhere", title: "Other", why: "merge", sessions: 1, laps: 2, mark: 5 } as const;
  const kept = await keepCopy(shelf, { ...copy, packed });
  expect(kept).toEqual({ ...copy, id: kept.id, n: 1, madeAt: clock.now(), bytes: 3 });
  expect(await keptCopies(shelf, "elsewhere")).toEqual([kept]);
  expect((await keepCopy(shelf, { ...copy, packed: new Uint8Array([1, 2, 4]) })).n).toBe(2);
  expect((await keepCopy(shelf, { ...copy, packed: new Uint8Array([1, 2]) })).n).toBe(3);
  // The same bytes again, of other rows by their mark: the newest mark is remembered, and nothing is kept twice.
  const again = await keepCopy(shelf, { ...copy, mark: 6, packed: new Uint8Array([1, 2]) });
  expect([again.n, again.mark]).toEqual([3, 6]);
  expect((await keptCopies(shelf, "elsewhere")).map(({ n, mark }) => [n, mark])).toEqual([
    [3, 6],
    [2, 5],
    [1, 5],
  ]);
});

test("the same bytes kept for another reason are another state", async () => {
  await keep(1);
  await keep(1, "merge");
  expect((await keptCopies(shelf, name)).map(({ why, n }) => [why, n])).toEqual([
    ["merge", 2],
    ["session", 1],
  ]);
});

test("states without a count are told apart by the clock, then by their ids", async () => {
  const old = { logbook: name, title: "Mine", why: "session", laps: 1, bytes: 1 } as const;
  const rows = [
    ["b", 5],
    ["a", 5],
    ["c", 9],
  ] as const;
  for (const [id, madeAt] of rows) await shelf.kept.add({ ...old, id, madeAt, sessions: 0 });
  expect((await keptCopies(shelf, name)).map(({ id }) => id)).toEqual(["c", "b", "a"]);
});

test("what cannot be kept or removed is missed in words when another tab has closed the list", async () => {
  const [logbook] = await listLogbooks(shelf);
  if (logbook === undefined) throw new Error("no logbook");
  shelf.database.close({ disableAutoOpen: true });
  await expect(keep(1)).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^State of the logbook not kept: /),
  });
  await expect(forgetOldCopies(shelf, logbook)).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^Old states of the logbook not removed: /),
  });
});
