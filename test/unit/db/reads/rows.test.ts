import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addCornerReview,
  addReference,
  addRig,
  addRigTest,
  archiveTarget,
  bringBack,
  cornerReviewsOfCombo,
  deleteCornerReview,
  deletedRows,
  deletePage,
  deleteReference,
  deleteRig,
  deleteRigTest,
  deleteTarget,
  editRig,
  editTarget,
  forecasts,
  forecastsOfTarget,
  keepForecasts,
  pages,
  preferences,
  preferencesId,
  references,
  referencesOfCombo,
  rigInForce,
  rigs,
  rigTests,
  setPreferences,
  setTarget,
  targets,
  targetsOfCombo,
  turnPage,
  undoChange,
} from "#db";
import { addForecast } from "../../../support/addForecast.ts";
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
  await editTarget(book, { id, patch: { value: 81500, by: "2026-04-01" }, on: "2026-03-10" });
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
  await keepForecasts(book, { make: [], score: [{ id, reached: false }], on: "2026-04-02" });
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

/** Two combos of one logbook, an open session on the first. */
async function twoCombos() {
  const open = await anOpenSession();
  const { comboId: other } = await addCombo(open.book, {
    car: { name: "Junior" },
    track: { name: "Old Mill" },
  });
  return { ...open, other };
}

test("rig records and forecasts stand in the order of their days, whenever they were written down", async () => {
  const { book, comboId, clock } = await anOpenSession();
  for (const from of ["2026-03-10", "2026-03-01", "2026-03-05"]) {
    clock.pass(1000);
    await addRig(book, { ...rig, from });
  }
  expect((await rigs(book)).map(({ from }) => from)).toEqual(["2026-03-01", "2026-03-05", "2026-03-10"]);
  expect((await rigInForce(book, "2026-03-09"))?.from).toBe("2026-03-05");
  const { id: targetId } = await setTarget(book, {
    comboId,
    kind: "best",
    value: 82_000,
    setOn: "2026-03-10",
  });
  for (const madeOn of ["2026-03-12", "2026-03-13", "2026-03-11"])
    await addForecast(book, { targetId, comboId, by: "2026-04-01", chance: 0.4, method: "m", madeOn });
  const said = await forecastsOfTarget(book, targetId);
  expect(said.map(({ madeOn }) => madeOn)).toEqual(["2026-03-11", "2026-03-12", "2026-03-13"]);
  await book.database.table("forecasts").update(said[1]?.id ?? "", { deletedAt: 5 });
  expect((await forecastsOfTarget(book, targetId)).map(({ madeOn }) => madeOn)).toEqual([
    "2026-03-11",
    "2026-03-13",
  ]);
  expect(await forecasts(book)).toHaveLength(2);
});

test("targets of a combo stand in the order in which they were set, reference laps fastest first", async () => {
  const { book, comboId, other, clock } = await twoCombos();
  const now = clock.now();
  const setTo = (value: number, setAt: number, of = comboId) =>
    setTarget(book, { comboId: of, kind: "best", value, setOn: "2026-03-10", setAt });
  await setTo(82_000, now + 3);
  await setTo(84_000, now + 1);
  const { id } = await setTo(83_000, now + 2);
  await setTo(61_000, now, other);
  expect((await targetsOfCombo(book, comboId)).map(({ value }) => value)).toEqual([84_000, 83_000, 82_000]);
  await deleteTarget(book, id);
  expect((await targets(book)).map(({ value }) => value).toSorted()).toEqual([61_000, 82_000, 84_000]);

  const drove = (ms: number, of = comboId) =>
    addReference(book, { comboId: of, ms, decimals: 3, source: "a friend" });
  await drove(83_000);
  await drove(81_000);
  const gone = await drove(82_000);
  await drove(60_000, other);
  expect((await referencesOfCombo(book, comboId)).map(({ ms }) => ms)).toEqual([81_000, 82_000, 83_000]);
  await deleteReference(book, gone.id);
  expect((await references(book)).map(({ ms }) => ms).toSorted()).toEqual([60_000, 81_000, 83_000]);
});

test("pages of all combos are read without those taken out", async () => {
  const { book, comboId, other } = await twoCombos();
  await turnPage(book, { comboIds: "all", from: 1000, reason: "new physics" });
  const turned = await pages(book);
  expect(turned.map((page) => page.comboId).toSorted()).toEqual([comboId, other].toSorted());
  await deletePage(book, turned[0]?.id ?? "");
  expect(await pages(book)).toEqual(turned.slice(1));
});

test("rig tests are read oldest first, of one combo or of all", async () => {
  const { book, comboId, other, clock } = await twoCombos();
  const ask = (question: string, of: string, id?: string) =>
    addRigTest(book, {
      comboId: of,
      question,
      rigA: book.newId(),
      rigB: book.newId(),
      pairsPlanned: 6,
      level: 0.9,
      seed: 7,
      pairs: [],
      ...(id === undefined ? {} : { id }),
    });
  const [low, high] = [book.newId(), book.newId()];
  await ask("first", comboId, high);
  clock.pass(1000);
  await ask("second", other);
  clock.pass(1000);
  await ask("third", comboId, low);
  const questions = async (of?: string) => (await rigTests(book, of)).map(({ question }) => question);
  expect(await questions()).toEqual(["first", "second", "third"]);
  expect(await questions(comboId)).toEqual(["first", "third"]);
  expect((await deleteRigTest(book, high)).what).toBe("Rig test deleted");
  expect(await questions()).toEqual(["second", "third"]);
});

test("corner reviews of a combo are read in the order of their days", async () => {
  const { book, comboId, other, sessionId } = await twoCombos();
  const review = (on: string, of = comboId) =>
    addCornerReview(book, { comboId: of, sessionId, on, corners: [{ number: 5, entry: 0.5 }] });
  await review("2026-03-09");
  await review("2026-03-08");
  const { id, what } = await review("2026-03-07");
  await review("2026-03-06", other);
  expect(what).toBe("Corner review added");
  const days = async () => (await cornerReviewsOfCombo(book, comboId)).map(({ on }) => on);
  expect(await days()).toEqual(["2026-03-07", "2026-03-08", "2026-03-09"]);
  expect((await deleteCornerReview(book, id)).what).toBe("Corner review deleted");
  expect(await days()).toEqual(["2026-03-08", "2026-03-09"]);
});
