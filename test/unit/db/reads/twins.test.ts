import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addCombo, joinTracks, type Logbook, twins } from "#db";
import { aLogbook } from "../../../support/aLogbook.ts";

/** Puts rows as another device may have made them: each with its own time of birth. */
async function put(book: Logbook, table: "cars" | "tracks" | "layouts" | "combos", rows: readonly object[]) {
  const ids = rows.map(() => book.newId());
  await book.database
    .table(table)
    .bulkAdd(rows.map((row, at) => ({ id: ids[at], createdAt: 1, updatedAt: 1, ...row })));
  const [a = "", b = "", c = ""] = ids;
  return [a, b, c] as const;
}

test("two cars of one name are twins, the elder of them stays, and its way of writing is the name", async () => {
  const { book } = await aLogbook();
  const [young, old] = await put(book, "cars", [
    { name: "CLUB hatch", createdAt: 900 },
    { name: "Club hatch", createdAt: 100 },
    { name: "Junior", createdAt: 50 },
  ]);
  expect(await twins(book)).toEqual([
    { kind: "car", keepId: old, dropId: young, name: "Club hatch", otherName: "CLUB hatch", isSure: true },
  ]);
});

test("of two made at the same instant every device chooses the same one", async () => {
  const { book } = await aLogbook();
  const [first, second] = await put(book, "cars", [{ name: "Junior" }, { name: "junior" }]);
  const { book: other } = await aLogbook();
  const rows = await book.database.table("cars").toArray();
  await other.database.table("cars").bulkAdd(rows.toReversed());
  for (const device of [book, other])
    expect(await twins(device)).toMatchObject([{ keepId: first, dropId: second }]);
});

test("names that differ in accents may be twins and only the driver knows; other names are none", async () => {
  const { book } = await aLogbook();
  const [plain, accent] = await put(book, "tracks", [
    { name: "Cafe Ring", createdAt: 1 },
    { name: "Café Ring", createdAt: 2 },
    { name: "Cafe Hill", createdAt: 3 },
  ]);
  expect(await twins(book)).toEqual([
    {
      kind: "track",
      keepId: plain,
      dropId: accent,
      name: "Cafe Ring",
      otherName: "Café Ring",
      isSure: false,
    },
  ]);
});

test("three of one name are two pairs, both with the eldest", async () => {
  const { book } = await aLogbook();
  const [a, b, c] = await put(book, "cars", [
    { name: "Junior", createdAt: 3 },
    { name: "Junior", createdAt: 1 },
    { name: "Junior", createdAt: 2 },
  ]);
  expect((await twins(book)).map(({ keepId, dropId }) => [keepId, dropId])).toEqual([
    [b, c],
    [b, a],
  ]);
});

test("what is deleted has no twin", async () => {
  const { book } = await aLogbook();
  await put(book, "cars", [{ name: "Junior" }, { name: "Junior", deletedAt: 5 }]);
  expect(await twins(book)).toEqual([]);
});

test("layouts are twins on one track only, and are called by it", async () => {
  const { book } = await aLogbook();
  const [fen, mill] = await put(book, "tracks", [{ name: "Varnholt Ring" }, { name: "Old Mill" }]);
  const layout = { corners: [] };
  await put(book, "layouts", [
    { ...layout, trackId: fen, name: "Short" },
    { ...layout, trackId: mill, name: "Short" },
    { ...layout, trackId: fen, name: "Long" },
  ]);
  expect(await twins(book)).toEqual([]);
  const [twin] = await put(book, "layouts", [{ ...layout, trackId: mill, name: "short", createdAt: 5 }]);
  expect(await twins(book)).toMatchObject([
    { kind: "layout", dropId: twin, name: "Old Mill, Short", otherName: "Old Mill, short", isSure: true },
  ]);
});

test("two combos of one car and one layout are twins, whatever else is the same, and called by both", async () => {
  const { book } = await aLogbook();
  const fen = { name: "Varnholt Ring" };
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: fen });
  await addCombo(book, { car: { name: "Junior" }, track: fen });
  await addCombo(book, { car: { name: "Club hatch" }, track: fen, layout: { name: "Short" } });
  expect(await twins(book)).toEqual([]);
  const row = await book.tables.combos.get(comboId);
  const [elder] = await put(book, "combos", [{ carId: row?.carId, layoutId: row?.layoutId }]);
  const name = "Varnholt Ring · Club hatch";
  expect(await twins(book)).toEqual([
    { kind: "combo", keepId: elder, dropId: comboId, name, otherName: name, isSure: true },
  ]);
});

test("twins of tracks and cars come before those of what hangs on them, and joining them leaves none", async () => {
  const { book } = await aLogbook();
  const car = { name: "Club hatch" };
  await addCombo(book, { car, track: { name: "Cafe Ring" } });
  await addCombo(book, { car, track: { name: "Café Ring" } });
  await put(book, "cars", [{ name: "club hatch", createdAt: 1 }]);
  const found = await twins(book);
  expect(found.map(({ kind }) => kind)).toEqual(["car", "track"]);
  const track = found[1];
  await joinTracks(book, { keepId: track?.keepId ?? "", dropId: track?.dropId ?? "" });
  expect((await twins(book)).map(({ kind }) => kind)).toEqual(["car"]);
});

test("combos whose track is gone are still told apart, without a name that is not known", async () => {
  const { book } = await aLogbook();
  const [carId] = await put(book, "cars", [{ name: "Junior" }]);
  const [layoutId] = await put(book, "layouts", [{ trackId: book.newId(), name: "Short", corners: [] }]);
  await put(book, "combos", [
    { carId, layoutId },
    { carId, layoutId },
    { carId: book.newId(), layoutId: book.newId() },
  ]);
  expect(await twins(book)).toMatchObject([{ kind: "combo", name: " · Junior" }]);
});
