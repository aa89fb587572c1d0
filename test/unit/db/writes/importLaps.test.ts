import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  checkRows,
  deleteLap,
  deleteSession,
  dump,
  editRun,
  type ImportedSession,
  importLaps,
  importOutlook,
  undoChange,
} from "#db";
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
  track: "Varnholt Ring",
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
    sessions: [aSession(book.newId(), [83_456], { track: "varnholt  RING" })],
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

test("a session of a table is stored with all that stands in it, and ends with its laps where its start is known", async () => {
  const { book } = await aLogbook();
  const startedAt = Date.UTC(2026, 2, 10, 19);
  const driven = { startedAt, isTimeOfDayKnown: true };
  const said = { focus: "kerbs", note: "windy", conditions: "cold" } as const;
  const noTime = { lap: { source: "imported" as const, remarks: [] } };
  const runs = [
    { settings, laps: [...laps(84_000, 85_000), noTime] },
    { settings, laps: [] },
    { settings: { ...settings, kind: "drill" as const, tyres: "soft" }, laps: laps(86_000) },
  ];
  await importLaps(book, {
    sessions: [aSession(book.newId(), [], { ...driven, ...said, runs })],
    takesKnown: false,
  });
  const rows = await dump(book);
  const endedAt = startedAt + 84_000 + 85_000 + 86_000;
  expect(rows.sessions).toMatchObject([{ ...driven, ...said, endedAt, zone: "Europe/Berlin" }]);
  expect(rows.runs.toSorted((a, b) => a.n - b.n)).toMatchObject([
    { n: 1, kind: "pace", startedAt, endedAt, laps: [{ n: 1 }, { n: 2 }, { n: 3 }] },
    { n: 2, kind: "drill", tyres: "soft", startedAt, endedAt, laps: [{ n: 1 }] },
  ]);
  expect(rows.runs).toHaveLength(2);
});

test("a session without a time of day ends when it begins, is free, and has no conditions that nobody wrote", async () => {
  const { book, clock } = await aLogbook();
  const session = aSession(book.newId(), [84_000]);
  const change = await importLaps(book, { sessions: [session], takesKnown: false });
  expect(change.what).toBe("1 lap imported in 1 session");
  const [stored] = (await dump(book)).sessions;
  expect(stored).toMatchObject({
    id: session.id,
    startedAt: session.startedAt,
    endedAt: session.startedAt,
    focus: "free",
    note: "",
    createdAt: clock.now(),
  });
  expect(stored).not.toHaveProperty("conditions");
});

test("of a session whose laps are all there nothing is stored, and a session of one id only once", async () => {
  const { book } = await aLogbook();
  const session = aSession(book.newId(), [84_000]);
  await importLaps(book, { sessions: [session], takesKnown: false });
  const before = await dump(book);
  for (const [sessions, takesKnown] of [
    [[session], true],
    [[{ ...session, id: book.newId() }], false],
    [[aSession(book.newId(), [], { runs: [] })], true],
  ] as const)
    expect(await importLaps(book, { sessions, takesKnown })).toEqual({
      what: "0 laps imported in 0 sessions",
      edits: [],
    });
  expect(await dump(book)).toEqual(before);
});

test("new laps of an evening go to the like run at its place, and else to runs behind the last one", async () => {
  const { book } = await aLogbook();
  const drill = { ...settings, kind: "drill" as const };
  const first = aSession(book.newId(), [], {
    runs: [
      { settings, laps: laps(84_000) },
      { settings, laps: laps(85_000) },
    ],
  });
  await importLaps(book, { sessions: [first], takesKnown: false });
  const [begun] = (await dump(book)).sessions;
  const second = aSession(book.newId(), [], {
    runs: [
      { settings, laps: laps(84_000, 84_100, 84_200) },
      { settings: drill, laps: laps(85_000, 85_100) },
      { settings, laps: laps(86_000) },
      { settings, laps: laps() },
    ],
  });
  const change = await importLaps(book, { sessions: [second], takesKnown: false });
  expect(change.what).toBe("4 laps imported in 1 session");
  const runs = (await dump(book)).runs.toSorted((a, b) => a.n - b.n);
  expect(runs.map((run) => [run.n, run.kind, lapsInOrder(run).map(({ n, ms }) => [n, ms])])).toEqual([
    [
      1,
      "pace",
      [
        [1, 84_000],
        [2, 84_100],
        [3, 84_200],
      ],
    ],
    [2, "pace", [[1, 85_000]]],
    [3, "drill", [[1, 85_100]]],
    [4, "pace", [[1, 86_000]]],
  ]);
  for (const run of runs.slice(2))
    expect(run).toMatchObject({ sessionId: first.id, startedAt: begun?.startedAt, endedAt: begun?.endedAt });
  expect((await dump(book)).sessions).toHaveLength(1);
});

test("laps go behind the last place of their run, also a deleted lap's, and never beside a summary", async () => {
  const { book, runId } = await anOpenSession();
  const ids = [book.newId(), book.newId()] as const;
  for (const id of ids) await addLap(book, { runId, id, lap: aLap(84_000) });
  await deleteLap(book, { runId, lapId: ids[1] });
  await importLaps(book, { sessions: [aSession(book.newId(), [84_000, 84_100])], takesKnown: false });
  const placesOf = async () =>
    (await dump(book)).runs.map((run) => [run.n, lapsInOrder(run).map(({ n, ms }) => [n, ms])]);
  expect(await placesOf()).toEqual([
    [
      1,
      [
        [1, 84_000],
        [3, 84_100],
      ],
    ],
  ]);
  await editRun(book, { runId, patch: { summary: { laps: 9 } } });
  await importLaps(book, { sessions: [aSession(book.newId(), [84_000, 84_200])], takesKnown: false });
  expect((await placesOf()).toSorted()).toEqual([
    [
      1,
      [
        [1, 84_000],
        [3, 84_100],
      ],
    ],
    [2, [[1, 84_200]]],
  ]);
});

test("laps of another evening, or of one that was deleted, are no reason to leave any out", async () => {
  const { book, runId, sessionId } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(84_000) });
  const other = aSession(book.newId(), [84_000], { date: "2026-03-11" });
  expect((await importLaps(book, { sessions: [other], takesKnown: false })).what).toBe(
    "1 lap imported in 1 session",
  );
  await deleteSession(book, { sessionId });
  const again = aSession(book.newId(), [84_000]);
  expect((await importLaps(book, { sessions: [again], takesKnown: false })).what).toBe(
    "1 lap imported in 1 session",
  );
});

test("combos told apart by one name each are stored each, and of one combo there is one, with its sectors", async () => {
  const { book } = await aLogbook();
  const names = [
    { car: "A", track: "B", layout: "" },
    { car: "A", track: "B", layout: "C" },
    { car: "A", track: "C", layout: "" },
    { car: "B", track: "B", layout: "" },
    { car: "A", track: "B", layout: "", sectors: 3 },
  ];
  const sessions = names.map((one) => aSession(book.newId(), [84_000], one));
  await importLaps(book, { sessions, takesKnown: false });
  const rows = await dump(book);
  expect(rows.combos).toHaveLength(4);
  expect(new Set(rows.sessions.map(({ comboId }) => comboId)).size).toBe(4);
  expect(rows.layouts.every((layout) => !("sectors" in layout))).toBe(true);
});
