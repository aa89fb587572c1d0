import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, checkRows, dump, marksOf, mergeRows, partOf, startSession } from "#db";
import { type AllRows, noRows, tableNames } from "#domain";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";

const counts = (rows: AllRows) =>
  Object.fromEntries(
    tableNames.flatMap((table) => (rows[table].length > 0 ? [[table, rows[table].length]] : [])),
  );

test("a session is sent with all it hangs on, deleted rows too, and is whole by itself", async () => {
  const { book, clock, comboId, sessionId } = await aFullLogbook();
  clock.pass(86_400_000);
  const other = await startSession(book, { comboId, date: "2026-03-11", zone: "Europe/Berlin" });
  const all = await dump(book);
  const part = partOf(all, { kind: "session", sessionId });
  expect(part.sessions.map(({ id }) => id)).toEqual([sessionId]);
  expect(part.runs.map(({ id }) => id)).not.toContain(other.runId);
  expect(part.runs.filter(({ deletedAt }) => deletedAt !== undefined)).toHaveLength(1);
  expect(
    part.runs.flatMap(({ laps }) => laps).filter(({ deletedAt }) => deletedAt !== undefined),
  ).toHaveLength(1);
  expect(counts(part)).toMatchObject({
    cars: 1,
    tracks: 1,
    layouts: 1,
    combos: 1,
    pages: 1,
    rigs: 1,
    cornerReviews: 1,
  });
  expect(counts(part)).not.toHaveProperty("targets");
  expect(checkRows(part).bad).toEqual([]);
});

test.each([
  ["a minute later", 60_000],
  ["with a clock set back ten years", -3650 * 86_400_000],
  ["with a clock that stood still", 0],
])(
  "what is new is a lap added to an old run %s, and merged it brings the other copy up to date",
  async (_, passed) => {
    const { book, clock, runId } = await aFullLogbook();
    const then = await dump(book);
    clock.pass(passed);
    await addLap(book, { runId, id: book.newId(), lap: aLap(83_100) });
    const now = await dump(book);
    const part = partOf(now, { kind: "unsent", sent: marksOf(then) });
    expect(part.runs.map(({ id }) => id)).toEqual([runId]);
    expect(part.targets).toEqual([]);
    expect(mergeRows(then, part)).toEqual(mergeRows(now, noRows));
  },
);

test("nothing new is nothing to send", async () => {
  const { book } = await aFullLogbook();
  const rows = await dump(book);
  expect(counts(partOf(rows, { kind: "unsent", sent: marksOf(rows) }))).toEqual({});
});
