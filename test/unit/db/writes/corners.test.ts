import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addCombo,
  copyCorners,
  dump,
  editCar,
  editCorners,
  editLayout,
  removeCorner,
  setLowestSpeed,
  undoChange,
} from "#db";
import type { Corner } from "#domain";
import { aLogbook } from "../../../support/aLogbook.ts";

const hatch = { name: "Club hatch" };

async function aLayout(corners: readonly Corner[] = []) {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: hatch, track: { name: "Varnholt Ring" } });
  const { comboId: other } = await addCombo(book, { car: hatch, track: { name: "Tessemoor" } });
  const combos = (await dump(book)).combos;
  const layoutIn = (id: string) => combos.find((combo) => combo.id === id)?.layoutId ?? "";
  const [layoutId, otherId] = [layoutIn(comboId), layoutIn(other)];
  await editLayout(book, { layoutId, patch: { corners } });
  const cornersNow = async () => (await dump(book)).layouts.find(({ id }) => id === layoutId)?.corners;
  const speedsNow = async () => (await dump(book)).combos.find(({ id }) => id === comboId)?.lowestSpeeds;
  return { book, comboId, layoutId, otherId, cornersNow, speedsNow };
}

test("one corner is changed without touching the others", async () => {
  const { book, layoutId, cornersNow } = await aLayout([{ number: 1 }, { number: 3, radius: 40 }]);
  const changed = await editCorners(book, {
    layoutId,
    corners: [{ number: 3, patch: { radius: undefined, name: "Mill" } }],
  });
  const added = await editCorners(book, { layoutId, corners: [{ number: 2, patch: { direction: "left" } }] });
  expect([changed.what, added.what]).toEqual(["Corner 3 changed", "Corner 2 added"]);
  expect(await cornersNow()).toEqual([
    { number: 1 },
    { number: 2, direction: "left" },
    { number: 3, name: "Mill" },
  ]);
});

test("one kerb of a corner is changed by itself, and the last one taken out leaves none", async () => {
  const { book, layoutId, cornersNow } = await aLayout([{ number: 1, kerbs: { entry: 1, exit: 2 } }]);
  const edit = (kerbs: object) => editCorners(book, { layoutId, corners: [{ number: 1, patch: { kerbs } }] });
  await edit({ apex: 0.5, entry: undefined });
  expect(await cornersNow()).toEqual([{ number: 1, kerbs: { apex: 0.5, exit: 2 } }]);
  await edit({ apex: undefined, exit: undefined });
  expect(await cornersNow()).toEqual([{ number: 1 }]);
});

test("several corners and their lowest speeds are one write, which undo takes back as one", async () => {
  const { book, comboId, layoutId, cornersNow, speedsNow } = await aLayout([{ number: 1, bend: "fast" }]);
  await setLowestSpeed(book, { comboId, number: 1, speed: 30 });
  const change = await editCorners(book, {
    layoutId,
    comboId,
    corners: [
      { number: 4, patch: { bend: "hairpin" }, lowestSpeed: 12.5 },
      { number: 1, patch: {}, lowestSpeed: undefined },
      { number: 2, patch: { after: "long" } },
    ],
  });
  expect(change.what).toBe("3 corners changed");
  expect(await cornersNow()).toEqual([
    { number: 1, bend: "fast" },
    { number: 2, after: "long" },
    { number: 4, bend: "hairpin" },
  ]);
  expect(await speedsNow()).toEqual([{ number: 4, speed: 12.5 }]);
  await undoChange(book, change);
  expect(await cornersNow()).toEqual([{ number: 1, bend: "fast" }]);
  expect(await speedsNow()).toEqual([{ number: 1, speed: 30 }]);
});

test("a field of a corner that was changed elsewhere meanwhile is said", async () => {
  const seen: Corner = { number: 1, bend: "fast", radius: 80 };
  const { book, layoutId } = await aLayout([{ number: 1, bend: "kink", radius: 80 }]);
  const patch = { bend: "slow", radius: 60 } as const;
  const change = await editCorners(book, { layoutId, corners: [{ number: 1, patch, expected: seen }] });
  expect(change).toMatchObject({
    what: "Corner 1 changed; it had been changed elsewhere meanwhile",
    overwrote: ["bend"],
  });
});

test("undo takes back one corner and leaves what was typed at the others since", async () => {
  const { book, layoutId, cornersNow } = await aLayout([{ number: 1, bend: "slow" }]);
  const first = await editCorners(book, { layoutId, corners: [{ number: 1, patch: { bend: "fast" } }] });
  const added = await editCorners(book, { layoutId, corners: [{ number: 2, patch: {} }] });
  await editCorners(book, { layoutId, corners: [{ number: 3, patch: {} }] });
  expect((await undoChange(book, first)).skipped).toEqual([]);
  expect((await undoChange(book, added)).skipped).toEqual([]);
  expect(await cornersNow()).toEqual([{ number: 1, bend: "slow" }, { number: 3 }]);
});

test("undo leaves a corner that was changed again since, and says so", async () => {
  const { book, layoutId, cornersNow } = await aLayout([{ number: 1 }, { number: 2 }]);
  const change = await editCorners(book, {
    layoutId,
    corners: [
      { number: 1, patch: { bend: "slow" } },
      { number: 2, patch: { bend: "slow" } },
    ],
  });
  await editCorners(book, { layoutId, corners: [{ number: 2, patch: { bend: "kink" } }] });
  expect((await undoChange(book, change)).skipped).toEqual(["the layout has been changed again since"]);
  expect(await cornersNow()).toEqual([{ number: 1 }, { number: 2, bend: "kink" }]);
});

test("a lowest speed is set and cleared for one corner, and undo leaves those of others", async () => {
  const { book, comboId, speedsNow } = await aLayout();
  const set = (number: number, speed: number | undefined) => setLowestSpeed(book, { comboId, number, speed });
  const first = await set(5, 20);
  await set(2, 30);
  expect(first.what).toBe("Lowest speed at corner 5 stored");
  expect(await speedsNow()).toEqual([
    { number: 2, speed: 30 },
    { number: 5, speed: 20 },
  ]);
  await undoChange(book, first);
  expect(await speedsNow()).toEqual([{ number: 2, speed: 30 }]);
  expect((await set(2, undefined)).what).toBe("Lowest speed at corner 2 removed");
  expect(await speedsNow()).toBeUndefined();
});

test("a corner removed takes its lowest speeds with it, and undo brings both back", async () => {
  const { book, comboId, layoutId, cornersNow, speedsNow } = await aLayout([{ number: 1 }, { number: 2 }]);
  await setLowestSpeed(book, { comboId, number: 1, speed: 25 });
  await setLowestSpeed(book, { comboId, number: 2, speed: 20 });
  const change = await removeCorner(book, { layoutId, number: 2 });
  expect(change.what).toBe("Corner 2 removed");
  expect([await cornersNow(), await speedsNow()]).toEqual([[{ number: 1 }], [{ number: 1, speed: 25 }]]);
  await undoChange(book, change);
  expect(await cornersNow()).toHaveLength(2);
  expect(await speedsNow()).toHaveLength(2);
});

test("corners are copied from another layout, in place of those there or where nothing is known", async () => {
  const { book, layoutId, otherId, cornersNow } = await aLayout([{ number: 1, name: "Mill" }, { number: 9 }]);
  await editLayout(book, {
    layoutId: otherId,
    patch: { corners: [{ number: 1, name: "Church", bend: "slow" }, { number: 2 }] },
  });
  const copy = { fromId: otherId, layoutId };
  const filled = await copyCorners(book, { ...copy, how: "fill" });
  expect(filled.what).toBe("2 corners copied");
  expect(await cornersNow()).toEqual([
    { number: 1, name: "Mill", bend: "slow" },
    { number: 2 },
    { number: 9 },
  ]);
  await undoChange(book, filled);
  const replaced = await copyCorners(book, { ...copy, how: "replace" });
  expect(await cornersNow()).toEqual([{ number: 1, name: "Church", bend: "slow" }, { number: 2 }]);
  await undoChange(book, replaced);
  expect(await cornersNow()).toEqual([{ number: 1, name: "Mill" }, { number: 9 }]);
});

test("what is known of a car is changed field by field, said where it was changed elsewhere, and taken back", async () => {
  const { book } = await aLayout();
  const car = async () => (await dump(book)).cars[0];
  const seen = await car();
  const carId = seen?.id ?? "";
  const first = await editCar(book, { carId, patch: { width: 1.8, grip: 1.3 } });
  expect(first.what).toBe("Car changed");
  const again = await editCar(book, {
    carId,
    patch: { grip: undefined, braking: 11 },
    ...(seen && { expected: seen }),
  });
  expect(again.overwrote).toEqual(["grip"]);
  expect(await car()).toMatchObject({ name: "Club hatch", width: 1.8, braking: 11 });
  expect(await car()).not.toHaveProperty("grip");
  await undoChange(book, again);
  expect(await car()).toMatchObject({ width: 1.8, grip: 1.3 });
  expect(await car()).not.toHaveProperty("braking");
});
