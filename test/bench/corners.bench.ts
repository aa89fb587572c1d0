/**
 * What the corners of a combo are worth, beside the review of the same combo and the statement of its last week, out of one
 * logbook: 100 sessions of 20 laps, some with an off, fifteen corners looked at in four reviews. All figures that are kept
 * are there already.
 */
import "fake-indexeddb/auto";
import { bench, describe } from "vitest";
import { addCombo, addCornerReview, addLap, editCorners } from "#db";
import { askHere } from "#live";
import { normalAt } from "../../src/stats/random/draws.ts";
import { addSessions } from "../support/addSessions.ts";
import { aLap } from "../support/aLap.ts";
import { aLogbook } from "../support/aLogbook.ts";

const day = 86_400_000;
const first = Date.UTC(2026, 0, 1);
const dateOf = (number: number) => new Date(first + number * day).toISOString().slice(0, 10);
const sessions = 100;
const today = dateOf(sessions);
const numbers = Array.from({ length: 15 }, (_, at) => at + 1);

const { book } = await aLogbook(first + sessions * day);
const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
const [layout] = await book.tables.layouts.toArray();
await editCorners(book, {
  layoutId: layout?.id ?? "",
  corners: numbers.map((number) => ({ number, patch: { bend: "slow", after: "middling" } })),
});
const ids = await addSessions(
  book,
  comboId,
  Array.from({ length: sessions }, (_, at) => ({
    date: dateOf(at),
    laps: Array.from({ length: 20 }, (_, lap) => Math.round(84_000 - at + 300 * normalAt(3, at, lap))),
  })),
);
for (const [at, sessionId] of ids.entries()) {
  const [run] = await book.tables.runs.where("sessionId").equals(sessionId).toArray();
  const remarks = [{ kind: "off", corner: (at % numbers.length) + 1 }] as const;
  await addLap(book, { runId: run?.id ?? "", id: book.newId(), lap: { ...aLap(90_000), remarks } });
}
for (const at of [10, 40, 70, 95])
  await addCornerReview(book, {
    comboId,
    on: dateOf(at),
    corners: numbers.map((number) => ({ number, entry: 1 - at / 200, apex: 0.4, exit: 2 - at / 100 })),
  });
const report = await askHere(book, "corners", { comboId, today });
if (report?.order.length !== numbers.length || report.change === undefined) throw new Error("no answer");

describe("100 sessions, fifteen corners reviewed", () => {
  bench("corners", async () => {
    await askHere(book, "corners", { comboId, today });
  });

  bench("review of the combo", async () => {
    await askHere(book, "comboReview", { comboId, period: {}, today });
  });

  bench("week", async () => {
    await askHere(book, "statement", { monday: dateOf(95), today });
  });
});
