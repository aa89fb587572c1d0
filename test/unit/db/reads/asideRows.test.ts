import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { asideRows, dropAside } from "#db";
import { type AsideRow, asideRow } from "#domain";
import { aLogbook } from "../../../support/aLogbook.ts";

test("rows set aside are listed table by table, those that were settled no more", async () => {
  const { book } = await aLogbook();
  expect(await asideRows(book)).toEqual([]);
  const rows = ["runs", "cars", "sessions", "cars", "runs"].map((table, at) =>
    asideRow(table, { id: book.newId(), name: at }, "name: not a text", 3),
  );
  await book.database.table("aside").bulkAdd(rows);
  const found = await asideRows(book);
  expect(found.map(({ table }) => table)).toEqual(["cars", "cars", "runs", "runs", "sessions"]);
  const inOrder = (some: readonly AsideRow[]) => some.map(({ id }) => id).toSorted();
  for (const table of ["cars", "runs"]) {
    const own = found.filter((row) => row.table === table);
    expect(own.map(({ id }) => id)).toEqual(inOrder(own));
  }
  await dropAside(book, found[0] as AsideRow);
  expect((await asideRows(book)).map(({ id }) => id)).toEqual(found.slice(1).map(({ id }) => id));
  expect(await book.database.table("aside").count(), "a mark of it stays").toBe(5);
});

test("where a newer version sets nothing aside there is nothing", async () => {
  const { book } = await aLogbook();
  const { aside: _, ...without } = book;
  expect(await asideRows(without)).toEqual([]);
});
