import "fake-indexeddb/auto";

import { liveQuery } from "dexie";
import { expect, test, vi } from "vitest";
import {
  addCombo,
  addLap,
  deleteRun,
  deleteSession,
  editLap,
  editRun,
  endSession,
  type Logbook,
  runOf,
  runsToJudgeBy,
  sessionOf,
  startSession,
} from "#db";
import type { Id } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const always = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };

async function drive(book: Logbook, comboId: Id, times: readonly number[]) {
  const started = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  for (const ms of times) await addLap(book, { runId: started.runId, id: book.newId(), lap: aLap(ms) });
  return started;
}

async function read(book: Logbook, sessionId: Id, span = always) {
  const session = await sessionOf(book, sessionId);
  if (session === undefined) throw new Error("no session");
  const { page, layout, elsewhere } = await runsToJudgeBy(book, session, span);
  const times = (runs: typeof page) => runs.flatMap(({ laps }) => laps.map(({ ms }) => ms));
  return { page: times(page), layout: times(layout), elsewhere: times(elsewhere) };
}

async function aSeason() {
  const { book, clock } = await aLogbook();
  const track = { name: "Varnholt Ring" };
  const here = await addCombo(book, { car: { name: "Club hatch" }, track });
  const beside = await addCombo(book, { car: { name: "Junior" }, track });
  const far = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const next = async (comboId: Id, times: readonly number[]) => {
    clock.pass(86_400_000);
    const started = await drive(book, comboId, times);
    return started;
  };
  return { book, next, here: here.comboId, beside: beside.comboId, far: far.comboId };
}

test("laps are judged by the page, else by other cars on the layout, else by other combos", async () => {
  const { book, next, here, beside, far } = await aSeason();
  const first = await next(here, [84_000]);
  expect(await read(book, first.sessionId)).toEqual({ page: [], layout: [], elsewhere: [] });
  await next(far, [61_000]);
  const second = await next(beside, []);
  expect((await read(book, second.sessionId)).layout).toEqual([84_000]);
  const third = await next(here, [83_000]);
  expect(await read(book, third.sessionId)).toEqual({ page: [84_000], layout: [], elsewhere: [] });
  const newPage = { from: (await sessionOf(book, third.sessionId))?.startedAt ?? 0, to: always.to };
  expect((await read(book, third.sessionId, newPage)).page).toEqual([]);
  const alone = await next(
    (await addCombo(book, { car: { name: "Lorry" }, track: { name: "Ash Hill" } })).comboId,
    [],
  );
  expect((await read(book, alone.sessionId)).elsewhere.toSorted()).toEqual([61_000, 83_000, 84_000]);
});

test("a few runs are read, however many there are, and none without a lap to judge by", async () => {
  const { book, next, here } = await aSeason();
  for (let n = 0; n < 15; n += 1) {
    const { runId } = await next(here, [84_000 + n]);
    const id = book.newId();
    await addLap(book, { runId, id, lap: aLap(12_000_000) });
    await editLap(book, { runId, lapId: id, patch: { isOdd: true } });
  }
  const { runId } = await next(here, [12_000_000]);
  const odd = (await book.tables.runs.get(runId))?.laps[0];
  await editLap(book, { runId, lapId: odd?.id ?? "", patch: { isOdd: true } });
  const last = await next(here, []);
  const session = await sessionOf(book, last.sessionId);
  const { page } = await runsToJudgeBy(book, session as NonNullable<typeof session>, always);
  expect(page.map(({ laps }) => laps[0]?.ms)).toEqual(Array.from({ length: 12 }, (_, n) => 84_014 - n));
});

test("a session entered afterwards, the first of all, is judged by those after it", async () => {
  const { book, next, here } = await aSeason();
  await next(here, [84_000]);
  const { sessionId } = await startSession(book, {
    comboId: here,
    date: "2026-01-02",
    zone: "UTC",
    startedAt: Date.UTC(2026, 0, 2, 12),
    isTimeOfDayKnown: false,
  });
  expect((await read(book, sessionId)).page).toEqual([84_000]);
});

test("laps of a guest and of a run that was deleted judge nobody", async () => {
  const { book, next, here, beside, far } = await aSeason();
  const guests = await next(here, [70_000]);
  await editRun(book, { runId: guests.runId, patch: { guest: "Jo" } });
  const gone = await next(here, [71_000]);
  await deleteRun(book, { runId: gone.runId });
  await next(here, [84_000]);
  const last = await next(here, []);
  expect((await read(book, last.sessionId)).page).toEqual([84_000]);
  const second = await next(beside, []);
  expect((await read(book, second.sessionId)).layout).toEqual([84_000]);
  const third = await next(far, []);
  expect((await read(book, third.sessionId)).elsewhere).toEqual([84_000]);
});

test("where there is nothing nearer, the newest sessions of other combos are asked, eight of them and none deleted", async () => {
  const { book, next, here, far } = await aSeason();
  for (let n = 0; n < 9; n += 1) await next(far, [61_000 + n]);
  const gone = await next(far, [99_000]);
  await deleteSession(book, { sessionId: gone.sessionId });
  const { sessionId } = await next(here, []);
  expect((await read(book, sessionId)).elsewhere).toEqual(Array.from({ length: 8 }, (_, n) => 61_008 - n));
});

test("of each other car on the layout the last three runs are read, the newest first", async () => {
  const { book, next, here, beside } = await aSeason();
  for (let n = 0; n < 5; n += 1) await next(beside, [82_000 + n]);
  const { sessionId } = await next(here, []);
  expect((await read(book, sessionId)).layout).toEqual([82_004, 82_003, 82_002]);
});

test("a session entered afterwards is judged by what was before it, and else by none of its own laps", async () => {
  const { book, next, here } = await aSeason();
  const past = (day: number, ended: boolean, isTimeOfDayKnown: boolean) => {
    const startedAt = Date.UTC(2026, 0, day, 12);
    return startSession(book, {
      comboId: here,
      date: `2026-01-0${day}`,
      zone: "UTC",
      startedAt,
      isTimeOfDayKnown,
      ...(ended && { endedAt: startedAt }),
    });
  };
  const lapIn = (runId: Id, ms: number) => addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
  await next(here, [84_000]);
  const first = await past(2, true, true);
  await lapIn(first.runId, 70_000);
  expect((await read(book, first.sessionId)).page).toEqual([84_000]);
  const later = await past(4, true, true);
  await lapIn(later.runId, 71_000);
  expect((await read(book, later.sessionId)).page).toEqual([70_000]);
  const open = await past(1, false, true);
  expect((await read(book, open.sessionId)).page).toEqual([]);
});

test("a combo that is gone has no layout to look around on", async () => {
  const { book, next, here, beside, far } = await aSeason();
  await next(beside, [82_000]);
  await next(far, [61_000]);
  const { sessionId } = await next(here, []);
  await book.database.table("combos").delete(here);
  const found = await read(book, sessionId);
  expect(found.layout).toEqual([]);
  expect(found.elsewhere.toSorted()).toEqual([61_000, 82_000]);
});

test("a query of them is not woken by the laps of the session being driven", async () => {
  const { book, next, here, far } = await aSeason();
  for (const isFirst of [true, false]) {
    const { runId, sessionId } = await next(isFirst ? far : here, []);
    const session = await sessionOf(book, sessionId);
    let woken = 0;
    const listening = liveQuery(() =>
      runsToJudgeBy(book, session as NonNullable<typeof session>, always),
    ).subscribe(() => {
      woken += 1;
    });
    let laps = -1;
    const sentinel = liveQuery(() => runOf(book, runId)).subscribe((run) => {
      laps = run?.laps.length ?? 0;
    });
    await vi.waitFor(() => expect([woken, laps]).toEqual([1, 0]));
    for (const ms of [83_000, 83_100]) await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
    // Once those who watch the run have heard of both laps, so have all.
    await vi.waitFor(() => expect(laps).toBe(2));
    sentinel.unsubscribe();
    expect(woken).toBe(1);
    listening.unsubscribe();
    await endSession(book, { sessionId });
    await next(here, [84_000]);
  }
});
