import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  deleteLap,
  dump,
  editedOnBoth,
  editLap,
  editSession,
  joinCars,
  joinCombos,
  joinTracks,
  mergeInto,
  mergeRows,
  twins,
} from "#db";
import { aLap } from "../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../support/aLogbook.ts";

/** The same evening on two devices. */
async function twoDevices() {
  const { book: here, clock, runId, sessionId } = await anOpenSession();
  const ids = [here.newId(), here.newId(), here.newId()];
  for (const id of ids) await addLap(here, { runId, id, lap: aLap(83_456) });
  const { book: there, clock: thereClock } = await aLogbook(clock.now());
  await mergeInto(there, await dump(here), "a copy");
  clock.pass(1000);
  thereClock.pass(2000);
  const [a = "", b = "", c = ""] = ids;
  return { here, there, runId, sessionId, a, b, c };
}
const compared = async ({ here, there }: Awaited<ReturnType<typeof twoDevices>>) => {
  const [mine, theirs] = [await dump(here), await dump(there)];
  return editedOnBoth(mine, theirs, mergeRows(mine, theirs));
};

test("a lap edited on both sides is named with its place, both values, and the one that stays", async () => {
  const devices = await twoDevices();
  const { here, there, runId, sessionId, a, b } = devices;
  await editLap(here, { runId, lapId: a, patch: { ms: 83_400 } });
  await editLap(there, { runId, lapId: a, patch: { ms: 83_300 } });
  await editLap(here, { runId, lapId: b, patch: { note: "late" } });
  await editSession(there, { sessionId, patch: { note: "tired" } });
  expect(await compared(devices)).toMatchObject([
    {
      table: "laps",
      id: a,
      place: { date: "2026-03-10", combo: "Varnholt Ring · Club hatch", run: 1, lap: 1 },
      fields: ["ms"],
      here: { ms: 83_400 },
      there: { ms: 83_300 },
      stays: "there",
    },
  ]);
});

test("a lap deleted here and edited there is among them, one deleted on both sides is not", async () => {
  const devices = await twoDevices();
  const { here, there, runId, a, b } = devices;
  for (const book of [here, there]) await deleteLap(book, { runId, lapId: b });
  await editLap(there, { runId, lapId: a, patch: { ms: 83_300 } });
  await deleteLap(here, { runId, lapId: a });
  expect((await compared(devices)).map(({ id, stays }) => [id, stays])).toEqual([[a, "there"]]);
});

test("what two devices made each for themselves is found as the same, and joined it is one", async () => {
  const { book: here, clock } = await aLogbook();
  await addCombo(here, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const { book: there } = await aLogbook(clock.now() + 1000);
  await addCombo(there, { car: { name: "club  HATCH" }, track: { name: "VARNHOLT RING" } });
  expect(await twins(here)).toEqual([]);
  await mergeInto(here, await dump(there), "phone");
  await mergeInto(there, await dump(here), "pc");
  const found = await twins(here);
  expect(found.map(({ kind, name, isSure }) => [kind, name, isSure])).toEqual([
    ["car", "Club hatch", true],
    ["track", "Varnholt Ring", true],
  ]);
  expect(await twins(there)).toEqual(found);
  const [car, track] = found;
  if (car === undefined || track === undefined) throw new Error("not found");
  await joinCars(here, car);
  await joinTracks(here, track);
  for (const combo of (await twins(here)).filter(({ kind }) => kind === "combo"))
    await joinCombos(here, combo);
  expect(await twins(here)).toEqual([]);
  expect((await dump(here)).combos.filter(({ deletedAt }) => deletedAt === undefined)).toHaveLength(1);
});

test("names that differ in accents are a question, those of other letters are not, and none is joined by itself", async () => {
  const { book } = await aLogbook();
  for (const [car, track] of [
    ["Café GT", "ハス"],
    ["Cafe GT", "バス"],
    ["CAFE gt", "कर"],
    ["ＣＡＦＥ GT", "कार"],
  ] as const)
    await addCombo(book, { car: { name: car }, track: { name: track } });
  expect(
    (await twins(book)).map(({ kind, otherName, name, isSure }) => [kind, otherName, name, isSure]),
  ).toEqual([
    ["car", "Cafe GT", "Café GT", false],
    ["track", "バス", "ハス", false],
  ]);
  const { cars, tracks } = await dump(book);
  expect(cars.map(({ name }) => name)).toEqual(["Café GT", "Cafe GT"]);
  expect(tracks).toHaveLength(4);
});
