import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import {
  addLap,
  addRig,
  markOfAllCombos,
  markOfBook,
  markOfCombo,
  markOfEverything,
  setPreferences,
  startSession,
} from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

const rig = { from: "2026-03-01", name: "", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {}, note: "" };

test("a logbook in which nothing has changed yet has marks, and no state that is worth keeping", async () => {
  const { book } = await aLogbook();
  expect(await markOfCombo(book, book.newId())).toBe("never never");
  expect([await markOfAllCombos(book), await markOfEverything(book)]).toEqual(["", ""]);
  expect(await markOfBook(book)).toBeUndefined();
});

test("a lap moves every mark, preferences all but that of the state to keep, the rig only that of everything", async () => {
  const { book, comboId, runId, clock } = await anOpenSession();
  const marks = () =>
    Promise.all([
      markOfCombo(book, comboId),
      markOfAllCombos(book),
      markOfBook(book),
      markOfEverything(book),
    ]);
  const moved = async (change: () => Promise<unknown>) => {
    clock.pass(1000);
    const before = await marks();
    await change();
    return (await marks()).map((mark, at) => mark !== before[at]);
  };
  expect(await moved(() => addLap(book, { runId, id: book.newId(), lap: aLap(83_000) }))).toEqual([
    true,
    true,
    true,
    true,
  ]);
  expect(await moved(() => setPreferences(book, { settlingLaps: 2 }))).toEqual([true, true, false, true]);
  expect(await moved(() => addRig(book, rig))).toEqual([false, false, false, true]);
});

test("a combo's mark is of two parts, its own and that of the preferences, which it shares", async () => {
  const { book, comboId } = await anOpenSession();
  await setPreferences(book, { settlingLaps: 2 });
  const [own, ofPreferences] = (await markOfCombo(book, comboId)).split(" ");
  expect(await markOfCombo(book, book.newId())).toBe(`never ${ofPreferences}`);
  expect(own).not.toBe("never");
  expect((await markOfAllCombos(book)).split(" ").toSorted()).toEqual([own, ofPreferences].toSorted());
});

test("where a newer version keeps no marks they are the same at all times", async () => {
  const { book, comboId } = await anOpenSession();
  const { changeMarks: _, ...without } = book;
  expect(await markOfCombo(without, comboId)).toBe("");
  expect([await markOfAllCombos(without), await markOfEverything(without)]).toEqual(["", ""]);
  const before = await markOfBook(without);
  await startSession(book, { comboId, date: "2026-03-11", zone: "UTC" });
  expect(await markOfBook(without)).toBe(before);
});
