import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, newestStampIn, setPreferences } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { aLogbook, anOpenSession } from "../../../support/aLogbook.ts";

test("the newest stamp is that of the row changed last, in whichever table; laps are not asked", async () => {
  const { book: empty } = await aLogbook();
  expect(await newestStampIn(empty)).toBe(0);
  const { book, clock, runId } = await anOpenSession();
  const begun = clock.now();
  await book.database.table("cars").add({ id: book.newId(), name: "Junior", createdAt: 5, updatedAt: 5 });
  expect(await newestStampIn(book)).toBe(begun);
  clock.pass(5000);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  expect(await newestStampIn(book)).toBe(begun);
  await setPreferences(book, { settlingLaps: 1 });
  expect(await newestStampIn(book)).toBeGreaterThanOrEqual(begun + 5000);
  await book.database
    .table("cars")
    .toCollection()
    .modify({ updatedAt: begun + 9000 });
  expect(await newestStampIn(book)).toBe(begun + 9000);
});
