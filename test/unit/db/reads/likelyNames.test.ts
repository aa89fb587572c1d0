import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addCombo, likelyNames } from "#db";
import { aLogbook } from "../../../support/aLogbook.ts";

async function known() {
  const { book } = await aLogbook();
  await addCombo(book, {
    car: { name: "Club hatch" },
    track: { name: "Café Ring" },
    layout: { name: "Côte" },
  });
  return book;
}

test("names that differ from known ones in accents only are asked about, each once", async () => {
  const book = await known();
  const names = { car: "Club hâtch", track: "Cafe Ring", layout: "Cote" };
  expect(await likelyNames(book, [names, names])).toEqual([
    { kind: "car", name: "Club hâtch", old: "Club hatch" },
    { kind: "track", name: "Cafe Ring", old: "Café Ring" },
  ]);
});

test("a layout is asked about on its own track, which is said", async () => {
  const book = await known();
  const names = { car: "Club hatch", track: "Café Ring", layout: "Cote" };
  expect(await likelyNames(book, [names])).toEqual([
    { kind: "layout", name: "Cote", old: "Côte", track: "Café Ring" },
  ]);
  expect(await likelyNames(book, [{ ...names, track: "Old Mill" }])).toEqual([]);
});

test("a name that is known, but for case and spaces, is not asked about, nor one that is like none", async () => {
  const book = await known();
  const names = [
    { car: "CLUB  hatch", track: "café ring", layout: "côte" },
    { car: "Junior", track: "Old Mill", layout: "" },
  ];
  expect(await likelyNames(book, names)).toEqual([]);
});

test("a name may be meant for one before it in the list, and the same words of a car and a track are two things", async () => {
  const book = await known();
  const names = [
    { car: "Été", track: "Old Mill", layout: "" },
    { car: "Ete", track: "Ete", layout: "" },
    { car: "ete", track: "Junior", layout: "" },
  ];
  expect(await likelyNames(book, names)).toEqual([{ kind: "car", name: "Ete", old: "Été" }]);
});

test("where a name has two ways of writing, the first is the one it may be meant for", async () => {
  const book = await known();
  const cars = ["Été", "Éte", "Ete"].map((car) => ({ car, track: "Old Mill", layout: "" }));
  expect((await likelyNames(book, cars)).map(({ name, old }) => `${name} ${old}`)).toEqual([
    "Éte Été",
    "Ete Été",
  ]);
});

test("deleted names are known to nobody", async () => {
  const book = await known();
  for (const table of ["cars", "tracks", "layouts"])
    await book.database.table(table).toCollection().modify({ deletedAt: 5 });
  expect(await likelyNames(book, [{ car: "Club hâtch", track: "Cafe Ring", layout: "Cote" }])).toEqual([]);
  expect(await likelyNames(book, [{ car: "Junior", track: "Café Ring", layout: "Cote" }])).toEqual([]);
});
