import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo } from "#db";
import { stampAhead } from "#live";
import { aLogbook } from "../../support/aLogbook.ts";

const aDay = 86_400_000;

/** A logbook with rows stamped at this instant. */
async function stampedAt(at: number) {
  const { book } = await aLogbook(at);
  await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  return book;
}

test("a stamp lies ahead once it is more than a day later than this device's clock", async () => {
  const at = Date.UTC(2031, 2, 10, 18);
  const book = await stampedAt(at);
  const newest = (await book.tables.combos.toArray())[0]?.updatedAt ?? 0;
  expect(newest).toBeGreaterThanOrEqual(at);
  expect(await stampAhead(book, newest)).toBeUndefined();
  expect(await stampAhead(book, newest - aDay)).toBeUndefined();
  expect(await stampAhead(book, newest - aDay - 1)).toBe(newest);
  book.close();
});

test("a clock that shows a day before this app was made says nothing of stamps", async () => {
  const book = await stampedAt(Date.UTC(2031, 2, 10, 18));
  expect(await stampAhead(book, Date.UTC(2026, 10, 27, 23, 59, 59, 999))).toBeUndefined();
  expect(await stampAhead(book, Date.UTC(2026, 10, 28))).toBeDefined();
  book.close();
});

test("in a logbook without a row nothing lies ahead", async () => {
  const { book } = await aLogbook();
  expect(await stampAhead(book, Date.UTC(2026, 2, 10))).toBeUndefined();
  book.close();
});
