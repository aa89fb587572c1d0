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
