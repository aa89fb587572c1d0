import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, addCornerReview, addLap, editCorners, turnPage } from "#db";
import { askHere } from "#live";
import { addSessions } from "../../../support/addSessions.ts";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const today = "2026-03-10";
const laps = [84_300, 84_100, 84_200, 84_000, 84_400];

test("the corners of a combo are told by its layout, its laps and its reviews", async () => {
  const { book, clock } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  const [layout] = await book.tables.layouts.toArray();
  const ids = await addSessions(book, comboId, [
    { date: "2026-03-01", laps },
    { date: "2026-03-04", laps },
  ]);
  const [run] = await book.tables.runs
    .where("sessionId")
    .equals(ids[1] ?? "")
    .toArray();
  const remarks = [{ kind: "off", corner: 5 }] as const;
  await addLap(book, { runId: run?.id ?? "", id: book.newId(), lap: { ...aLap(90_200), remarks } });
  await editCorners(book, {
    layoutId: layout?.id ?? "",
    corners: [{ number: 3, patch: { name: "Dyke", bend: "slow" } }],
  });
  await addCornerReview(book, { comboId, on: "2026-03-04", corners: [{ number: 3, exit: 1 }] });
  const ask = () => askHere(book, "corners", { comboId, today });
  const report = await ask();
  expect(report?.corners.map(({ number, name }) => [number, name])).toEqual([
    [3, "Dyke"],
    [5, undefined],
  ]);
  // Six seconds in six laps, which are six of eleven.
  expect(report?.corners[1]?.mistakes.ms).toBe(Math.round((1000 * 6) / 11));
  expect(report?.order).toEqual([5, 3]);
  expect(report?.sessions).toBe(2);
  await book.tables.cars.toCollection().modify({ grip: 3 });
  const gripped = await ask();
  expect(gripped?.corners[0]?.worth).not.toEqual(report?.corners[0]?.worth);
  clock.pass(1000);
  await turnPage(book, { comboIds: [comboId], from: Date.parse("2026-03-03T12:00:00Z"), reason: "tyres" });
  expect(await ask()).toMatchObject({ sessions: 1 });
  book.close();
});

test("of a combo that is not there nothing is told", async () => {
  const { book } = await aLogbook();
  expect(await askHere(book, "corners", { comboId: "none", today })).toBeNull();
  book.close();
});
