import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  aroundImport,
  editLayout,
  type ImportedSession,
  importOutlook,
  type Logbook,
  startSession,
} from "#db";
import type { Id, Run } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const settings = { kind: "pace", effort: "full", surface: "dry", note: "" } as const;
const times = (runs: readonly Run[]) => runs.flatMap(({ laps }) => laps.map(({ ms }) => ms));

async function drive(book: Logbook, comboId: Id, ms: number, date = "2026-03-10") {
  const startedAt = Date.parse(`${date}T12:00:00Z`);
  const { runId } = await startSession(book, { comboId, date, zone: "UTC", startedAt, endedAt: startedAt });
  await addLap(book, { runId, id: book.newId(), lap: aLap(ms) });
}

function imported(
  book: Logbook,
  ms: readonly number[],
  fields: Partial<ImportedSession> = {},
): ImportedSession {
  const laps = ms.map((time) => ({
    lap: { ms: time, decimals: 3, source: "imported" as const, remarks: [] },
  }));
  return {
    id: book.newId(),
    car: "Club hatch",
    track: "Varnholt Ring",
    layout: "",
    date: "2026-03-10",
    startedAt: Date.UTC(2026, 2, 10, 11),
    isTimeOfDayKnown: false,
    zone: "UTC",
    runs: [{ settings, laps }],
    ...fields,
  };
}

async function aBook() {
  const { book } = await aLogbook();
  const track = { name: "Varnholt Ring" };
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track });
  return { book, track, comboId };
}

test("laps of a table are judged by the combo's own, else by others on the layout, else by those elsewhere", async () => {
  const { book, track, comboId } = await aBook();
  const { comboId: beside } = await addCombo(book, { car: { name: "Junior" }, track });
  const short = { name: "Short" };
  const { comboId: onShort } = await addCombo(book, { car: { name: "Junior" }, track, layout: short });
  const { comboId: far } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const layout = await book.tables.layouts
    .toCollection()
    .filter(({ name }) => name === "")
    .first();
  await editLayout(book, { layoutId: layout?.id ?? "", patch: { length: 2740 } });
  await drive(book, comboId, 84_000);
  await drive(book, beside, 82_000);
  await drive(book, onShort, 51_000);
  await drive(book, far, 61_000);
  const names = { car: "club HATCH", track: "varnholt ring", layout: "" };
  const [own, other, ofShort, unknown] = await aroundImport(book, [
    names,
    { ...names, car: "New one" },
    { ...names, layout: "short", car: "Club hatch" },
    { ...names, track: "Nowhere" },
  ]);
  expect([times(own?.page ?? []), own?.layout, own?.elsewhere, own?.lengthMetres]).toEqual([
    [84_000],
    [],
    [],
    2740,
  ]);
  expect(other?.page).toEqual([]);
  expect(times(other?.layout ?? []).toSorted()).toEqual([82_000, 84_000]);
  expect([other?.elsewhere, other?.lengthMetres]).toEqual([[], 2740]);
  expect(times(ofShort?.layout ?? [])).toEqual([51_000]);
  expect(ofShort?.lengthMetres).toBeUndefined();
  expect([unknown?.page, unknown?.layout, unknown?.lengthMetres]).toEqual([[], [], undefined]);
  expect(times(unknown?.elsewhere ?? []).toSorted()).toEqual([51_000, 61_000, 82_000, 84_000]);
});

test("laps of another day, another layout or another car are not there already", async () => {
  const { book, comboId, track } = await aBook();
  await addCombo(book, { car: { name: "Junior" }, track });
  await addCombo(book, { car: { name: "Club hatch" }, track, layout: { name: "Short" } });
  await drive(book, comboId, 83_456);
  await drive(book, comboId, 83_900, "2026-03-09");
  const here = imported(book, [83_456, 83_900, 84_000]);
  const others = [
    imported(book, [83_456], { layout: "Short" }),
    imported(book, [83_456], { car: "Junior" }),
    imported(book, [83_900]),
    imported(book, [83_456], { date: "2026-03-11" }),
  ];
  expect([...(await importOutlook(book, [here, ...others])).known]).toEqual([[here.id, 1]]);
});

test("names that an import would make are told once each; those deleted would be made again", async () => {
  const { book } = await aBook();
  const sessions = [
    imported(book, [84_000], { car: "New one", track: "Old Mill" }),
    imported(book, [84_000], { car: "NEW one", track: "Old Mill" }),
  ];
  expect(await importOutlook(book, sessions)).toMatchObject({
    newCars: ["New one"],
    newTracks: ["Old Mill"],
  });
  expect(await importOutlook(book, [imported(book, [84_000])])).toMatchObject({ newCars: [], newTracks: [] });
  await book.database.table("cars").toCollection().modify({ deletedAt: 5 });
  expect(await importOutlook(book, [imported(book, [84_000])])).toMatchObject({
    newCars: ["Club hatch"],
    newTracks: [],
  });
});
