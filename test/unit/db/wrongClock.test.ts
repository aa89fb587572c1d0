import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  believedUpTo,
  bringBack,
  checkRows,
  deleteSession,
  dump,
  editLap,
  editSession,
  endSession,
  mergeInto,
  purgeDeleted,
  putBookRight,
  rowsAhead,
  runOf,
  sessionOf,
  takeBackMerge,
} from "#db";
import { aLap } from "../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../support/aLogbook.ts";

const tenYears = 3652 * 86_400_000;
const at = Date.UTC(2027, 2, 10, 18);

/** An evening on the phone, and a PC that has it and whose clock then stands ten years ahead. */
async function phoneAndPc() {
  const { book: phone, clock, sessionId, runId } = await anOpenSession(at);
  const lapId = phone.newId();
  await addLap(phone, { runId, id: lapId, lap: aLap(83_456) });
  const { book: pc, clock: pcClock } = await aLogbook(at);
  await mergeInto(pc, await dump(phone), "phone");
  clock.pass(60_000);
  pcClock.set(at + tenYears);
  return { phone, clock, pc, pcClock, sessionId, runId, lapId };
}

const lapsOf = async (book: Parameters<typeof runOf>[0], runId: string) =>
  ((await runOf(book, runId))?.laps ?? []).filter((lap) => lap.deletedAt === undefined).map(({ ms }) => ms);

test("a lap edited on a PC whose clock stood in 2037 does not undo the one mended on the phone since", async () => {
  const { phone, clock, pc, runId, lapId } = await phoneAndPc();
  await editLap(pc, { runId, lapId, patch: { ms: 83_000 } });
  await addLap(pc, { runId, id: pc.newId(), lap: aLap(84_000) });
  await editLap(phone, { runId, lapId, patch: { ms: 83_465 } });
  const file = await dump(pc);
  const upTo = believedUpTo(clock.now());
  await mergeInto(phone, file, "PC", { upTo });
  expect(await lapsOf(phone, runId)).toEqual([83_465, 84_000]);
  const once = await dump(phone);
  expect(rowsAhead(once, upTo)).toBeUndefined();
  expect(checkRows(once).bad).toEqual([]);
  expect((await mergeInto(phone, file, "PC again", { upTo })).edits).toEqual([]);
  expect(await dump(phone)).toEqual(once);
});

test("a lap edited on a PC whose clock stood in 2037 reaches the phone that did nothing since", async () => {
  const { phone, clock, pc, runId, lapId } = await phoneAndPc();
  await editLap(pc, { runId, lapId, patch: { ms: 83_000 } });
  await mergeInto(phone, await dump(pc), "PC", { upTo: believedUpTo(clock.now()) });
  expect(await lapsOf(phone, runId)).toEqual([83_000]);
});

test("a logbook whose clock was set right is put right as a whole, and then is changed and merged as any other", async () => {
  const { phone, clock, pc, pcClock, sessionId, runId, lapId } = await phoneAndPc();
  await editSession(pc, { sessionId, patch: { note: "late on the brakes" } });
  await endSession(pc, { sessionId, note: "late on the brakes" });
  pcClock.set(clock.now());
  expect(rowsAhead(await dump(pc), believedUpTo(pcClock.now()))?.newest).toBeGreaterThan(at + tenYears - 1);
  const { edits } = await putBookRight(pc, believedUpTo(pcClock.now()));
  expect(edits.length).toBeGreaterThan(0);
  expect(rowsAhead(await dump(pc), believedUpTo(pcClock.now()))).toBeUndefined();
  expect((await putBookRight(pc, believedUpTo(pcClock.now()))).edits).toEqual([]);
  pcClock.pass(60_000);
  await editLap(pc, { runId, lapId, patch: { note: "kerb at 5" } });
  await mergeInto(phone, await dump(pc), "PC");
  expect(await sessionOf(phone, sessionId)).toMatchObject({ note: "late on the brakes" });
  expect((await runOf(phone, runId))?.laps[0]).toMatchObject({ note: "kerb at 5" });
});

test("a session deleted while the clock stood in 2037 comes back with its runs, and is not purged early", async () => {
  const { pc, pcClock, sessionId, runId } = await phoneAndPc();
  await editSession(pc, { sessionId, patch: { note: "on another day" } });
  await deleteSession(pc, { sessionId });
  pcClock.set(at + 86_400_000);
  await putBookRight(pc, believedUpTo(pcClock.now()));
  expect((await purgeDeleted(pc, new Map(), 1)).removed).toBe(0);
  await bringBack(pc, { table: "sessions", id: sessionId });
  expect(await sessionOf(pc, sessionId)).toMatchObject({ note: "on another day" });
  expect(await lapsOf(pc, runId)).toEqual([83_456]);
});

test("a merge that put stamps right is taken back to the rows as they were", async () => {
  const { phone, clock, pc, runId, lapId } = await phoneAndPc();
  await editLap(pc, { runId, lapId, patch: { ms: 83_000 } });
  const before = await dump(phone);
  const merged = await mergeInto(phone, await dump(pc), "PC", { upTo: believedUpTo(clock.now()) });
  expect(await takeBackMerge(phone, merged)).toMatchObject({ skipped: [] });
  expect(await dump(phone)).toEqual(before);
});
