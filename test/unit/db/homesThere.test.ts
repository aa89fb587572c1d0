import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import type { Id, Lap, Run, TableName } from "#domain";
import { enterHome, homesThere } from "../../../src/db/homesThere.ts";
import { aLogbook } from "../../support/aLogbook.ts";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const { runs: run, rigTests: rigTest, cars: car } = wholeRows;
const lap = (n: number): Lap => ({ ...wholeLap, id: idAt(80 + n) });

async function withRows(rows: Partial<Readonly<Record<TableName, readonly object[]>>>) {
  const { book } = await aLogbook();
  for (const [table, all] of Object.entries(rows)) await book.database.table(table).bulkAdd([...all]);
  return book;
}
const shown = (homes: ReadonlyMap<Id, string>) =>
  Object.fromEntries([...homes].map(([id, table]) => [Number(id.slice(-3)), table]));

test("the rows themselves and all they name are looked for in every table; what is nowhere is left out", async () => {
  const book = await withRows({
    combos: [wholeRows.combos],
    sessions: [wholeRows.sessions],
    rigs: [wholeRows.rigs],
  });
  expect(shown(await homesThere(book.tables, [{ table: "runs", row: run }]))).toEqual({
    5: "combos",
    8: "sessions",
    10: "rigs",
  });
  await book.database.table("runs").add(run);
  expect(shown(await homesThere(book.tables, [{ table: "runs", row: run }]))).toMatchObject({ 9: "runs" });
  book.close();
});

test("what stands in another table than it is named in, or asked for, is found there", async () => {
  const wrong = { ...run, sessionId: car.id, id: wholeRows.tracks.id };
  const book = await withRows({ cars: [car], tracks: [wholeRows.tracks] });
  expect(shown(await homesThere(book.tables, [{ table: "runs", row: wrong }]))).toEqual({
    2: "cars",
    3: "tracks",
  });
  book.close();
});

test("a lap with the id of a row is found as that row", async () => {
  const book = await withRows({ cars: [{ ...car, id: lap(1).id }] });
  const row: Run = { ...run, laps: [lap(1)] };
  expect(shown(await homesThere(book.tables, [{ table: "runs", row }]))).toEqual({ 81: "cars" });
  book.close();
});

test("what a row could be without, and is in no table, is looked for among laps", async () => {
  const book = await withRows({ runs: [{ ...run, id: idAt(70), laps: [lap(1), lap(2)] }] });
  const row = { ...rigTest, rigA: lap(2).id };
  expect(shown(await homesThere(book.tables, [{ table: "rigTests", row }]))).toEqual({ 82: "laps" });
  // What it cannot be without is not: it is missing, wherever else it stands.
  const named = { ...wholeRows.combos, carId: lap(1).id };
  expect(shown(await homesThere(book.tables, [{ table: "combos", row: named }]))).toEqual({});
  book.close();
});

test("a row that is entered is at home in its table, with its laps, unless its id is at home already", () => {
  const homes = new Map<Id, TableName | "laps">([[lap(2).id, "cars"]]);
  enterHome(homes, { table: "runs", row: { ...run, laps: [lap(1), lap(2)] } as Run });
  enterHome(homes, { table: "cars", row: car });
  enterHome(homes, { table: "tracks", row: { ...wholeRows.tracks, id: run.id } });
  expect(shown(homes)).toEqual({ 82: "cars", 9: "runs", 81: "laps", 2: "cars" });
});
