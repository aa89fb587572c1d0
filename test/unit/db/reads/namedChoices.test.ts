import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addCombo, addRig, deleteRig, deleteSession, namedChoices, startSession } from "#db";
import type { TableName } from "#domain";
import { aLogbook } from "../../../support/aLogbook.ts";

const rig = { screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };

async function some() {
  const { book, clock } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const short = await addCombo(book, {
    car: { name: "club hatch" },
    track: { name: "Varnholt Ring" },
    layout: { name: "Short" },
  });
  const names = async (table: TableName) => (await namedChoices(book, table)).map(({ name }) => name);
  return { book, clock, comboId, short: short.comboId, names };
}

test("cars, tracks, layouts and combos are offered by their names, in the order of the alphabet", async () => {
  const { book, names, comboId } = await some();
  expect(await names("cars")).toEqual(["club hatch", "Junior"]);
  expect(await names("tracks")).toEqual(["Old Mill", "Varnholt Ring"]);
  expect(await names("layouts")).toEqual(["Old Mill", "Varnholt Ring, Short"]);
  expect(await names("combos")).toEqual(["Old Mill · Junior", "Varnholt Ring, Short · club hatch"]);
  expect((await namedChoices(book, "combos"))[0]).toEqual({ id: comboId, name: "Old Mill · Junior" });
});

test("what is deleted is not offered, nor a layout whose track is gone", async () => {
  const { book, names } = await some();
  for (const [table, name] of [
    ["cars", "Junior"],
    ["layouts", "Short"],
  ] as const)
    await book.database
      .table<{ name: string; deletedAt?: number }>(table)
      .filter((row) => row.name === name)
      .modify({ deletedAt: 5 });
  expect(await names("cars")).toEqual(["club hatch"]);
  expect(await names("layouts")).toEqual(["Old Mill"]);
  await book.database
    .table<{ name: string }>("tracks")
    .filter(({ name }) => name === "Old Mill")
    .delete();
  expect(await names("layouts")).toEqual([]);
  expect(await names("tracks")).toEqual(["Varnholt Ring"]);
  await book.database.table("tracks").toCollection().modify({ deletedAt: 5 });
  expect(await names("tracks")).toEqual([]);
});

test("sessions are offered by their day and combo, the newest first", async () => {
  const { book, names, comboId, short } = await some();
  const past = (date: string, of: string) =>
    startSession(book, { comboId: of, date, zone: "UTC", startedAt: Date.parse(`${date}T19:00:00Z`) });
  await past("2026-03-02", comboId);
  await past("2026-03-04", short);
  const gone = await past("2026-03-03", comboId);
  await deleteSession(book, { sessionId: gone.sessionId });
  expect(await names("sessions")).toEqual([
    "Wed 4 Mar 2026, Varnholt Ring, Short · club hatch",
    "Mon 2 Mar 2026, Old Mill · Junior",
  ]);
  await book.database.table("combos").delete(comboId);
  expect((await names("sessions"))[1]).toBe("Mon 2 Mar 2026, a combo that is gone");
});

test("rig settings are offered by name and day, the newest first; one without a name is called rig", async () => {
  const { book, names } = await some();
  await addRig(book, { ...rig, name: "near", from: "2026-03-02" });
  await addRig(book, { ...rig, name: "", from: "2026-03-04" });
  const { id } = await addRig(book, { ...rig, name: "far", from: "2026-03-03" });
  await deleteRig(book, id);
  expect(await names("rigs")).toEqual(["rig, from Wed 4 Mar 2026", "near, from Mon 2 Mar 2026"]);
});

test("rows that have no name are not offered", async () => {
  const { names } = await some();
  expect(await names("pages")).toEqual([]);
  expect(await names("targets")).toEqual([]);
});
