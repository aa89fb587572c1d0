import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  bringBack,
  combosWithNames,
  dump,
  type Logbook,
  runOf,
  sessionOf,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import { comboName } from "#domain";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const on = { date: "2026-03-10", zone: "Europe/Berlin" };
const kart = { car: { name: "Kart" }, track: { name: "Tessemoor" }, layout: { name: "long" } };

/** What there is of each, by name. */
async function named(book: Logbook) {
  const { cars, tracks, layouts } = await dump(book);
  const live = (rows: typeof cars) =>
    rows.filter(({ deletedAt }) => deletedAt === undefined).map(({ name }) => name);
  return {
    cars: live(cars),
    tracks: live(tracks),
    layouts: live(layouts),
    combos: (await combosWithNames(book)).map(comboName),
  };
}

const nothing = { cars: [], tracks: [], layouts: [], combos: [] };
const all = {
  cars: ["Kart"],
  tracks: ["Tessemoor"],
  layouts: ["long"],
  combos: ["Tessemoor, long · Kart"],
};

test("a session starts with its new car, track and layout in one change", async () => {
  const { book } = await aLogbook();
  const { edits } = await startSession(book, { combo: kart, ...on });
  expect(edits.map(({ table }) => table)).toEqual([
    "cars",
    "tracks",
    "layouts",
    "combos",
    "sessions",
    "runs",
  ]);
  expect(await named(book)).toEqual(all);
});

test("nothing of a start is stored where the session cannot be", async () => {
  const { book } = await aLogbook();
  await expect(
    startSession(book, { combo: { ...kart, layout: { id: "gone" } }, ...on }),
  ).rejects.toMatchObject({
    code: "missing",
  });
  expect(await named(book)).toEqual(nothing);
});

test("Undo of a start takes the new car, track and layout with it, and Redo brings all back", async () => {
  const { book } = await aLogbook();
  const started = await startSession(book, { combo: kart, ...on });
  const undone = await undoChange(book, started);
  expect(undone.skipped).toEqual([]);
  expect(await named(book)).toEqual(nothing);
  expect(await sessionOf(book, started.sessionId)).toBeUndefined();

  expect((await undoChange(book, undone)).skipped).toEqual([]);
  expect(await named(book)).toEqual(all);
  expect(await runOf(book, started.runId)).toMatchObject({ sessionId: started.sessionId, n: 1 });
});

test("Undo of a start leaves a car and a layout that were there before", async () => {
  const { book } = await anOpenSession();
  const before = await named(book);
  const [known] = await combosWithNames(book);
  const combo = { car: { name: "Kart" }, track: { id: known?.track.id ?? "" } };
  await undoChange(book, await startSession(book, { combo, ...on }));
  expect(await named(book)).toEqual(before);
});

test("Undo of a start leaves the combo that another session was begun on meanwhile", async () => {
  const { book } = await aLogbook();
  const first = await startSession(book, { combo: kart, ...on });
  const second = await startSession(book, { combo: kart, ...on });
  await undoChange(book, first);
  expect(await sessionOf(book, first.sessionId)).toBeUndefined();
  expect(await sessionOf(book, second.sessionId)).toBeDefined();
  expect(await named(book)).toEqual(all);
});

test("Undo of a start leaves what another combo uses by now, and takes the rest", async () => {
  const { book } = await aLogbook();
  const first = await startSession(book, { combo: kart, ...on });
  await startSession(book, { combo: { car: kart.car, track: { name: "Varnholt Ring" } }, ...on });
  await undoChange(book, first);
  expect(await named(book)).toEqual({
    cars: ["Kart"],
    tracks: ["Varnholt Ring"],
    layouts: [""],
    combos: ["Varnholt Ring · Kart"],
  });
});

test("Undo of a start leaves a combo whose page has been turned since", async () => {
  const { book } = await aLogbook();
  const started = await startSession(book, { combo: kart, ...on });
  const [known] = await combosWithNames(book);
  await turnPage(book, {
    comboIds: [known?.combo.id ?? ""],
    from: book.clock(),
    reason: "new tyre model",
  });
  await undoChange(book, started);
  expect(await named(book)).toEqual(all);
});

test("a session whose start was taken back comes back with its car, track and layout", async () => {
  const { book } = await aLogbook();
  const started = await startSession(book, { combo: kart, ...on });
  await undoChange(book, started);
  await bringBack(book, { table: "sessions", id: started.sessionId });
  expect(await named(book)).toEqual(all);
});
