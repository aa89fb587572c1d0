import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addForecast,
  addReference,
  addRig,
  archiveTarget,
  bringBack,
  deletedRows,
  deleteReference,
  deleteRig,
  deleteTarget,
  editRig,
  editTarget,
  forecasts,
  forecastsOfTarget,
  preferences,
  preferencesId,
  referencesOfCombo,
  rigInForce,
  rigs,
  scoreForecast,
  setPreferences,
  setTarget,
  targetsOfCombo,
  undoChange,
} from "#db";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const rig = { name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };

test("preferences have defaults until the driver chooses, and one row for ever", async () => {
  const { book } = await aLogbook();
  const fresh = {
    displayDecimals: 3,
    relativeTo: "lap",
    dayStartsAt: 4,
    settlingLaps: 0,
    marginPercent: 0.5,
  };
  expect(await preferences(book)).toMatchObject(fresh);
  await setPreferences(book, { displayDecimals: 2 });
  await setPreferences(book, { settlingLaps: 2 });
  expect(await preferences(book)).toMatchObject({
    ...fresh,
    displayDecimals: 2,
    settlingLaps: 2,
    id: preferencesId,
  });
  expect(await book.tables.preferences.count()).toBe(1);
});

test("the rig settings in force are the last from that day or before", async () => {
  const { book, clock } = await aLogbook();
  const { id: first } = await addRig(book, { ...rig, from: "2026-03-01" });
  clock.pass(1000);
  const { id: second } = await addRig(book, { ...rig, from: "2026-03-10" });
  clock.pass(1000);
  const { id: sameDay } = await addRig(book, { ...rig, from: "2026-03-10" });
  expect(await rigInForce(book, "2026-02-28")).toBeUndefined();
  expect((await rigInForce(book, "2026-03-09"))?.id).toBe(first);
  expect((await rigInForce(book, "2026-03-10"))?.id).toBe(sameDay);
  const deleted = await deleteRig(book, sameDay);
  expect((await rigInForce(book, "2026-12-31"))?.id).toBe(second);
  expect(await rigs(book)).toHaveLength(2);
  await undoChange(book, deleted);
  expect(await rigs(book)).toHaveLength(3);
});

test("an edit says when it went over a field changed meanwhile", async () => {
  const { book } = await aLogbook();
  const { id } = await addRig(book, { ...rig, from: "2026-03-01" });
  const seen = (await rigs(book))[0];
  if (seen === undefined) throw new Error("no rig");
  await editRig(book, { id, patch: { name: "near" } });
  expect((await editRig(book, { id, patch: { note: "x" }, expected: seen })).overwrote).toBeUndefined();
  expect((await editRig(book, { id, patch: { name: "far" }, expected: seen })).overwrote).toEqual(["name"]);
  expect((await rigs(book))[0]).toMatchObject({ name: "far", note: "x" });
});

test("a target is set, changed, archived, deleted and brought back", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const { id } = await setTarget(book, { comboId, kind: "best", value: 82000, setOn: "2026-03-10" });
  expect(await targetsOfCombo(book, comboId)).toMatchObject([{ value: 82000, setAt: clock.now() }]);
  await editTarget(book, { id, patch: { value: 81500, by: "2026-04-01" } });
  await archiveTarget(book, { id });
  expect((await targetsOfCombo(book, comboId))[0]?.archivedAt).toBe(clock.now());
  await archiveTarget(book, { id, isArchived: false });
  expect((await targetsOfCombo(book, comboId))[0]).not.toHaveProperty("archivedAt");
  await deleteTarget(book, id);
  expect(await targetsOfCombo(book, comboId)).toEqual([]);
  expect((await deletedRows(book)).map((row) => [row.table, row.id])).toEqual([["targets", id]]);
  await bringBack(book, { table: "targets", id });
  expect(await targetsOfCombo(book, comboId)).toMatchObject([{ value: 81500, by: "2026-04-01" }]);
});

test("a forecast is kept with its target and scored later", async () => {
  const { book, comboId } = await anOpenSession();
  const { id: targetId } = await setTarget(book, {
    comboId,
    kind: "best",
    value: 82000,
    setOn: "2026-03-10",
  });
  const row = { targetId, comboId, by: "2026-04-01", chance: 0.4, method: "curve 1" };
  await addForecast(book, { ...row, madeOn: "2026-03-12" });
  const { id } = await addForecast(book, { ...row, madeOn: "2026-03-11" });
  expect((await forecastsOfTarget(book, targetId)).map(({ madeOn }) => madeOn)).toEqual([
    "2026-03-11",
    "2026-03-12",
  ]);
  await scoreForecast(book, { id, reached: false });
  expect((await forecasts(book)).filter(({ reached }) => reached === false)).toHaveLength(1);
});

test("trying again with the same id makes no second row", async () => {
  const { book, comboId } = await anOpenSession();
  const row = { id: book.newId(), comboId, ms: 82000, decimals: 3, source: "a friend" };
  await addReference(book, row);
  expect((await addReference(book, row)).edits).toEqual([]);
  expect(await referencesOfCombo(book, comboId)).toHaveLength(1);
  await deleteReference(book, row.id);
  expect(await referencesOfCombo(book, comboId)).toEqual([]);
});
