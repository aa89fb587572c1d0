import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  combosWithNames,
  comboWithNames,
  daysDriven,
  type Logbook,
  lastDriven,
  sessionsSince,
  startSession,
} from "#db";
import type { Id } from "#domain";
import { aLogbook } from "../../../support/aLogbook.ts";

async function twoCombos() {
  const { book } = await aLogbook();
  const track = { name: "Varnholt Ring" };
  const { comboId: a } = await addCombo(book, { car: { name: "Club hatch" }, track });
  const { comboId: b } = await addCombo(book, { car: { name: "Junior" }, track });
  const on = async (comboId: Id, date: string) => {
    const startedAt = Date.parse(`${date}T12:00:00Z`);
    await startSession(book, { comboId, date, zone: "UTC", startedAt, endedAt: startedAt });
    return startedAt;
  };
  return { book, a, b, on };
}

const first = (book: Logbook, table: string) => book.database.table<{ id: Id }>(table).toCollection().first();

test("a combo whose car, layout or track is gone has no names, and neither has one that is deleted", async () => {
  for (const table of ["cars", "layouts", "tracks"]) {
    const { book, a, b } = await twoCombos();
    expect(await combosWithNames(book)).toHaveLength(2);
    await book.database.table(table).clear();
    expect(await combosWithNames(book), table).toEqual([]);
    expect([await comboWithNames(book, a), await comboWithNames(book, b)], table).toEqual([
      undefined,
      undefined,
    ]);
  }
  const { book, a, b } = await twoCombos();
  await book.database.table("combos").update(a, { deletedAt: 5 });
  expect((await combosWithNames(book)).map(({ combo }) => combo.id)).toEqual([b]);
  expect(await comboWithNames(book, a)).toBeUndefined();
  expect(await comboWithNames(book, book.newId())).toBeUndefined();
  expect((await comboWithNames(book, b))?.track.id).toBe((await first(book, "tracks"))?.id);
});

test("a combo was last driven before tomorrow is over, and at no known time where it has only later sessions", async () => {
  const { book, a, b, on } = await twoCombos();
  const { comboId: never } = await addCombo(book, { car: { name: "Kart" }, track: { name: "Old Mill" } });
  await on(a, "2026-03-01");
  const newest = await on(a, "2026-03-05");
  const until = await on(a, "2036-01-01");
  await on(b, "2036-01-02");
  await on(b, "2036-01-03");
  const asked = [never, b, a];
  expect([...(await lastDriven(book, asked, until))]).toEqual([
    [b, 0],
    [a, newest],
  ]);
  expect((await lastDriven(book, [a], until + 1)).get(a)).toBe(until);
  expect([...(await lastDriven(book, [b], until))]).toEqual([[b, 0]]);
  expect([...(await daysDriven(book, until))]).toEqual([[a, "2026-03-05"]]);
  expect((await daysDriven(book, until + 1)).get(a)).toBe("2036-01-01");
  expect([...(await sessionsSince(book, 0, until))]).toEqual([[a, 2]]);
  expect([...(await sessionsSince(book, newest, until))]).toEqual([[a, 1]]);
  expect([...(await sessionsSince(book, newest + 1, until))]).toEqual([]);
  expect((await sessionsSince(book, newest, until + 1)).get(a)).toBe(2);
});

test("a combo whose newest session cannot be found has no day", async () => {
  const { book, a, b, on } = await twoCombos();
  await on(a, "2026-03-01");
  await on(b, "2026-03-02");
  const { id } = (await first(book, "sessions")) ?? { id: "" };
  await book.database.table("sessions").delete(id);
  expect([...(await daysDriven(book, Number.MAX_SAFE_INTEGER)).values()]).toEqual(["2026-03-02"]);
});
