import "fake-indexeddb/auto";

import { afterEach, expect, test, vi } from "vitest";
import { addLap, addReference, dump, editLap, startSession } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aShelvedEvening, fileOf } from "../../../support/aShelvedEvening.ts";

afterEach(() => vi.unstubAllGlobals());

/** The demo as it was fetched, with one session of two laps, and as it lies at its address. */
async function aDemo() {
  const demo = await aShelvedEvening();
  const file = await fileOf(await dump(demo.book), "Demo");
  const asked: string[] = [];
  vi.stubGlobal("fetch", async (address: string) => {
    asked.push(address);
    return new Response(file);
  });
  const look = () => demo.send(demo.name, "typedInDemo", { address: "demo/demo.json.gz" });
  return { ...demo, look, asked };
}

test("nothing typed in the demo is told as nothing", async () => {
  const { look, asked } = await aDemo();
  expect(await look()).toMatchObject({ laps: 0, sessions: [], others: 0, changed: 0 });
  expect(asked).toEqual(["demo/demo.json.gz"]);
});

test("what was typed in the demo is listed by session, the latest first, and makes a backup that moves it elsewhere", async () => {
  const { book, clock, runId, lapIds, comboId, look } = await aDemo();
  clock.pass(60_000);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_700) });
  await editLap(book, { runId, lapId: lapIds[0], patch: { ms: 83_000 } });
  clock.pass(86_400_000);
  const own = await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  for (const ms of [84_000, 84_100])
    await addLap(book, { runId: own.runId, id: book.newId(), lap: aLap(ms) });
  await addReference(book, { comboId, ms: 80_000, decimals: 3, source: "a friend" });
  const found = await look();
  expect(found).toMatchObject({ laps: 3, changed: 1 });
  expect(found.others).toBeGreaterThan(0);
  expect(found.sessions.map(({ date, combo, laps }) => [date, combo, laps])).toEqual([
    ["2026-03-11", "Varnholt Ring · Club hatch", 2],
    ["2026-03-10", "Varnholt Ring · Club hatch", 1],
  ]);
  const kept = await aShelvedEvening();
  await kept.send(kept.name, "merge", {
    source: new Blob([found.bytes]),
    from: "demo",
    title: "Evenings",
    isDateConfirmed: true,
  });
  const times = (await dump(kept.book)).runs.flatMap(({ laps }) => laps.map(({ ms }) => ms));
  expect(times).toEqual(expect.arrayContaining([84_000, 84_100]));
});

test("where the demo cannot be fetched it is said that nothing was removed, and why", async () => {
  const { look } = await aDemo();
  vi.stubGlobal("fetch", async () => new Response("", { status: 404 }));
  await expect(look()).rejects.toMatchObject({
    code: "failed",
    message:
      "Demo not removed: it could not be told what you typed in it. The file could not be fetched. Try again when the connection is back.",
  });
});
