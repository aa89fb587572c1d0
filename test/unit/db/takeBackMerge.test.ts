import "fake-indexeddb/auto";

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  addLap,
  dump,
  editLap,
  mergeInto,
  mergeRows,
  runOf,
  sessionsOpen,
  startSession,
  takeBackMerge,
  unmergeRows,
} from "#db";
import { noRows } from "#domain";
import { aLap } from "../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../support/aLogbook.ts";
import { someRows } from "../../support/someRows.ts";

test("a merge taken back leaves the rows as they were, and can be made again", () => {
  fc.assert(
    fc.property(someRows, someRows, (a, b) => {
      const before = mergeRows(a, noRows);
      const after = mergeRows(before, b);
      const { rows, skipped } = unmergeRows(after, before, after);
      expect(mergeRows(rows, noRows)).toEqual(before);
      expect(skipped).toEqual([]);
      expect(mergeRows(rows, b)).toEqual(after);
    }),
    { seed: 20261125, numRuns: 250 },
  );
});

/** A logbook, and a phone that began a session of its own in a copy of it. */
async function phoneAndPc() {
  const { book: pc, clock, comboId, runId } = await anOpenSession();
  const shared = await dump(pc);
  const { book: phone } = await aLogbook(clock.now());
  await mergeInto(phone, shared, "a copy");
  clock.pass(60_000);
  const begun = await startSession(phone, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  const lapId = phone.newId();
  await addLap(phone, { runId: begun.runId, id: lapId, lap: aLap(83_456) });
  await addLap(phone, { runId, id: phone.newId(), lap: aLap(83_999) });
  return { pc, phone, clock, comboId, runId, begun, lapId };
}

test("a session brought by a merge goes with it, and no other device hears of a deletion", async () => {
  const { pc, phone, begun, runId } = await phoneAndPc();
  const before = await dump(pc);
  const merged = await mergeInto(pc, await dump(phone), "phone");
  expect(await runOf(pc, begun.runId)).toMatchObject({ laps: [{ ms: 83_456 }] });
  expect(await takeBackMerge(pc, merged)).toMatchObject({ skipped: [] });
  expect(await dump(pc)).toEqual(before);
  expect((await runOf(pc, runId))?.laps).toEqual([]);
  expect(await sessionsOpen(pc)).toHaveLength(1);
  const phoneRows = await dump(phone);
  await mergeInto(phone, await dump(pc), "pc");
  expect(await dump(phone)).toEqual(phoneRows);
});

test("what was typed since a merge stays, with the session it stands in", async () => {
  const { pc, phone, clock, begun, runId, lapId } = await phoneAndPc();
  const merged = await mergeInto(pc, await dump(phone), "phone");
  clock.pass(60_000);
  await addLap(pc, { runId: begun.runId, id: pc.newId(), lap: aLap(82_000) });
  await addLap(pc, { runId, id: pc.newId(), lap: aLap(82_500) });
  const { skipped } = await takeBackMerge(pc, merged);
  expect(skipped).toEqual(["something that is in use by now"]);
  expect((await runOf(pc, begun.runId))?.laps.map(({ ms }) => ms)).toEqual([82_000]);
  expect((await runOf(pc, runId))?.laps.map(({ ms }) => ms)).toEqual([82_500]);
  expect((await dump(pc)).sessions.map(({ id }) => id)).toContain(begun.sessionId);
  expect((await runOf(pc, begun.runId))?.laps.some(({ id }) => id === lapId)).toBe(false);
});

test("a lap that was changed since a merge is left and said", async () => {
  const { pc, phone, clock, begun, lapId } = await phoneAndPc();
  const merged = await mergeInto(pc, await dump(phone), "phone");
  clock.pass(60_000);
  await editLap(pc, { runId: begun.runId, lapId, patch: { ms: 83_457 } });
  const { skipped } = await takeBackMerge(pc, merged);
  expect(skipped).toContain("a lap that was changed since");
  expect((await runOf(pc, begun.runId))?.laps.map(({ ms }) => ms)).toEqual([83_457]);
});

test("a merge stopped half way changes nothing", async () => {
  const { pc, phone } = await phoneAndPc();
  const before = await dump(pc);
  const stop = new AbortController();
  const merging = mergeInto(pc, await dump(phone), "phone", {
    signal: stop.signal,
    onProgress: () => stop.abort(),
  });
  await expect(merging).rejects.toMatchObject({ code: "cancelled" });
  expect(await dump(pc)).toEqual(before);
});
