import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  addRig,
  asideFault,
  asideLinkFault,
  asideRows,
  dropAside,
  type Logbook,
  mendAside,
  newestSchema,
  runOf,
} from "#db";
import { type AsideRow, asideRow, type Lap } from "#domain";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

/** A row set aside as the app does it, and no longer in its table. */
async function aside(book: Logbook, table: string, row: object, schema = newestSchema): Promise<AsideRow> {
  const kept = asideRow(table, row, "not a text", schema);
  await book.database.table("aside").add(kept);
  return kept;
}

async function withLap() {
  const open = await anOpenSession();
  const { book, runId, clock } = open;
  const lapId = book.newId();
  await addLap(book, { runId, id: lapId, lap: aLap(84_000) });
  clock.pass(1000);
  const lap = (await runOf(book, runId))?.laps[0] as Lap;
  return { ...open, lap };
}

test("a lap goes back into its run with a new stamp, unless the run or its place is taken", async () => {
  const { book, clock, runId, lap } = await withLap();
  const third = book.newId();
  await addLap(book, { runId, id: third, lap: aLap(86_000, { n: 3 }) });
  const second = { ...lap, id: book.newId(), n: 2, ms: 85_000, runId };
  const kept = await aside(book, "laps", { ...second, ms: "fast" });
  expect(asideFault(kept, { ...second, ms: "fast" })).toEqual({ field: "ms", why: expect.any(String) });
  expect(asideFault(kept, second)).toBeUndefined();
  await expect(mendAside(book, { aside: kept, row: { ...second, ms: "fast" } })).rejects.toMatchObject({
    code: "invalid",
    message: expect.stringMatching(/^Not put back: ms: .+\.$/),
  });
  await expect(
    mendAside(book, { aside: kept, row: { ...second, runId: book.newId() } }),
  ).rejects.toMatchObject({
    message: "Not put back: its run is not there.",
  });
  await expect(mendAside(book, { aside: kept, row: { ...second, id: lap.id } })).rejects.toMatchObject({
    message: "Not put back: another version of it stands in its place by now.",
  });
  const change = await mendAside(book, { aside: kept, row: second });
  expect(change.what).toBe("Put back");
  const { runId: _, ...bare } = second;
  expect((await runOf(book, runId))?.laps).toMatchObject([
    lap,
    { ...bare, updatedAt: clock.now(), had: [lap.updatedAt] },
    { id: third },
  ]);
  expect(await asideRows(book)).toEqual([]);
  expect(await asideLinkFault(book, kept, second), "a lap names nothing but its run").toBeUndefined();
});

test("a row is put back once, and deleted for good once", async () => {
  const { book, comboId } = await anOpenSession();
  const row = { id: book.newId(), comboId, from: 1000, reason: "new", createdAt: 1, updatedAt: 1 };
  const kept = await aside(book, "pages", { ...row, reason: 42 });
  await mendAside(book, { aside: kept, row });
  expect(await book.tables.pages.get(row.id)).toMatchObject({ ...row, updatedAt: book.clock() });
  const gone = { code: "missing", message: "Nothing was changed: the row is no longer set aside." };
  await expect(dropAside(book, kept)).rejects.toMatchObject(gone);
  await expect(mendAside(book, { aside: kept, row: { ...row, id: book.newId() } })).rejects.toMatchObject(
    gone,
  );
  await expect(mendAside(book, { aside: kept, row })).rejects.toMatchObject({
    message: "Not put back: another version of it stands in its place by now.",
  });
  expect(await book.tables.pages.count()).toBe(1);
  const next = { ...row, id: book.newId() };
  const wrong = await aside(book, "pages", { ...next, reason: 42 });
  await mendAside(book, { aside: wrong, row: next });
  expect(await book.tables.pages.get(next.id), "with a settled row beside it").toMatchObject({
    reason: "new",
  });
  const other = await aside(book, "pages", { ...row, id: book.newId(), reason: 42 });
  expect((await dropAside(book, other)).what).toBe("Deleted for good");
  expect(await asideRows(book)).toEqual([]);
});

test("a row of a table that this version does not know stays aside", async () => {
  const { book } = await anOpenSession();
  const row = { id: book.newId(), createdAt: 1, updatedAt: 1 };
  const kept = await aside(book, "weather", row);
  expect(asideFault(kept, row)).toEqual({ why: "this version has no place for it" });
  await expect(mendAside(book, { aside: kept, row })).rejects.toMatchObject({
    message: "Not put back: this version has no place for it.",
  });
  expect(await asideLinkFault(book, kept, row)).toBeUndefined();
});

test("a row written by an older version is judged, and put back, as this one has it", async () => {
  const { book } = await anOpenSession();
  const row = { id: book.newId(), name: "Kart", createdAt: 1, updatedAt: 1 };
  const kept = await aside(book, "cars", { ...row, name: 42 }, 1);
  expect(asideFault(kept, { ...row, name: 42 })).toMatchObject({ field: "name" });
  await mendAside(book, { aside: kept, row });
  expect(await book.tables.cars.get(row.id)).toMatchObject({ name: "Kart" });
});

test("a row put back brings along what went aside only because it was not there, and what hangs on that, and no more", async () => {
  const { book } = await anOpenSession();
  const stamps = { createdAt: 1, updatedAt: 1 };
  const { edits } = await addCombo(book, { car: { name: "Kart" }, track: { name: "Tessemoor" } });
  const layoutId = edits.find(({ table }) => table === "layouts")?.id ?? "";
  const car = { id: book.newId(), name: "Lorry", ...stamps };
  const combo = { id: book.newId(), carId: car.id, layoutId, ...stamps };
  const page = { id: book.newId(), comboId: combo.id, from: 1000, reason: "new", ...stamps };
  const alien = { ...page, id: book.newId(), comboId: book.newId() };
  const wrong = { ...page, id: book.newId(), reason: 42 };
  const unread = { ...page, id: book.newId(), comboId: 42 };
  await aside(book, "pages", page);
  await aside(book, "pages", alien);
  await aside(book, "pages", wrong);
  await aside(book, "pages", unread);
  const ofCombo = await aside(book, "combos", combo);
  const kept = await aside(book, "cars", { ...car, name: 42 });
  expect(await asideLinkFault(book, ofCombo, combo)).toMatchObject({
    why: "its car is not there",
    isNamedAside: true,
  });
  await mendAside(book, { aside: kept, row: car });
  expect(await book.tables.combos.get(combo.id)).toMatchObject({ carId: car.id, updatedAt: book.clock() });
  expect(await book.tables.pages.get(page.id)).toMatchObject({ reason: "new" });
  const left = (await asideRows(book)).map(({ row }) => row?.["id"]);
  expect(left.toSorted()).toEqual([alien.id, wrong.id, unread.id].toSorted());
});

test("of what waits, a row whose place is taken or that lacks another one still stays aside", async () => {
  const { book, comboId } = await anOpenSession();
  const stamps = { createdAt: 1, updatedAt: 1 };
  const target = {
    id: book.newId(),
    comboId,
    kind: "best",
    value: 82_000,
    setAt: 1,
    setOn: "2026-03-10",
    ...stamps,
  };
  const said = { madeOn: "2026-03-11", by: "2026-04-01", chance: 0.4, method: "m", ...stamps };
  const forecast = { id: book.newId(), targetId: target.id, comboId, ...said };
  const elsewhere = { ...forecast, id: book.newId(), comboId: book.newId() };
  const taken = { ...forecast, id: book.newId() };
  await book.database.table("forecasts").add({ ...taken, chance: 0.9 });
  for (const row of [forecast, elsewhere, taken]) await aside(book, "forecasts", row);
  const kept = await aside(book, "targets", { ...target, value: "fast" });
  await mendAside(book, { aside: kept, row: target });
  expect((await asideRows(book)).map(({ row }) => row?.["id"]).toSorted()).toEqual(
    [elsewhere.id, taken.id].toSorted(),
  );
  expect(await book.tables.forecasts.get(taken.id)).toMatchObject({ chance: 0.9 });
  expect(await book.tables.forecasts.get(forecast.id)).toMatchObject({ chance: 0.4 });
});

test("what a row names wrongly is told with its field; a rig that is gone is no fault", async () => {
  const { book, comboId, sessionId, runId } = await anOpenSession();
  const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };
  const { id: rigId } = await addRig(book, { ...rig, from: "2026-03-01" });
  const run = await runOf(book, runId);
  const row = { ...run, id: book.newId(), n: 2, laps: [] };
  const kept = await aside(book, "runs", { ...row, kind: "none" });
  expect(await asideLinkFault(book, kept, { ...row, rigId })).toBeUndefined();
  expect(await asideLinkFault(book, kept, { ...row, rigId: book.newId() })).toBeUndefined();
  expect(await asideLinkFault(book, kept, { ...row, rigId: sessionId })).toMatchObject({
    why: "its rig is a row of another table",
    link: { field: "rigId" },
    isNamedAside: false,
  });
  expect(await asideLinkFault(book, kept, { ...row, id: sessionId })).toEqual({
    why: "its id is that of another row",
    isNamedAside: false,
  });
  expect(await asideLinkFault(book, kept, { ...row, sessionId: book.newId() })).toMatchObject({
    why: "its session is not there",
    link: { to: "sessions", field: "sessionId" },
    isNamedAside: false,
  });
  const named = book.newId();
  const ofNamed = { ...row, sessionId: named };
  await aside(book, "sessions", { id: book.newId(), note: "another session" });
  await aside(book, "cars", { id: named, note: "a car of that id" });
  const settled = await aside(book, "sessions", { id: named });
  await dropAside(book, settled);
  expect(await asideLinkFault(book, kept, ofNamed)).toMatchObject({ isNamedAside: false });
  await aside(book, "sessions", { id: named, note: "the session named" });
  expect(await asideLinkFault(book, kept, ofNamed)).toMatchObject({ isNamedAside: true });
  expect(await asideLinkFault(book, kept, { ...row, kind: "none" }), "first its fields").toBeUndefined();
  expect(comboId).toBe(run?.comboId);
});
