import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, dump, mergeInto, openLogbook, setPreferences } from "#db";
import { askHere } from "#live";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const laps = [84_300, 84_100, 84_200, 84_000, 84_400];

/** A logbook with so many sessions whose figures nobody has asked for yet. */
async function waiting(count: number) {
  const { book } = await aLogbook();
  const { comboId } = await addCombo(book, { car: { name: "Club hatch" }, track: { name: "Varnholt Ring" } });
  await addSessions(
    book,
    comboId,
    Array.from({ length: count }, () => ({ date: "2026-03-01", laps })),
  );
  const kept = async () => (await book.digests.toArray()).filter(({ digest }) => digest !== undefined);
  return { book, kept };
}

test("the figures of every session that waits are made once, under the driver's own choices", async () => {
  const { book, kept } = await waiting(3);
  await setPreferences(book, { settlingLaps: 2 });
  expect(await kept()).toHaveLength(0);
  expect(await askHere(book, "freshen", null)).toBe(3);
  expect((await kept()).map(({ digest }) => digest)).toMatchObject([
    { pace: { laps: 3 } },
    { pace: { laps: 3 } },
    { pace: { laps: 3 } },
  ]);
  expect(await askHere(book, "freshen", null)).toBe(0);
  book.close();
});

test("a logbook that may only be read is left as it is", async () => {
  const { book, kept } = await waiting(1);
  const { name, clock, newId } = book;
  const reading = await openLogbook({ name, clock, newId, mode: "read" });
  expect(await askHere(reading, "freshen", null)).toBe(0);
  expect(await kept()).toHaveLength(0);
  reading.close();
  book.close();
});

test("after more sessions than are made at once none waits any more", async () => {
  const { book, kept } = await waiting(1);
  // The one session 203 times over, as another device would have it.
  const rows = await dump(book);
  const copies = Array.from({ length: 203 }, () => book.newId());
  const theirs = {
    ...rows,
    sessions: copies.flatMap((id) => rows.sessions.map((session) => ({ ...session, id }))),
    runs: copies.flatMap((sessionId) => rows.runs.map((run) => ({ ...run, id: book.newId(), sessionId }))),
  };
  await mergeInto(book, theirs, "the other device");
  expect(await askHere(book, "freshen", null)).toBe(204);
  expect(await kept()).toHaveLength(204);
  book.close();
});
