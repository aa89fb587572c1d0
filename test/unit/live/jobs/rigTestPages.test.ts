import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { rigTests } from "#db";
import { askHere } from "#live";
import { aFullLogbook } from "../../../support/aFullLogbook.ts";

test("the tests of a combo, one of them, or all are read with what their settings are called", async () => {
  const { book } = await aFullLogbook();
  const [stored] = await rigTests(book);
  if (stored === undefined) throw new Error("a full logbook holds a rig test");
  const all = await askHere(book, "rigTestPages", {});
  expect(all.map(({ test }) => test.id)).toEqual((await rigTests(book)).map(({ id }) => id));
  const [one] = await askHere(book, "rigTestPages", { testId: stored.id });
  expect(one?.test).toEqual(stored);
  expect(one?.report.planned).toBe(stored.pairsPlanned);
  const sides = [stored.rigA, stored.rigB].filter((id) => id !== undefined);
  expect(one?.records.map(({ id }) => id).sort()).toEqual(sides.sort());
  expect(await askHere(book, "rigTestPages", { comboId: stored.comboId })).toEqual(all);
  expect(await askHere(book, "rigTestPages", { testId: "none" })).toEqual([]);
  book.close();
});
