import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, deleteRun, editSession } from "#db";
import { askHere } from "#live";
import { markOf } from "../../../../src/live/jobs/markOf.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const laps = [84_000, 84_100, 84_200, 84_300];

async function filled(count: number) {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: "Marlow Fen" } });
  const days = Array.from({ length: count }, (_, n) => ({
    date: new Date(Date.UTC(2025, 0, 1 + n)).toISOString().slice(0, 10),
    laps: laps.map((ms) => ms + n),
    note: n % 2 === 0 ? "even day" : "odd day",
  }));
  return { book, sessions: await addSessions(book, comboId, days) };
}

test("gives the newest, and the number of all that was found", async () => {
  const { book } = await filled(8);
  const found = await askHere(book, "search", { terms: { longest: 84_003 }, most: 3 });
  expect([found.sessionCount, found.lapCount]).toEqual([4, 4]);
  expect(found.sessions.map(({ date }) => date)).toEqual(["2025-01-04", "2025-01-03", "2025-01-02"]);
  expect(found.laps.map(({ ms, runNumber, lapNumber }) => [ms, runNumber, lapNumber])).toEqual([
    [84_003, 1, 1],
    [84_002, 1, 1],
    [84_001, 1, 1],
  ]);
  book.close();
});

test("goes through more sessions than are read at once", async () => {
  const { book } = await filled(230);
  const found = await askHere(book, "search", { terms: { words: "EVEN hatch" }, most: 50 });
  expect([found.sessionCount, found.sessions.length, found.lapCount]).toEqual([115, 50, 0]);
  book.close();
});

test("a deleted run is not found, a session without runs still is", async () => {
  const { book, sessions } = await filled(1);
  const run = await book.tables.runs.toCollection().first();
  await deleteRun(book, { runId: run?.id ?? "" });
  expect(await askHere(book, "search", { terms: { shortest: 1 }, most: 5 })).toMatchObject({ lapCount: 0 });
  const byNote = await askHere(book, "search", { terms: { words: "even" }, most: 5 });
  expect(byNote.sessions.map(({ sessionId, laps: n }) => [sessionId, n])).toEqual([[sessions[0], 0]]);
  book.close();
});

test("a changed note alone asks for a new search", async () => {
  const { book, sessions } = await filled(2);
  const details = { terms: { words: "late" }, most: 5 };
  const before = await markOf(book, "search", details);
  await editSession(book, { sessionId: sessions[0] ?? "", patch: { note: "late apex" } });
  expect(await markOf(book, "search", details)).not.toBe(before);
  expect(await askHere(book, "search", details)).toMatchObject({ sessionCount: 1 });
  book.close();
});
