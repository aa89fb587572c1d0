import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { asideRows, dump, type Logbook, mergeInto, takeBackMerge } from "#db";
import { type AsideRow, asideRow, noRows, settledAside } from "#domain";
import { aLogbook } from "../../support/aLogbook.ts";

const bad = asideRow("cars", { name: 7 }, "name: not a text", 3);
const other = asideRow("tracks", { name: 8 }, "name: not a text", 3);
const settled = settledAside(bad);

/** A logbook that has set these aside. */
async function withAside(...rows: readonly AsideRow[]) {
  const { book } = await aLogbook();
  await book.database.table("aside").bulkPut([...rows]);
  return book;
}
const merge = (book: Logbook, ...aside: readonly AsideRow[]) =>
  mergeInto(book, { ...noRows, aside }, "a copy");
/** Those set aside, settled ones too. */
const held = async (book: Logbook) =>
  (await book.aside?.toArray())?.toSorted((a, b) => (a.id < b.id ? -1 : 1));
const sorted = (...rows: readonly AsideRow[]) => rows.toSorted((a, b) => (a.id < b.id ? -1 : 1));

test("what another copy has set aside comes with a merge, beside what is aside here", async () => {
  const book = await withAside(bad);
  await merge(book, other);
  expect(await held(book)).toEqual(sorted(bad, other));
  await merge(book, other);
  expect(await held(book)).toEqual(sorted(bad, other));
  book.close();
});

test("what was settled here is not brought back by a copy that has not heard of it", async () => {
  const book = await withAside(settled);
  await merge(book, bad);
  expect(await held(book)).toEqual([settled]);
  expect(await asideRows(book)).toEqual([]);
  book.close();
});

test("what was settled there is settled here", async () => {
  const book = await withAside(bad);
  await merge(book, settled);
  expect(await held(book)).toEqual([settled]);
  book.close();
});

test("a copy that says it otherwise changes nothing of what is aside here", async () => {
  const book = await withAside(bad);
  await merge(book, { ...bad, why: "something else" });
  expect(await held(book)).toEqual([bad]);
  book.close();
});

test("a merge taken back takes out what it brought, and leaves what was aside here", async () => {
  const book = await withAside(bad);
  await takeBackMerge(book, await merge(book, bad, other));
  expect(await held(book)).toEqual([bad]);
  book.close();
});

test("a merge taken back unsettles what it settled", async () => {
  const book = await withAside(bad);
  await takeBackMerge(book, await merge(book, settled));
  expect(await held(book)).toEqual([bad]);
  book.close();
});

test("a merge taken back takes out what came settled and was never here", async () => {
  const book = await withAside(other);
  await takeBackMerge(book, await merge(book, settled));
  expect(await held(book)).toEqual([other]);
  book.close();
});

test("what a merge brought and was settled since stays settled when the merge is taken back", async () => {
  const book = await withAside();
  const change = await merge(book, bad);
  await book.database.table("aside").put(settled);
  await takeBackMerge(book, change);
  expect(await held(book)).toEqual([settled]);
  book.close();
});

test("a merge without rows set aside is taken back as any other", async () => {
  const book = await withAside(bad);
  await takeBackMerge(book, await mergeInto(book, await dump(book), "itself"));
  expect(await held(book)).toEqual([bad]);
  book.close();
});
