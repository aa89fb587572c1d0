import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { asideRows, createLogbook, dump, idMaker, newestSchema, openLogbook, openShelf } from "#db";
import { noRows } from "#domain";
import { writeBackup } from "#files";
import { sendHere } from "#live";

const clock = () => Date.UTC(2026, 10, 28, 18);
const tools = { clock, newId: idMaker(clock) };

test("undoing a merge takes back what the file had brought aside, too", async () => {
  const shelf = await openShelf(tools);
  const { name } = await createLogbook(shelf, { title: "Evenings" });
  (await openLogbook({ name, ...tools })).close();
  const car = { id: tools.newId(), createdAt: 1, updatedAt: 1, name: 42 };
  const text = await writeBackup(
    { ...noRows, cars: [car as never] },
    { title: "PC", schema: newestSchema, sha256: undefined },
  );
  const send = sendHere(tools);
  const source = new Blob([text]);
  const asideNow = async () => {
    const book = await openLogbook({ name, ...tools });
    const [aside, rows] = [await asideRows(book), await dump(book)];
    book.close();
    return { aside, cars: rows.cars };
  };
  const done = await send(name, "merge", { source, from: "PC", title: "Evenings", isDateConfirmed: false });
  expect(await asideNow()).toMatchObject({ aside: [{ table: "cars", row: { name: 42 } }], cars: [] });
  await send(name, "takeBack", { source, ...done });
  expect(await asideNow()).toEqual({ aside: [], cars: [] });
  shelf.close();
});
