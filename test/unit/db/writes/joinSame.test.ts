import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  addCornerReview,
  addReference,
  addRigTest,
  combosWithNames,
  deleteReference,
  dump,
  editCar,
  editLayout,
  joinCars,
  joinCombos,
  joinLayouts,
  joinTracks,
  setLowestSpeed,
  setTarget,
  startSession,
  turnPage,
  undoChange,
} from "#db";
import type { Id } from "#domain";
import { addForecast } from "../../../support/addForecast.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const hatch = { name: "Club hatch" };
const fen = { name: "Varnholt Ring" };

async function twoCombos() {
  const { book } = await aLogbook();
  const { comboId: keepId } = await addCombo(book, { car: hatch, track: fen });
  const { comboId: dropId } = await addCombo(book, { car: { name: "Klub hatch" }, track: fen });
  return { book, keepId, dropId };
}

test("all that belongs to one of two combos goes to the other, but for what is deleted", async () => {
  const { book, keepId, dropId } = await twoCombos();
  const comboId = dropId;
  const { sessionId } = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
  await turnPage(book, { comboIds: [comboId], from: 1000, reason: "new surface" });
  const reference = { comboId, ms: 82_000, decimals: 3, source: "a friend" };
  await addReference(book, reference);
  const { id: gone } = await addReference(book, reference);
  await deleteReference(book, gone);
  const { id: targetId } = await setTarget(book, {
    comboId,
    kind: "best",
    value: 82_000,
    setOn: "2026-03-10",
  });
  const said = { madeOn: "2026-03-11", by: "2026-04-01", chance: 0.4, method: "m" };
  await addForecast(book, { targetId, comboId, ...said });
  const asked = { question: "Is far better?", rigA: book.newId(), rigB: book.newId(), pairs: [] };
  await addRigTest(book, { comboId, ...asked, pairsPlanned: 6, level: 0.9, seed: 7 });
  await addCornerReview(book, { comboId, sessionId, on: "2026-03-10", corners: [] });
  const change = await joinCombos(book, { keepId, dropId });
  expect(change.what).toBe("Two combos made one");
  const rows = await dump(book);
  const ofCombo = ["sessions", "runs", "pages", "targets", "forecasts", "rigTests", "cornerReviews"] as const;
  for (const table of ofCombo)
    expect(
      rows[table].map((row) => row.comboId),
      table,
    ).toEqual([keepId]);
  expect(rows.references.find(({ id }) => id === gone)?.comboId).toBe(dropId);
  expect(rows.references.filter((row) => row.comboId === keepId)).toHaveLength(1);
  expect((await combosWithNames(book)).map(({ combo }) => combo.id)).toEqual([keepId]);
});

test("a row is not joined with itself, nor with one that is gone", async () => {
  const { book, keepId } = await twoCombos();
  const { cars, tracks, layouts } = await dump(book);
  const idOf = (rows: readonly { readonly id: Id }[]) => rows[0]?.id ?? "";
  const before = await dump(book);
  for (const [join, id, what] of [
    [joinCombos, keepId, "combo is"],
    [joinCars, idOf(cars), "car is"],
    [joinTracks, idOf(tracks), "track is"],
    [joinLayouts, idOf(layouts), "layout is"],
  ] as const) {
    await expect(join(book, { keepId: id, dropId: id })).rejects.toMatchObject({
      code: "invalid",
      message: "Nothing was changed: choose two different ones.",
    });
    for (const same of [
      { keepId: id, dropId: book.newId() },
      { keepId: book.newId(), dropId: id },
    ])
      await expect(join(book, same)).rejects.toMatchObject({
        code: "missing",
        message: expect.stringContaining(`the ${what} no longer there`),
      });
  }
  expect(await dump(book)).toEqual(before);
});

test("two cars made one keep the combos of both, each on its own layout, and those of other cars", async () => {
  const { book } = await twoCombos();
  await addCombo(book, { car: { name: "Klub hatch" }, track: fen, layout: { name: "Short" } });
  await addCombo(book, { car: { name: "Junior" }, track: fen });
  const { cars } = await dump(book);
  const idOf = (name: string) => cars.find((row) => row.name === name)?.id ?? "";
  const change = await joinCars(book, { keepId: idOf("Club hatch"), dropId: idOf("Klub hatch") });
  expect(change.what).toBe("Two cars made one");
  expect(
    (await combosWithNames(book)).map(({ car, layout }) => `${car.name}/${layout.name}`).toSorted(),
  ).toEqual(["Club hatch/", "Club hatch/Short", "Junior/"]);
  expect((await dump(book)).cars.filter(({ deletedAt }) => deletedAt !== undefined)).toMatchObject([
    { name: "Klub hatch" },
  ]);
});

test("the layout that stays takes over what it does not know, and keeps what it does", async () => {
  const { book } = await twoCombos();
  await addCombo(book, { car: hatch, track: fen, layout: { name: "Shrot" } });
  await addCombo(book, { car: hatch, track: fen, layout: { name: "Short" } });
  const layouts = async () => (await dump(book)).layouts;
  const idOf = async (name: string) => (await layouts()).find((row) => row.name === name)?.id ?? "";
  const [keepId, dropId] = [await idOf("Short"), await idOf("Shrot")];
  await editLayout(book, { layoutId: dropId, patch: { sectors: 3, length: 1800, corners: [{ number: 1 }] } });
  await editLayout(book, { layoutId: keepId, patch: { sectors: 2 } });
  const change = await joinLayouts(book, { keepId, dropId });
  expect(change.what).toBe("Two layouts made one");
  const kept = (await layouts()).find(({ id }) => id === keepId);
  expect(kept).toMatchObject({ sectors: 2, length: 1800, corners: [{ number: 1 }] });
  expect((await layouts()).find(({ id }) => id === dropId)?.deletedAt).toBeDefined();
  expect((await combosWithNames(book)).map(({ layout }) => layout.name).toSorted()).toEqual([
    "",
    "",
    "Short",
  ]);
});

test("two layouts made one lose no corner and invent no length", async () => {
  const { book } = await twoCombos();
  await addCombo(book, { car: hatch, track: fen, layout: { name: "Short" } });
  const [keep, drop] = (await dump(book)).layouts.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const [keepId, dropId] = [keep?.id ?? "", drop?.id ?? ""];
  await editLayout(book, {
    layoutId: keepId,
    patch: { length: 2740, corners: [{ number: 1, name: "Mill" }] },
  });
  await editLayout(book, { layoutId: dropId, patch: { length: 9, corners: [{ number: 1 }] } });
  await joinLayouts(book, { keepId, dropId });
  const kept = (await dump(book)).layouts.find(({ id }) => id === keepId);
  expect(kept).toMatchObject({ length: 2740, corners: [{ number: 1, name: "Mill" }] });
  expect(kept).not.toHaveProperty("sectors");
});

test("two layouts made one have every corner of both, and all that either knows of one", async () => {
  const { book } = await twoCombos();
  await addCombo(book, { car: hatch, track: fen, layout: { name: "Short" } });
  const [keep, drop] = (await dump(book)).layouts.toSorted((a, b) => (a.name < b.name ? -1 : 1));
  const [keepId, dropId] = [keep?.id ?? "", drop?.id ?? ""];
  await editLayout(book, {
    layoutId: keepId,
    patch: { corners: [{ number: 1, name: "Mill" }, { number: 4 }] },
  });
  await editLayout(book, {
    layoutId: dropId,
    patch: {
      corners: [
        { number: 1, name: "Church", bend: "slow" },
        { number: 2, direction: "left" },
      ],
    },
  });
  const change = await joinLayouts(book, { keepId, dropId });
  const corners = async () => (await dump(book)).layouts.find(({ id }) => id === keepId)?.corners;
  expect(await corners()).toEqual([
    { number: 1, name: "Mill", bend: "slow" },
    { number: 2, direction: "left" },
    { number: 4 },
  ]);
  await undoChange(book, change);
  expect(await corners()).toEqual([{ number: 1, name: "Mill" }, { number: 4 }]);
});

test("of two cars and two combos made one nothing is forgotten that only one of them knew", async () => {
  const { book, keepId, dropId } = await twoCombos();
  const { cars } = await dump(book);
  const idOf = (name: string) => cars.find((row) => row.name === name)?.id ?? "";
  const [keepCar, dropCar] = [idOf("Club hatch"), idOf("Klub hatch")];
  await editCar(book, { carId: keepCar, patch: { width: 1.7 } });
  await editCar(book, { carId: dropCar, patch: { width: 1.9, grip: 1.1 } });
  await setLowestSpeed(book, { comboId: keepId, number: 5, speed: 20 });
  await setLowestSpeed(book, { comboId: dropId, number: 5, speed: 25 });
  await setLowestSpeed(book, { comboId: dropId, number: 2, speed: 30 });
  const change = await joinCars(book, { keepId: keepCar, dropId: dropCar });
  const kept = async () => {
    const rows = await dump(book);
    const combo = rows.combos.find(({ id }) => id === keepId);
    const { width, grip } = rows.cars.find(({ id }) => id === keepCar) ?? {};
    return { width, grip, speeds: combo?.lowestSpeeds };
  };
  expect(await kept()).toEqual({
    width: 1.7,
    grip: 1.1,
    speeds: [
      { number: 2, speed: 30 },
      { number: 5, speed: 20 },
    ],
  });
  await undoChange(book, change);
  expect(await kept()).toEqual({ width: 1.7, grip: undefined, speeds: [{ number: 5, speed: 20 }] });
});

test("tracks made one leave other tracks' layouts where they are", async () => {
  const { book } = await twoCombos();
  await addCombo(book, { car: hatch, track: { name: "Varnholt Ringg" }, layout: { name: "Short" } });
  await addCombo(book, { car: hatch, track: { name: "Old Mill" } });
  const { tracks } = await dump(book);
  const idOf = (name: string) => tracks.find((row) => row.name === name)?.id ?? "";
  const change = await joinTracks(book, { keepId: idOf("Varnholt Ring"), dropId: idOf("Varnholt Ringg") });
  expect(change.what).toBe("Two tracks made one");
  expect(
    (await combosWithNames(book)).map(({ track, layout }) => `${track.name}/${layout.name}`).toSorted(),
  ).toEqual(["Old Mill/", "Varnholt Ring/", "Varnholt Ring/", "Varnholt Ring/Short"]);
});

test("two layouts made one keep the combos of different cars apart", async () => {
  const { book } = await aLogbook();
  await addCombo(book, { car: hatch, track: fen, layout: { name: "Short" } });
  await addCombo(book, { car: { name: "Junior" }, track: fen, layout: { name: "Shrot" } });
  const { layouts } = await dump(book);
  const idOf = (name: string) => layouts.find((row) => row.name === name)?.id ?? "";
  await joinLayouts(book, { keepId: idOf("Short"), dropId: idOf("Shrot") });
  expect(
    (await combosWithNames(book)).map(({ car, layout }) => `${car.name}/${layout.name}`).toSorted(),
  ).toEqual(["Club hatch/Short", "Junior/Short"]);
});
