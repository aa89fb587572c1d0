import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  combosWithNames,
  deletePage,
  dump,
  editCorners,
  editLayout,
  pages,
  renameCar,
  renameLayout,
  renameTrack,
  turnPage,
  undoChange,
} from "#db";
import { aLogbook } from "../../../support/aLogbook.ts";

const hatch = { name: "Club hatch" };
const fen = { name: "Varnholt Ring" };

async function some() {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: hatch, track: fen, layout: { name: "Short" } });
  await addCombo(book, { car: { name: "Junior" }, track: fen, layout: { name: "Long" } });
  await addCombo(book, { car: hatch, track: { name: "Old Mill" }, layout: { name: "Short" } });
  const { cars, tracks, layouts } = await dump(book);
  const idOf = (name: string, at = 0) =>
    [...cars, ...tracks, ...layouts].filter((row) => row.name === name)[at]?.id ?? "";
  return { book, comboId, idOf };
}

test("a new name is stored without the spaces around it, said, and taken back", async () => {
  const { book, idOf } = await some();
  const change = await renameCar(book, { id: idOf("Junior"), name: "  Junior II " });
  expect(change.what).toBe("Name of the car changed");
  expect((await dump(book)).cars.map(({ name }) => name).toSorted()).toEqual(["Club hatch", "Junior II"]);
  await undoChange(book, change);
  expect((await dump(book)).cars.map(({ name }) => name).toSorted()).toEqual(["Club hatch", "Junior"]);
  expect((await renameTrack(book, { id: idOf("Old Mill"), name: "Mill" })).what).toBe(
    "Name of the track changed",
  );
  expect((await renameLayout(book, { id: idOf("Long"), name: "Full" })).what).toBe(
    "Name of the layout changed",
  );
});

test("a name that another one of its kind has is refused by it, and none is given to a car, track or layout", async () => {
  const { book, idOf } = await some();
  const before = await dump(book);
  await expect(renameTrack(book, { id: idOf("Old Mill"), name: "varnholt  RING" })).rejects.toMatchObject({
    code: "invalid",
    message:
      'Name not changed: there is a track "Varnholt Ring" already. Merge the two if they are the same.',
  });
  await expect(renameLayout(book, { id: idOf("Long"), name: "SHORT" })).rejects.toMatchObject({
    message: 'Name not changed: there is a layout "Short" already. Merge the two if they are the same.',
  });
  for (const [rename, id, word] of [
    [renameCar, idOf("Junior"), "car"],
    [renameTrack, idOf("Old Mill"), "track"],
    [renameLayout, idOf("Long"), "layout"],
  ] as const)
    await expect(rename(book, { id, name: " " })).rejects.toMatchObject({
      code: "invalid",
      message: `Nothing was changed: the ${word} needs a name.`,
    });
  expect(await dump(book)).toEqual(before);
});

test("a layout may have the name of another track's, and any row that of a deleted one", async () => {
  const { book, idOf } = await some();
  await renameLayout(book, { id: idOf("Short", 1), name: "Long" });
  await book.database.table("cars").update(idOf("Club hatch"), { deletedAt: 5 });
  await renameCar(book, { id: idOf("Junior"), name: "Club hatch" });
  const names = (await combosWithNames(book)).map(({ track, layout }) => `${track.name}/${layout.name}`);
  expect(names.toSorted()).toEqual(["Old Mill/Long", "Varnholt Ring/Long", "Varnholt Ring/Short"]);
});

test("a combo of things that are there makes none of them anew, and one of things that are gone is refused", async () => {
  const { book, idOf } = await some();
  const before = await dump(book);
  const car = { id: idOf("Junior") };
  const track = { id: idOf("Varnholt Ring") };
  const added = await addCombo(book, { car, track, layout: { id: idOf("Short") } });
  expect(added).toMatchObject({ what: "Combo added", edits: [{ table: "combos" }] });
  const after = await dump(book);
  expect([after.cars, after.tracks, after.layouts]).toEqual([before.cars, before.tracks, before.layouts]);
  for (const [combo, what] of [
    [{ car: { id: book.newId() }, track }, "car"],
    [{ car, track: { id: book.newId() } }, "track"],
    [{ car, track, layout: { id: book.newId() } }, "layout"],
  ] as const)
    await expect(addCombo(book, combo)).rejects.toMatchObject({
      code: "missing",
      message: expect.stringContaining(`the ${what} is no longer there`),
    });
  await expect(addCombo(book, { car, track: { name: "" } })).rejects.toMatchObject({
    message: "Nothing was changed: the track needs a name.",
  });
});

test("what was deleted is made anew under its name", async () => {
  const { book, comboId } = await some();
  for (const table of ["cars", "tracks", "layouts", "combos"])
    await book.database.table(table).toCollection().modify({ deletedAt: 5 });
  const again = await addCombo(book, { car: hatch, track: fen, layout: { name: " Short " }, sectors: 2 });
  expect(again.comboId).not.toBe(comboId);
  expect(again.edits.map(({ table }) => table)).toEqual(["cars", "tracks", "layouts", "combos"]);
  expect(await combosWithNames(book)).toMatchObject([{ layout: { name: "Short", sectors: 2, corners: [] } }]);
});

test("a layout is told from one of the same name on another track", async () => {
  const { book } = await some();
  await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" }, layout: { name: "Long" } });
  expect((await dump(book)).layouts).toHaveLength(4);
});

test("an edit of a layout says what it went over, and one of a corner which it was", async () => {
  const { book, idOf } = await some();
  const layoutId = idOf("Short");
  const seen = (await dump(book)).layouts.find(({ id }) => id === layoutId);
  if (seen === undefined) throw new Error("no layout");
  const first = await editLayout(book, { layoutId, patch: { length: 1800 }, expected: seen });
  expect(first).toMatchObject({ what: "Layout changed" });
  expect(first.overwrote).toBeUndefined();
  const second = await editLayout(book, { layoutId, patch: { length: 1900 }, expected: seen });
  expect(second).toMatchObject({
    what: "Layout changed; it had been changed elsewhere meanwhile",
    overwrote: ["length"],
  });
  expect(
    (await editCorners(book, { layoutId, corners: [{ number: 7, patch: { name: "Mill" } }] })).what,
  ).toBe("Corner 7 added");
  expect((await editCorners(book, { layoutId, corners: [{ number: 7, patch: { radius: 40 } }] })).what).toBe(
    "Corner 7 changed",
  );
  await editCorners(book, { layoutId, corners: [{ number: 3, patch: { direction: "left" } }] });
  expect((await dump(book)).layouts.find(({ id }) => id === layoutId)?.corners).toEqual([
    { number: 3, direction: "left" },
    { number: 7, name: "Mill", radius: 40 },
  ]);
  await expect(
    editCorners(book, { layoutId: book.newId(), corners: [{ number: 7, patch: {} }] }),
  ).rejects.toMatchObject({
    code: "missing",
  });
});

test("a page is turned for the combos that are there, for all of them or none", async () => {
  const { book, comboId } = await some();
  await expect(
    turnPage(book, { comboIds: [comboId, book.newId()], from: 1000, reason: "new" }),
  ).rejects.toMatchObject({ code: "missing" });
  expect(await pages(book)).toEqual([]);
  await book.database.table("combos").update(comboId, { deletedAt: 5 });
  expect((await turnPage(book, { comboIds: "all", from: 1000, reason: "new" })).what).toBe(
    "New page begun for 2 combos: new",
  );
  const turned = await pages(book);
  expect(turned.map((page) => page.comboId)).not.toContain(comboId);
  expect((await deletePage(book, turned[0]?.id ?? "")).what).toBe("Page deleted");
});
