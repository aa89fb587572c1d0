import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, deleteLap, dump, editLap, type Logbook, mergeInto } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";
import { aShelvedEvening, fileOf } from "../../../support/aShelvedEvening.ts";

const at = Date.UTC(2026, 2, 10, 18);

/** The same evening on a second device, a minute later. */
async function twoDevices() {
  const here = await aShelvedEvening(at);
  const { book: there, clock } = await aLogbook(at + 60_000);
  await mergeInto(there, await dump(here.book), "phone");
  here.clock.pass(60_000);
  const look = async (book: Logbook = there) => {
    const looked = await here.send(here.name, "look", { source: await fileOf(await dump(book)) });
    if (!looked.ok) throw new Error(looked.problem.wrong);
    return looked.preview;
  };
  return { ...here, there, thereClock: clock, look };
}

test("a file with nothing new is said to hold what it holds and to change nothing", async () => {
  const { look } = await twoDevices();
  const preview = await look();
  expect(preview).toMatchObject({ title: "PC", isVerified: false });
  expect(preview.holds).toMatchObject({
    sessions: { live: 1, deleted: 0 },
    laps: { live: 2, deleted: 0 },
    targets: { live: 0, deleted: 0 },
  });
  expect(preview.bad).toEqual({ first: [], all: 0 });
  expect(preview.merging.counts.laps).toMatchObject({ added: 0, changed: 0, deleted: 0, unchanged: 2 });
  expect(preview.merging.both).toEqual({ first: [], all: 0 });
  expect(preview.merging.ahead).toBeUndefined();
});

test("laps added and deleted there are counted, and a lap edited on both sides is named with what stays", async () => {
  const { book, there, thereClock, runId, lapIds, look } = await twoDevices();
  await addLap(there, { runId, id: there.newId(), lap: aLap(83_700) });
  await deleteLap(there, { runId, lapId: lapIds[1] });
  await editLap(book, { runId, lapId: lapIds[0], patch: { ms: 83_000 } });
  thereClock.pass(1000);
  await editLap(there, { runId, lapId: lapIds[0], patch: { ms: 82_000 } });
  const { holds, merging } = await look();
  expect(holds.laps).toEqual({ live: 2, deleted: 1 });
  expect(merging.counts.laps).toMatchObject({ added: 1, deleted: 1, changed: 1, unchanged: 0 });
  expect(merging.both).toMatchObject({
    all: 1,
    first: [
      {
        table: "laps",
        id: lapIds[0],
        fields: ["ms"],
        here: { ms: 83_000 },
        there: { ms: 82_000 },
        stays: "there",
      },
    ],
  });
});

test("stamps ahead of the clock are counted here and in the file together, with the newest of them", async () => {
  const { book, clock, there, thereClock, runId, lapIds, look } = await twoDevices();
  const twoDays = 2 * 86_400_000;
  clock.pass(twoDays);
  await editLap(book, { runId, lapId: lapIds[0], patch: { ms: 83_000 } });
  clock.pass(-twoDays);
  expect((await look()).merging.ahead).toEqual({ count: 1, newest: at + 60_000 + twoDays });
  thereClock.pass(2 * twoDays);
  await editLap(there, { runId, lapId: lapIds[1], patch: { ms: 82_000 } });
  expect((await look()).merging.ahead).toEqual({ count: 2, newest: at + 60_000 + 2 * twoDays });
});

test("rows that are no rows are named with a reason, two hundred of them at most, in no more words than can be read", async () => {
  const { book, name, send } = await aShelvedEvening(at);
  const rows = await dump(book);
  const cars = Array.from({ length: 250 }, (_, index) => ({
    id: `car ${index}`,
    name: "x".repeat(900),
    n: index,
  }));
  const looked = await send(name, "look", {
    source: await fileOf({ ...rows, cars: [...rows.cars, ...(cars as never[])] }),
  });
  if (!looked.ok) throw new Error(looked.problem.wrong);
  const { bad, holds } = looked.preview;
  expect(bad.all).toBe(250);
  expect(bad.first).toHaveLength(200);
  expect(holds.cars.live).toBe(1);
  for (const { table, why } of bad.first) {
    expect(table).toBe("cars");
    expect(why.length).toBeGreaterThan(0);
    expect(why.length).toBeLessThanOrEqual(201);
  }
});
