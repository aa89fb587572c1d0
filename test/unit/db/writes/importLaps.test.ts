import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, checkRows, dump, type ImportedSession, importLaps, importOutlook, undoChange } from "#db";
import { lapsInOrder } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const settings = { kind: "pace", effort: "full", surface: "dry", note: "" } as const;
const laps = (...times: readonly number[]) =>
  times.map((ms) => ({ lap: { ms, decimals: 3, source: "imported" as const, remarks: [] } }));

const aSession = (
  id: string,
  times: readonly number[],
  fields: Partial<ImportedSession> = {},
): ImportedSession => ({
  id,
  car: "Club hatch",
  track: "Marlow Fen",
  layout: "",
  date: "2026-03-10",
  startedAt: Date.UTC(2026, 2, 10, 11),
  isTimeOfDayKnown: false,
  zone: "Europe/Berlin",
  runs: [{ settings, laps: laps(...times) }],
  ...fields,
});

test("a table becomes sessions by date and combo, all undone at once", async () => {
  const { book } = await aLogbook();
  const sessions = [
    aSession(book.newId(), [83_456, 83_900]),
    aSession(book.newId(), [91_000], {
      car: "formula trainer",
      date: "2026-03-11",
      layout: "short",
      sectors: 3,
    }),
  ];
  const change = await importLaps(book, { sessions, takesKnown: false });
  expect(change.what).toBe("3 laps imported in 2 sessions");
  const rows = await dump(book);
  expect(checkRows(rows).bad).toEqual([]);
  expect(
    rows.sessions.map(({ date, isTimeOfDayKnown, endedAt }) => [
      date,
      isTimeOfDayKnown,
      endedAt !== undefined,
    ]),
  ).toEqual([
    ["2026-03-10", false, true],
    ["2026-03-11", false, true],
  ]);
  expect(
    rows.runs.map(({ laps: own }) => own.map(({ n, ms, decimals, source }) => [n, ms, decimals, source])),
  ).toEqual([
    [
      [1, 83_456, 3, "imported"],
      [2, 83_900, 3, "imported"],
    ],
    [[1, 91_000, 3, "imported"]],
  ]);
  expect(rows.tracks).toHaveLength(1);
  expect(rows.layouts.map(({ name, sectors }) => [name, sectors])).toEqual([
    ["", undefined],
    ["short", 3],
  ]);

  const back = await undoChange(book, change);
  expect(back.skipped).toEqual([]);
  const after = await dump(book);
  for (const table of ["cars", "tracks", "layouts", "combos", "sessions", "runs"] as const)
    expect(after[table].filter(({ deletedAt }) => deletedAt === undefined)).toEqual([]);
});

test("names that differ in case and spaces are the ones that are there", async () => {
  const { book, comboId } = await anOpenSession();
  await importLaps(book, {
    sessions: [aSession(book.newId(), [83_456], { track: "marlow  FEN" })],
    takesKnown: false,
  });
  expect((await dump(book)).combos.map(({ id }) => id)).toEqual([comboId]);
});

test("laps that are there already are left out, and the others of their evening join it", async () => {
  const { book, runId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_900) });
  const session = aSession(book.newId(), [83_456, 83_900, 83_200, 83_456]);
  const outlook = await importOutlook(book, [session, aSession(book.newId(), [70_000], { car: "New one" })]);
  expect(outlook.known.get(session.id)).toBe(2);
  expect(outlook).toMatchObject({ newCars: ["New one"], newTracks: [] });
  const change = await importLaps(book, { sessions: [session], takesKnown: false });
  expect(change.what).toBe("2 laps imported in 1 session");
  const rows = await dump(book);
  expect(rows.sessions).toHaveLength(1);
  expect(rows.runs.flatMap(lapsInOrder).map(({ ms }) => ms)).toEqual([83_456, 83_900, 83_200, 83_456]);
  const again = await importLaps(book, { sessions: [{ ...session, id: book.newId() }], takesKnown: false });
  expect(again.edits).toEqual([]);
  expect((await undoChange(book, change)).skipped).toEqual([]);
  expect((await dump(book)).runs.flatMap(lapsInOrder).map(({ ms }) => ms)).toEqual([83_456, 83_900]);
});

test("laps that count as more than is shown are there, whether a table holds all of it or what older ones did", async () => {
  const { book, runId } = await anOpenSession();
  const there = [
    { ms: 83_420, decimals: 1 },
    { ms: 83_400, decimals: 1 },
    { ms: 84_550, decimals: 0 },
  ];
  for (const time of there) await addLap(book, { runId, id: book.newId(), lap: aLap(time.ms, time) });
  const inTable = async (times: readonly { readonly ms: number; readonly decimals: number }[]) => {
    const all = times.map((time) => ({ lap: { ...time, source: "typed" as const, remarks: [] } }));
    const session = aSession(book.newId(), [], { runs: [{ settings, laps: all }] });
    return (await importOutlook(book, [session])).known.get(session.id) ?? 0;
  };
  expect(await inTable(there)).toBe(3);
  expect(await inTable(there.toReversed())).toBe(3);
  const shown = [
    { ms: 83_400, decimals: 1 },
    { ms: 83_400, decimals: 1 },
    { ms: 84_000, decimals: 0 },
  ];
  expect(await inTable(shown)).toBe(3);
  expect(await inTable([...shown, { ms: 83_400, decimals: 1 }])).toBe(3);
  expect(
    await inTable([
      { ms: 83_430, decimals: 1 },
      { ms: 83_440, decimals: 1 },
    ]),
  ).toBe(1);
  expect(await inTable([{ ms: 83_400, decimals: 2 }])).toBe(1);
  expect(await inTable([{ ms: 84_500, decimals: 1 }])).toBe(0);
});

test("laps that are there are taken again when the driver says so, as a session of its own", async () => {
  const { book, runId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_456) });
  await importLaps(book, { sessions: [aSession(book.newId(), [83_456])], takesKnown: true });
  expect((await dump(book)).sessions).toHaveLength(2);
});

test("the same import asked for twice is stored once", async () => {
  const { book } = await aLogbook();
  const sessions = [aSession(book.newId(), [83_456])];
  await Promise.all([1, 2].map(() => importLaps(book, { sessions, takesKnown: true })));
  expect((await dump(book)).runs).toHaveLength(1);
});

test("two sessions of one day in a table stay two, though a time stands in both", async () => {
  const { book } = await aLogbook();
  const sessions = [aSession(book.newId(), [83_456]), aSession(book.newId(), [83_456])];
  const change = await importLaps(book, { sessions, takesKnown: false });
  expect(change.what).toBe("2 laps imported in 2 sessions");
});

test("laps never join a guest's run", async () => {
  const { book } = await aLogbook();
  const guest = aSession(book.newId(), [83_456], {
    runs: [{ settings: { ...settings, guest: "Ada" }, laps: laps(83_456) }],
  });
  await importLaps(book, { sessions: [guest], takesKnown: false });
  await importLaps(book, { sessions: [aSession(book.newId(), [83_456, 84_000])], takesKnown: false });
  const { runs } = await dump(book);
  expect(runs.map((run) => [run.guest, lapsInOrder(run).map(({ ms }) => ms)])).toEqual([
    ["Ada", [83_456]],
    [undefined, [84_000]],
  ]);
});

test("a row that the book would not take stops the whole import", async () => {
  const { book } = await aLogbook();
  const sessions = [
    aSession(book.newId(), [83_456]),
    aSession(book.newId(), [1], { note: "x".repeat(20_001) }),
  ];
  await expect(importLaps(book, { sessions, takesKnown: false })).rejects.toThrow(
    /^Nothing imported: sessions, note/,
  );
  expect((await dump(book)).cars).toEqual([]);
});
