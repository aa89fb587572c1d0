import "fake-indexeddb/auto";

import { afterEach, expect, test, vi } from "vitest";
import {
  aboutUnreadable,
  addLap,
  addRun,
  combosWithNames,
  dump,
  endSession,
  freshenDigests,
  lastSession,
  mergeInto,
  readDigests,
  recentSessions,
  reopenSession,
  runsOfCombo,
  runsOfSession,
  salvage,
  sessionBefore,
  sessionOf,
  sessionsOfCombo,
  startSession,
  unreadableRuns,
} from "#db";
import type { Run } from "#domain";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";
import { failReadsOf } from "../../support/unreadableRows.ts";

let mend: (() => void) | undefined;
afterEach(() => {
  mend?.();
  vi.restoreAllMocks();
});

/** Three sessions of a combo; the second one has three runs of a lap each. */
async function threeSessions() {
  const first = await anOpenSession();
  const { book, comboId, clock } = first;
  await endSession(book, { sessionId: first.sessionId });
  clock.pass(3_600_000);
  const second = await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  const runIds = [second.runId];
  await addLap(book, { runId: second.runId, id: book.newId(), lap: aLap(83_000) });
  for (const ms of [84_000, 85_000]) {
    clock.pass(60_000);
    const { runId } = await addRun(book, { sessionId: second.sessionId });
    await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
    runIds.push(runId);
  }
  await endSession(book, { sessionId: second.sessionId });
  clock.pass(3_600_000);
  const third = await startSession(book, { comboId, date: "2026-03-12", zone: "Europe/Berlin" });
  return { ...first, runIds, sessionIds: [first.sessionId, second.sessionId, third.sessionId] as const };
}

const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);

for (const broken of [0, 1, 2])
  test(`a session is read without its run ${broken + 1} that cannot be read, and the run is named`, async () => {
    const { book, comboId, runIds, sessionIds } = await threeSessions();
    const id = runIds[broken] ?? "";
    mend = failReadsOf([{ table: "runs", id }]);
    const rest = runIds.filter((other) => other !== id);
    expect(ids(await runsOfSession(book, sessionIds[1]))).toEqual(rest);
    expect(await unreadableRuns(book, sessionIds[1])).toEqual([{ id, n: broken + 1 }]);
    expect(await unreadableRuns(book, sessionIds[0])).toEqual([]);
    expect(ids(await runsOfCombo(book, comboId))).toEqual(expect.arrayContaining(rest));
    expect(book.unreadable.get()).toEqual([{ table: "runs", id }]);
    expect(await aboutUnreadable(book, { table: "runs", id })).toMatchObject({
      sessionId: sessionIds[1],
      date: "2026-03-11",
      comboName: "Varnholt Ring · Club hatch",
    });
  });

for (const broken of [0, 1, 2])
  test(`lists of sessions go around number ${broken + 1} of three, forwards and backwards`, async () => {
    const { book, comboId, sessionIds } = await threeSessions();
    const id = sessionIds[broken] ?? "";
    mend = failReadsOf([{ table: "sessions", id }]);
    const rest = sessionIds.filter((other) => other !== id);
    expect(ids(await sessionsOfCombo(book, comboId))).toEqual(rest);
    expect(ids(await recentSessions(book, 2, Number.MAX_SAFE_INTEGER))).toEqual(
      rest.toReversed().slice(0, 2),
    );
    expect((await lastSession(book, Number.MAX_SAFE_INTEGER))?.id).toBe(rest[1]);
    expect((await sessionBefore(book, comboId, Number.MAX_SAFE_INTEGER))?.id).toBe(rest[1]);
    expect(await sessionOf(book, id)).toBeUndefined();
    expect((await book.tables.sessions.bulkGet([...sessionIds])).map((row) => row?.id)).toEqual(
      sessionIds.map((other) => (other === id ? undefined : other)),
    );
    expect(book.unreadable.get()).toEqual([{ table: "sessions", id }]);
    expect(await aboutUnreadable(book, { table: "sessions", id })).toMatchObject({
      sessionId: id,
      comboName: "Varnholt Ring · Club hatch",
    });
  });

test("nothing is noted of rows that are read, nor of ids that are not there", async () => {
  const { book, comboId } = await threeSessions();
  await sessionsOfCombo(book, comboId);
  expect(await sessionOf(book, "nowhere")).toBeUndefined();
  expect(book.unreadable.get()).toEqual([]);
});

test("a request that fails for another reason, as for a lost connection, fails as before and nothing is noted", async () => {
  const { book } = await threeSessions();
  const lost = () => {
    throw new DOMException("Connection to Indexed Database server lost", "UnknownError");
  };
  for (const name of ["get", "getAll", "getAllKeys", "count"] as const)
    vi.spyOn(IDBObjectStore.prototype, name).mockImplementation(lost);
  await expect(sessionOf(book, "nowhere")).rejects.toMatchObject({ name: "UnknownError" });
  await expect(dump(book)).rejects.toMatchObject({ code: "closed" });
  vi.restoreAllMocks();
  vi.spyOn(IDBObjectStore.prototype, "get").mockImplementation(lost);
  await expect(sessionOf(book, "nowhere"), "what is not there is not unreadable").rejects.toThrow();
  expect(book.unreadable.get()).toEqual([]);
});

test("whoever listens is told of an unreadable row once", async () => {
  const { book, runIds, sessionIds } = await threeSessions();
  mend = failReadsOf([{ table: "runs", id: runIds[1] ?? "" }]);
  let told = 0;
  book.unreadable.subscribe(() => {
    told += 1;
  });
  await runsOfSession(book, sessionIds[1]);
  await runsOfSession(book, sessionIds[1]);
  expect(told).toBe(1);
});

test("figures made without a run that cannot be read are given and not kept, and it does not go on for ever", async () => {
  const { book, comboId, runIds, sessionIds } = await threeSessions();
  const maker = {
    methodVersion: "test",
    make: (_: unknown, runs: readonly Run[]) => runs.flatMap(({ laps }) => laps.map(({ ms }) => ms)),
    isWhole: (digest: unknown): digest is (number | undefined)[] => Array.isArray(digest),
    bestKeyOf: () => undefined,
  };
  mend = failReadsOf([{ table: "runs", id: runIds[1] ?? "" }]);
  const [, second] = await readDigests(book, comboId, maker);
  expect(second).toMatchObject({ sessionId: sessionIds[1], digest: [83_000, 85_000], isNew: false });
  expect(await freshenDigests(book, maker)).toBe(1);
  expect(await freshenDigests(book, maker)).toBe(0);
  mend();
  const [, again] = await readDigests(book, comboId, maker);
  expect(again?.digest).toEqual([83_000, 84_000, 85_000]);
});

test("the driver goes on in a session of which a run cannot be read; the run is left as it is", async () => {
  const { book, runIds, sessionIds } = await threeSessions();
  const id = runIds[2] ?? "";
  mend = failReadsOf([{ table: "runs", id }]);
  await reopenSession(book, { sessionId: sessionIds[1] });
  const { runId } = await addRun(book, { sessionId: sessionIds[1] });
  await addLap(book, { runId, id: book.newId(), lap: aLap(86_000) });
  await endSession(book, { sessionId: sessionIds[1] });
  await expect(addLap(book, { runId: id, id: book.newId(), lap: aLap(87_000) })).rejects.toMatchObject({
    message: expect.stringContaining("Lap not stored"),
  });
  mend();
  const runs = await runsOfSession(book, sessionIds[1]);
  expect(runs.map(({ laps }) => laps.map(({ ms }) => ms))).toEqual([[83_000], [84_000], [85_000], [86_000]]);
});

test("laps are stored in a session whose digest cannot be read, and the digest is made anew", async () => {
  const { book, sessionIds } = await threeSessions();
  const id = sessionIds[2];
  const runId = (await runsOfSession(book, id))[0]?.id ?? "";
  mend = failReadsOf([{ table: "digests", id }]);
  await addLap(book, { runId, id: book.newId(), lap: aLap(86_000) });
  await endSession(book, { sessionId: id });
  mend();
  expect(await book.digests.get(id)).toMatchObject({ sessionId: id, staleSince: expect.any(Number) });
});

test("what needs every row is refused by name while one cannot be read; a salvage names it", async () => {
  const { book, runIds } = await threeSessions();
  const whole = await dump(book);
  const id = runIds[1] ?? "";
  mend = failReadsOf([{ table: "runs", id }]);
  const refused = { code: "unreadable", message: expect.stringContaining("cannot read one row of it") };
  await expect(dump(book)).rejects.toMatchObject(refused);
  await expect(mergeInto(book, whole, "a copy")).rejects.toMatchObject(refused);
  const saved = await salvage(book);
  expect(saved.unreadable).toEqual([{ table: "runs", id }]);
  expect(saved.rows).toEqual({ ...whole, runs: whole.runs.filter((run) => run.id !== id) });
  mend();
  expect(await dump(book)).toEqual(whole);
});

test("a read whose own filter fails still fails behind a row that cannot be read, and does not hang", async () => {
  const { book, sessionIds } = await threeSessions();
  mend = failReadsOf([{ table: "sessions", id: sessionIds[0] }]);
  const read = book.tables.sessions
    .orderBy("startedAt")
    .filter(() => {
      throw new Error("a mistake in the filter");
    })
    .toArray();
  await expect(read).rejects.toThrow("a mistake in the filter");
});

test("names of combos are read around a car that cannot be read", async () => {
  const { book, comboId } = await threeSessions();
  const { car } = (await combosWithNames(book))[0] ?? {};
  mend = failReadsOf([{ table: "cars", id: car?.id ?? "" }]);
  expect(await combosWithNames(book)).toEqual([]);
  expect(ids(await sessionsOfCombo(book, comboId))).toHaveLength(3);
  expect(await aboutUnreadable(book, { table: "cars", id: car?.id ?? "" })).toEqual({
    table: "cars",
    id: car?.id,
  });
});
