import { pageOf } from "#combo";
import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  combosWithNames,
  comboWithNames,
  daysDriven,
  deletePage,
  dump,
  joinCars,
  joinCombos,
  joinTracks,
  lastDriven,
  pagesOfCombo,
  renameCar,
  renameTrack,
  runsOfCombo,
  sessionOf,
  sessionsSince,
  setTarget,
  startSession,
  targetsOfCombo,
  turnPage,
  undoChange,
} from "#db";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const hatch = { name: "Club hatch" };
const fen = { name: "Varnholt Ring" };
const live = async (rows: Promise<readonly { readonly deletedAt?: number }[]>) =>
  (await rows).filter(({ deletedAt }) => deletedAt === undefined).length;

test("a combo is made with its car, track and layout; the same names make no second one", async () => {
  const { book } = await aLogbook();
  const first = await addCombo(book, { car: hatch, track: fen, sectors: 3 });
  const names = { car: { name: "club  HATCH " }, track: { name: "VARNHOLT\u200b ring" } };
  const second = await addCombo(book, names);
  expect(second).toMatchObject({ comboId: first.comboId, edits: [], what: "Combo already there" });
  const short = await addCombo(book, { ...names, layout: { name: "Short" } });
  expect(short.comboId).not.toBe(first.comboId);
  expect(await comboWithNames(book, first.comboId)).toMatchObject({
    car: { name: "Club hatch" },
    track: { name: "Varnholt Ring" },
    layout: { name: "", sectors: 3 },
  });
  const rows = await dump(book);
  expect([rows.cars, rows.tracks, rows.layouts, rows.combos].map(({ length }) => length)).toEqual([
    1, 1, 2, 2,
  ]);
  expect(await combosWithNames(book)).toHaveLength(2);
});

test("a combo without a name for the car is refused", async () => {
  const { book } = await aLogbook();
  await expect(addCombo(book, { car: { name: " " }, track: fen })).rejects.toMatchObject({
    code: "invalid",
    message: "Nothing was changed: the car needs a name.",
  });
  expect((await dump(book)).tracks).toEqual([]);
});

test("undoing a new combo takes back only what nobody else uses", async () => {
  const { book } = await aLogbook();
  const first = await addCombo(book, { car: hatch, track: fen });
  await addCombo(book, { car: hatch, track: { name: "Old Mill" } });
  const undone = await undoChange(book, first);
  expect(undone.skipped).toEqual(["the car is in use by now"]);
  expect((await combosWithNames(book)).map(({ track }) => track.name)).toEqual(["Old Mill"]);
  const { tracks } = await dump(book);
  expect(tracks.filter(({ deletedAt }) => deletedAt === undefined).map(({ name }) => name)).toEqual([
    "Old Mill",
  ]);
});

test("a car cannot take the name of another one, and its own in capitals is no other", async () => {
  const { book } = await aLogbook();
  await addCombo(book, { car: hatch, track: fen });
  await addCombo(book, { car: { name: "Junior" }, track: fen });
  const junior = (await dump(book)).cars.find(({ name }) => name === "Junior")?.id ?? "";
  await expect(renameCar(book, { id: junior, name: "club hatch" })).rejects.toMatchObject({
    message: expect.stringContaining('there is a car "Club hatch" already'),
  });
  await renameCar(book, { id: junior, name: "JUNIOR" });
  const track = (await dump(book)).tracks[0]?.id ?? "";
  await renameTrack(book, { id: track, name: "Varnholt" });
  expect(
    (await combosWithNames(book)).map(({ car, track: { name } }) => `${car.name} ${name}`).toSorted(),
  ).toEqual(["Club hatch Varnholt", "JUNIOR Varnholt"]);
});

test("a page is turned for one combo or for all, and the page of an instant is found", async () => {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: hatch, track: fen });
  const { comboId: other } = await addCombo(book, { car: hatch, track: { name: "Old Mill" } });
  const one = await turnPage(book, { comboIds: [comboId], from: 1000, reason: "new surface" });
  expect(one.what).toBe("New page begun: new surface");
  const all = await turnPage(book, { comboIds: "all", from: 2000, reason: "new physics" });
  expect(all.what).toBe("New page begun for 2 combos: new physics");
  const pages = await pagesOfCombo(book, comboId);
  expect(pages.map(({ from }) => from)).toEqual([1000, 2000]);
  expect(pageOf(pages, 999)).toEqual({ from: Number.NEGATIVE_INFINITY, to: 1000 });
  expect(pageOf(pages, 1000)).toMatchObject({ from: 1000, to: 2000, page: { reason: "new surface" } });
  expect(pageOf(pages, 5000)).toMatchObject({ from: 2000, to: Number.POSITIVE_INFINITY });
  expect(pageOf([], 5)).toEqual({ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY });
  await undoChange(book, all);
  expect(await pagesOfCombo(book, other)).toEqual([]);
  await deletePage(book, pages[0]?.id ?? "");
  expect(await pagesOfCombo(book, comboId)).toEqual([]);
});

test("a combo was last driven on the day its newest session says, wherever that was", async () => {
  const { book, comboId, clock } = await anOpenSession();
  const { comboId: other } = await addCombo(book, { car: { name: "Club hatch 2" }, track: fen });
  clock.pass(60_000);
  await startSession(book, { comboId, date: "2026-03-11", zone: "Pacific/Kiritimati" });
  expect([...(await daysDriven(book, Number.MAX_SAFE_INTEGER))]).toEqual([[comboId, "2026-03-11"]]);
  clock.pass(60_000);
  await startSession(book, { comboId: other, date: "2026-03-09", zone: "Pacific/Pago_Pago" });
  expect((await daysDriven(book, Number.MAX_SAFE_INTEGER)).get(other)).toBe("2026-03-09");
});

test("counts the sessions of each combo from a moment on", async () => {
  const { book, clock, comboId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, { car: { name: "Club hatch 2" }, track: fen });
  clock.pass(60_000);
  const since = clock.now();
  await startSession(book, { comboId: other, date: "2026-03-11", zone: "UTC" });
  expect([...(await sessionsSince(book, since, Number.MAX_SAFE_INTEGER))]).toEqual([[other, 1]]);
  expect((await sessionsSince(book, 0, Number.MAX_SAFE_INTEGER)).get(comboId)).toBe(1);
});

test("two combos made one bring all that is theirs together, and undo parts them again", async () => {
  const { book, comboId, sessionId, runId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, { car: { name: "Club hatch 2" }, track: fen });
  const { sessionId: moved } = await startSession(book, { comboId: other, date: "2026-03-11", zone: "UTC" });
  await setTarget(book, { comboId: other, kind: "best", value: 82000, setOn: "2026-03-11" });
  const change = await joinCombos(book, { keepId: comboId, dropId: other });
  expect((await sessionOf(book, moved))?.comboId).toBe(comboId);
  expect(await runsOfCombo(book, comboId)).toHaveLength(2);
  expect(await targetsOfCombo(book, comboId)).toHaveLength(1);
  expect(await comboWithNames(book, other)).toBeUndefined();
  await undoChange(book, change);
  expect((await sessionOf(book, moved))?.comboId).toBe(other);
  expect((await runsOfCombo(book, comboId)).map(({ id, sessionId: of }) => [id, of])).toEqual([
    [runId, sessionId],
  ]);
  expect([...(await lastDriven(book, [comboId, other], Number.MAX_SAFE_INTEGER)).keys()]).toEqual([
    comboId,
    other,
  ]);
  await expect(joinCombos(book, { keepId: other, dropId: other })).rejects.toMatchObject({ code: "invalid" });
});

test("two cars made one make one of the combos that become the same", async () => {
  const { book } = await aLogbook();
  await addCombo(book, { car: hatch, track: fen });
  await addCombo(book, { car: { name: "Klub hatch" }, track: fen });
  await addCombo(book, { car: { name: "Klub hatch" }, track: { name: "Old Mill" } });
  const [keep, drop] = (await dump(book)).cars;
  await joinCars(book, { keepId: keep?.id ?? "", dropId: drop?.id ?? "" });
  expect(
    (await combosWithNames(book)).map(({ car, track }) => `${car.name} ${track.name}`).toSorted(),
  ).toEqual(["Club hatch Old Mill", "Club hatch Varnholt Ring"]);
});

test("two tracks made one keep layouts of other names and join those of the same", async () => {
  const { book } = await aLogbook();
  await addCombo(book, { car: hatch, track: fen });
  await addCombo(book, { car: hatch, track: { name: "Varnholt Ringg" }, sectors: 3 });
  await addCombo(book, { car: hatch, track: { name: "Varnholt Ringg" }, layout: { name: "Short" } });
  const [keep, drop] = (await dump(book)).tracks;
  const change = await joinTracks(book, { keepId: keep?.id ?? "", dropId: drop?.id ?? "" });
  const names = async () =>
    (await combosWithNames(book)).map(({ track, layout }) => `${track.name}/${layout.name}`).toSorted();
  expect(await names()).toEqual(["Varnholt Ring/", "Varnholt Ring/Short"]);
  expect(
    (await dump(book)).layouts.find(({ name, deletedAt }) => name === "" && deletedAt === undefined)?.sectors,
  ).toBe(3);
  await undoChange(book, change);
  expect(await names()).toEqual(["Varnholt Ring/", "Varnholt Ringg/", "Varnholt Ringg/Short"]);
  expect(await live(dump(book).then(({ tracks }) => tracks))).toBe(2);
});
