import { expect, test } from "vitest";
import { markOfRow, marksOf, type PartWanted, partOf } from "#db";
import { type AllRows, everyTable, type Id, type TableName, tableNames } from "#domain";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const { cars, tracks, layouts, combos, pages, sessions, runs, cornerReviews, rigTests, targets } = wholeRows;
const { rigTest: _, ...ofNoTest } = runs;
const on = { comboId: idAt(50) };
const nearRig = { ...wholeRows.rigs, id: idAt(55) };

/** The whole rows, and a second combo of the same track with a session, a page and a run of its own. */
const rows: AllRows = {
  ...(everyTable((table) => [wholeRows[table]]) as unknown as AllRows),
  cars: [cars, { ...cars, id: idAt(51) }],
  combos: [combos, { ...combos, id: idAt(50), carId: idAt(51) }],
  pages: [pages, { ...pages, ...on, id: idAt(52) }],
  sessions: [sessions, { ...sessions, ...on, id: idAt(53) }],
  runs: [runs, { ...ofNoTest, ...on, id: idAt(54), sessionId: idAt(53), rigId: idAt(55), laps: [] }],
  rigs: [wholeRows.rigs, nearRig],
};
const sent = (wanted: PartWanted) => {
  const part = partOf(rows, wanted);
  return Object.fromEntries(
    tableNames.flatMap((table: TableName) =>
      part[table].length === 0 ? [] : [[table, part[table].map(({ id }) => Number(id.slice(-3)))]],
    ),
  );
};
const these = (...ids: readonly Id[]) => sent({ kind: "rows", ids: new Set(ids) });
const home = { cars: [2], tracks: [3], layouts: [4], combos: [5] };

test("a session is sent with its runs, its reviews of corners, its pages, and all that each of them hangs on", () => {
  expect(sent({ kind: "session", sessionId: sessions.id })).toEqual({
    ...home,
    pages: [6],
    sessions: [8],
    runs: [9],
    rigs: [10],
    rigTests: [13],
    cornerReviews: [14],
  });
  expect(sent({ kind: "session", sessionId: idAt(53) })).toEqual({
    ...home,
    cars: [51],
    combos: [50],
    pages: [52],
    sessions: [53],
    runs: [54],
    rigs: [55],
  });
  expect(sent({ kind: "session", sessionId: idAt(99) })).toEqual({});
  const bare = { ...rows, runs: [], cornerReviews: [] };
  const alone = partOf(bare, { kind: "session", sessionId: sessions.id });
  expect(alone.sessions).toEqual([sessions]);
  expect(alone.combos).toEqual([combos]);
});

test("rows that are named are sent with all they hang on, and no row that hangs on them", () => {
  expect(these(cars.id)).toEqual({ cars: [2] });
  expect(these(targets.id)).toEqual({ ...home, targets: [11] });
  expect(these(wholeRows.forecasts.id)).toEqual({ ...home, targets: [11], forecasts: [12] });
});

test("what brings a session brings the pages of its combo, and what that brings", () => {
  // A test of rigs names its runs, and so their session.
  expect(these(rigTests.id)).toEqual({
    ...home,
    pages: [6],
    sessions: [8],
    runs: [9],
    rigs: [10],
    rigTests: [13],
  });
  expect(these(cornerReviews.id)).toEqual({ ...home, pages: [6], sessions: [8], cornerReviews: [14] });
});

test("what is not as it was sent last is sent, and what was never sent", () => {
  const all = marksOf(rows);
  expect(sent({ kind: "unsent", sent: all })).toEqual({});
  const without = new Map(all);
  without.delete(layouts.id);
  expect(sent({ kind: "unsent", sent: without })).toEqual({ tracks: [3], layouts: [4] });
  expect(sent({ kind: "unsent", sent: new Map(all).set(tracks.id, 1) })).toEqual({ tracks: [3] });
  expect(Object.keys(sent({ kind: "unsent", sent: new Map() }))).toEqual([...tableNames]);
});

test("a mark is another one when a lap or a stamp is, and the same whatever the order of fields", () => {
  const mark = markOfRow(runs);
  expect(markOfRow(Object.fromEntries(Object.entries(runs).toReversed()) as typeof runs)).toBe(mark);
  expect(markOfRow({ ...runs, laps: [{ ...wholeLap, ms: 83_457 }] } as typeof runs)).not.toBe(mark);
  expect(markOfRow({ ...runs, updatedAt: runs.updatedAt + 1 })).not.toBe(mark);
  expect(marksOf(rows).get(runs.id)).toBe(mark);
});
