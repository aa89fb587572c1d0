import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRun,
  asideFault,
  asideLinkFault,
  asideRows,
  deleteSession,
  dropAside,
  dump,
  endSession,
  idMaker,
  mendAside,
  mergeInto,
  namedChoices,
  newestSchema,
  preferences,
  purgeDeleted,
  rawRows,
  recentSessions,
  restoreAsNew,
  runsOfSession,
  setAside,
  setPreferences,
  startSession,
  withAside,
} from "#db";
import { type AllRows, canonicalText, type Run, tableNames } from "#domain";
import { browserSha256, readBackup, writeBackup } from "#files";
import { asideThing } from "#words";
import { checkRow } from "../../../src/db/checks/checkRow.ts";
import { checkRows } from "../../../src/db/checks/checkRows.ts";
import { sift } from "../../../src/db/edge/sift.ts";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";
import { damaged, putRaw } from "../../support/damage.ts";
import { diceFrom } from "../../support/mutateBackup.ts";

const tools = { clock: () => 1.8e12, newId: idMaker(() => 1.8e12) };
type Stored = Readonly<Record<string, unknown>> & { readonly id: string };

/** A full logbook of which one row holds what it must not. */
async function withDamage(table: keyof AllRows, id: string, patch: object) {
  const full = await aFullLogbook();
  const rows = (await dump(full.book))[table] as unknown as readonly Stored[];
  const whole = rows.find((row) => row.id === id || id === "") as Stored;
  await putRaw(full.book.name, table, { ...whole, ...patch });
  return { ...full, whole };
}

test("whatever one field of one row holds, all other rows are read, and the row is named or can be drawn", async () => {
  const seed = 20_261_128;
  const dice = diceFrom(seed);
  const { book } = await aFullLogbook();
  const before = await dump(book);
  for (let turn = 0; turn < 400; turn += 1) {
    const table = tableNames[dice(tableNames.length)] ?? "runs";
    const all = before[table] as unknown as readonly Stored[];
    const row = all[dice(all.length)] as Stored;
    const { row: bad, what } = damaged(row, "id", dice);
    await putRaw(book.name, table, bad);
    const said = `seed ${seed}, turn ${turn}: ${table} ${what}`;
    const read = await dump(book);
    for (const other of tableNames) {
      const others = (rows: AllRows) =>
        (rows[other] as unknown as readonly Stored[]).filter(({ id }) => id !== row.id);
      expect(others(read), said).toEqual(others(before));
    }
    const there = (read[table] as unknown as readonly Stored[]).find(({ id }) => id === row.id);
    const judged = sift(table, bad);
    expect(there, said).toEqual(judged.row);
    expect(read.aside?.map(({ id }) => id) ?? [], said).toEqual(
      judged.bad.map(({ aside }) => aside.id).sort(),
    );
    // What the checker of files takes must never be taken out of the driver's sight.
    if (checkRow(table, bad).ok) expect(judged.bad, said).toEqual([]);
    book.unreadable.forget(book.unreadable.get());
    await putRaw(book.name, table, row);
  }
  expect(await dump(book)).toEqual(before);
});

test("a session whose date is no day is gone around, then set aside with its reason, and its figures go", async () => {
  const { book, sessionId, whole } = await withDamage("sessions", "", { date: "0000-00-00" });
  expect(await recentSessions(book, 5, Number.MAX_SAFE_INTEGER)).toEqual([]);
  const [found] = book.unreadable.get();
  expect(found).toMatchObject({ table: "sessions", id: sessionId });
  await setAside(book, book.unreadable.get());
  expect(book.unreadable.get()).toEqual([]);
  expect(await asideRows(book)).toMatchObject([
    {
      table: "sessions",
      schema: newestSchema,
      why: "date: not a day of the calendar",
      row: { ...whole, date: "0000-00-00" },
    },
  ]);
  expect(await book.digests.get(sessionId)).toBeUndefined();
});

test("a bad lap goes aside alone; the other laps of its run stay and can be added to", async () => {
  const full = await aFullLogbook();
  const { book, runId, sessionId } = full;
  const run = (await runsOfSession(book, sessionId)).find(({ id }) => id === runId) as Run;
  const [first, second, third] = run.laps;
  await putRaw(book.name, "runs", { ...run, laps: [first, { ...second, n: "two" }, third] });
  const read = (await runsOfSession(book, sessionId)).find(({ id }) => id === runId);
  expect(read?.laps).toEqual([first, third]);
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  const now = (await runsOfSession(book, sessionId)).find(({ id }) => id === runId);
  expect(now?.laps.map(({ ms }) => ms)).toEqual([83_456, 83_400, 84_000]);
  const [aside] = await asideRows(book);
  expect(aside).toMatchObject({ table: "laps", row: { ...second, n: "two", runId } });
  if (aside?.row === undefined) throw new Error("no row");
  expect(asideFault(aside, aside.row)).toMatchObject({ field: "n" });
  await mendAside(book, { aside, row: { ...aside.row, n: 2 } });
  const mended = (await runsOfSession(book, sessionId)).find(({ id }) => id === runId);
  expect(mended?.laps.map(({ n }) => n)).toEqual([1, 2, 3, 4]);
  expect(mended?.laps[1]).toMatchObject({ ...second, n: 2, updatedAt: expect.any(Number) });
  expect(await asideRows(book)).toEqual([]);
});

test("a write that meets a bad row loses nothing of it: it goes aside first, then the write is made", async () => {
  const { book, comboId } = await withDamage("preferences", "", { settlingLaps: "many" });
  expect(await preferences(book)).toMatchObject({ settlingLaps: expect.any(Number) });
  await setPreferences(book, { settlingLaps: 2 });
  expect(await preferences(book)).toMatchObject({ settlingLaps: 2 });
  expect(await asideRows(book)).toMatchObject([{ table: "preferences", row: { settlingLaps: "many" } }]);
  const { runId, sessionId } = await startSession(book, {
    comboId,
    date: "2026-03-12",
    zone: "Europe/Berlin",
  });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  await addRun(book, { sessionId });
  await endSession(book, { sessionId });
});

test("what was deleted is purged past a bad row, which stays", async () => {
  const { book } = await withDamage("cars", "", { name: 42, deletedAt: 5 });
  await purgeDeleted(book, new Map(), 6);
  expect(await asideRows(book)).toMatchObject([{ table: "cars", row: { name: 42, deletedAt: 5 } }]);
});

test("a bad digest is made anew from its session, and nothing is set aside for it", async () => {
  const { book, sessionId } = await aFullLogbook();
  const digest = await book.digests.get(sessionId);
  await putRaw(book.name, "digests", { ...digest, startedAt: "never" });
  expect(await book.digests.get(sessionId)).toBeUndefined();
  await setAside(book, book.unreadable.get());
  expect(await book.digests.get(sessionId)).toMatchObject({ sessionId, staleSince: expect.any(Number) });
  expect(await asideRows(book)).toEqual([]);
});

test("a backup holds what is set aside, found just now or earlier; restored or merged it is set aside there, once", async () => {
  const { book } = await withDamage("cars", "", { name: 42 });
  const rows = await dump(book);
  expect(rows.aside).toHaveLength(1);
  const text = await writeBackup(rows, { title: "t", schema: newestSchema, sha256: browserSha256() });
  const read = await readBackup(text, { lowest: 1, newest: newestSchema, sha256: browserSha256() });
  if (!read.ok) throw new Error(read.problem.wrong);
  expect(read.backup.isVerified).toBe(true);
  const taken = withAside(read.backup.tables, checkRows(read.backup.tables));
  // The combo of the car hangs in the air, with all that hangs on it, and goes aside as well.
  const restored = await restoreAsNew(taken.rows, { name: "with-aside", ...tools });
  expect((await asideRows(restored)).map(({ table }) => table)).toEqual(
    expect.arrayContaining(["cars", "combos", "sessions", "runs"]),
  );
  const all = (await dump(restored)).aside ?? [];
  expect(all).toContainEqual(rows.aside?.[0]);

  await setAside(book, book.unreadable.get());
  expect((await dump(book)).aside).toEqual(rows.aside);
  await mergeInto(book, taken.rows, "a copy");
  const merged = await asideRows(book);
  await mergeInto(book, taken.rows, "a copy");
  expect(await asideRows(book)).toEqual(merged);
  const [car] = merged;
  if (car === undefined) throw new Error("nothing aside");
  await dropAside(book, car);
  await mergeInto(book, taken.rows, "a copy");
  expect(await asideRows(book)).toEqual(merged.slice(1));
});

test("a row set aside is put back as the full check allows, with what it belongs to, and not over another version", async () => {
  const { book, whole } = await withDamage("combos", "", { carId: 42 });
  await recentSessions(book, 1, Number.MAX_SAFE_INTEGER);
  await dump(book);
  await setAside(book, book.unreadable.get());
  const [aside] = await asideRows(book);
  if (aside?.row === undefined) throw new Error("nothing aside");
  const { row } = aside;
  expect(asideFault(aside, row)).toMatchObject({ field: "carId" });
  const put = (patch: object) => mendAside(book, { aside, row: { ...row, ...patch } });
  await expect(put({})).rejects.toMatchObject({ code: "invalid", message: expect.stringContaining("carId") });
  await expect(put({ carId: book.newId() })).rejects.toMatchObject({
    message: "Not put back: its car is not there.",
  });
  await put({ carId: whole["carId"] });
  // It has seen the version that was damaged, whose stamp stands among those it had.
  const { had = [], ...fields } = whole as { readonly had?: readonly number[] };
  expect(await book.tables.combos.get(whole.id)).toMatchObject({
    ...fields,
    had: expect.arrayContaining([...had]),
    updatedAt: expect.any(Number),
  });
  await expect(put({ carId: whole["carId"] })).rejects.toMatchObject({ code: expect.any(String) });
  expect(await asideRows(book)).toEqual([]);
});

test("a session put back brings the runs that went aside because it was not there", async () => {
  const { book, clock } = await aFullLogbook();
  const rows = await dump(book);
  const file = { ...rows, sessions: rows.sessions.map((row) => ({ ...row, date: "0000-00-00" })) };
  const checked = withAside(file, checkRows(file));
  const restored = await restoreAsNew(checked.rows, {
    name: "put-back",
    clock: clock.now,
    newId: book.newId,
  });
  const [aside, ...others] = (await asideRows(restored)).sort((a) => (a.table === "sessions" ? -1 : 1));
  if (aside?.row === undefined) throw new Error("nothing aside");
  expect(others.map(({ table }) => table)).toEqual(rows.runs.map(() => "runs"));
  await mendAside(restored, { aside, row: { ...aside.row, date: rows.sessions[0]?.date } });
  expect(await asideRows(restored)).toEqual([]);
  const now = await dump(restored);
  expect(now.sessions.map(({ id }) => id)).toEqual(rows.sessions.map(({ id }) => id));
  expect(now.runs.map(({ laps }) => laps)).toEqual(rows.runs.map(({ laps }) => laps));
});

test("a combo that names a track as its car is put back by naming a car, with all that went aside for it", async () => {
  const { book, clock } = await aFullLogbook();
  const rows = await dump(book);
  const [combo, ...combos] = rows.combos;
  const [car] = rows.cars;
  const [track] = rows.tracks;
  if (combo === undefined || car === undefined || track === undefined) throw new Error("no combo");
  const file = { ...rows, combos: [{ ...combo, carId: track.id }, ...combos] };
  const checked = withAside(file, checkRows(file));
  const restored = await restoreAsNew(checked.rows, {
    name: "wrong-car",
    clock: clock.now,
    newId: book.newId,
  });
  const all = await asideRows(restored);
  const aside = all.find(({ table }) => table === "combos");
  const run = all.find(({ table }) => table === "runs");
  if (aside?.row === undefined || run?.row === undefined) throw new Error("nothing aside");
  expect(all.length).toBeGreaterThan(3);
  expect(await asideLinkFault(restored, aside, aside.row)).toMatchObject({
    why: "its car is a row of another table",
    link: { field: "carId", to: "cars" },
    isNamedAside: false,
  });
  expect(await asideLinkFault(restored, run, run.row)).toMatchObject({
    link: { to: "sessions" },
    isNamedAside: true,
  });
  await expect(mendAside(restored, { aside, row: aside.row })).rejects.toMatchObject({
    message: "Not put back: its car is a row of another table.",
  });
  expect(await namedChoices(restored, "cars")).toMatchObject(rows.cars.map(({ id, name }) => ({ id, name })));
  const row = { ...aside.row, carId: car.id };
  expect(await asideLinkFault(restored, aside, row)).toBeUndefined();
  await mendAside(restored, { aside, row });
  expect(await asideRows(restored)).toEqual([]);
  const now = await dump(restored);
  for (const table of ["combos", "sessions", "runs"] as const)
    expect(now[table].map(({ id }) => id)).toEqual(rows[table].map(({ id }) => id));
});

test("a row put back may be without its rig, but not name another table's row as it, nor bear another row's id", async () => {
  const { book, clock } = await aFullLogbook();
  const rows = await dump(book);
  const [run] = rows.runs;
  if (run === undefined) throw new Error("no run");
  const put = async (patch: object) => {
    const file = { ...rows, runs: [{ ...run, laps: [], ...patch, kind: "none" }] };
    const checked = withAside(file, checkRows(file));
    const name = `put-${JSON.stringify(patch)}`;
    const restored = await restoreAsNew(checked.rows, { name, clock: clock.now, newId: book.newId });
    const aside = (await asideRows(restored)).find(({ table }) => table === "runs");
    if (aside?.row === undefined) throw new Error("nothing aside");
    await mendAside(restored, { aside, row: { ...aside.row, kind: "pace" } });
  };
  await put({ rigId: book.newId() });
  await expect(put({ rigId: run.sessionId })).rejects.toMatchObject({
    message: "Not put back: its rig is a row of another table.",
  });
  await expect(put({ id: run.sessionId })).rejects.toMatchObject({
    message: "Not put back: its id is that of another row.",
  });
  await expect(
    put({ laps: [{ ...aLap(84_000), id: run.sessionId, n: 1, createdAt: 1, updatedAt: 1 }] }),
  ).rejects.toMatchObject({
    message: "Not put back: a lap with the id of a row.",
  });
});

test("rows are read raw at whatever version they stand, and what JSON does not hold becomes its text", async () => {
  const { book, sessionId } = await aFullLogbook();
  const rows = await dump(book);
  book.close();
  await putRaw(book.name, "sessions", { ...rows.sessions[0], note: Number.NaN, when: new Date(0) });
  const raw = await rawRows(book.name);
  expect(raw.schema).toBe(newestSchema);
  expect(raw.unreadable).toEqual([]);
  expect(raw.rows.sessions.map((row): unknown => row)).toEqual([
    { ...rows.sessions[0], note: "NaN", when: "1970-01-01T00:00:00.000Z", id: sessionId },
  ]);
  for (const table of tableNames.filter((name) => name !== "sessions"))
    expect(canonicalText(raw.rows[table])).toBe(canonicalText(rows[table]));
  await expect(rawRows("nowhere")).rejects.toMatchObject({ code: "gone" });
});

test("a time zone the checker takes is read, a fixed distance from UTC among them", async () => {
  for (const zone of ["+02:00", "-0330", "Etc/GMT+12", "Europe/Berlin", `A${"b".repeat(63)}`, "UTC"]) {
    const { book, whole } = await withDamage("sessions", "", { zone });
    expect(checkRow("sessions", { ...whole, zone }), zone).toMatchObject({ ok: true });
    expect((await dump(book)).aside, zone).toBeUndefined();
    expect(await book.tables.sessions.get(whole.id), zone).toMatchObject({ zone });
  }
});

test("stamps that cannot be right take no row out of sight, and stop neither a merge nor a deletion", async () => {
  for (const had of [5, {}, null, ["x"], [Number.NaN]]) {
    const { book, whole } = await withDamage("sessions", "", { had, disproved: had });
    const rows = await dump(book);
    expect(rows.aside).toBeUndefined();
    expect(rows.sessions.find(({ id }) => id === whole.id)).toEqual({
      ...whole,
      had: undefined,
    });
    const run = rows.runs.find(({ laps }) => laps.length > 0) as Run;
    await putRaw(book.name, "runs", { ...run, laps: run.laps.map((lap) => ({ ...lap, had })) });
    await mergeInto(book, rows, "file");
    const timesOf = ({ runs }: AllRows) => runs.map(({ laps }) => laps.map(({ ms }) => ms));
    expect(timesOf(await dump(book))).toEqual(timesOf(rows));
    await deleteSession(book, { sessionId: whole.id });
    expect((await book.tables.sessions.get(whole.id))?.deletedAt).toBeDefined();
  }
});

test("an instant that no calendar can tell is set aside like a date that is none", async () => {
  for (const at of [8.64e15, -8.64e15, 1e300]) {
    const { book, whole } = await withDamage("sessions", "", { updatedAt: at });
    const { aside, sessions } = await dump(book);
    expect(aside).toMatchObject([{ why: "updatedAt: not an instant" }]);
    expect(sessions.map(({ id }) => id)).not.toContain(whole.id);
  }
});

test("a damaged row among those set aside is named and judged all the same", async () => {
  const { book } = await aFullLogbook();
  const right = {
    id: "0123456789abcdef",
    table: "cars",
    schema: newestSchema,
    why: "name: not a text",
    row: { name: 5 },
  };
  for (const patch of [
    { table: 5 },
    { table: "nowhere" },
    { table: "toString" },
    { table: "digests" },
    { row: null },
    { row: "x" },
    { row: [] },
    { why: {} },
    { schema: "new" },
  ]) {
    await putRaw(book.name, "aside", { ...right, ...patch });
    const [aside] = await asideRows(book);
    if (aside?.row === undefined) throw new Error(`not among those set aside: ${JSON.stringify(patch)}`);
    expect(asideThing(aside), JSON.stringify(patch)).not.toBe("");
    expect(aside.why, JSON.stringify(patch)).toBeTypeOf("string");
    expect(asideFault(aside, aside.row), JSON.stringify(patch)).toMatchObject({ why: expect.any(String) });
    await expect(mendAside(book, { aside, row: aside.row })).rejects.toMatchObject({ code: "invalid" });
  }
});
