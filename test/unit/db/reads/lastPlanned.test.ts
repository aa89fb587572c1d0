import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLaps, lastPlanned, startSession } from "#db";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("the newest session with a plan is given with its runs, none dated after tomorrow", async () => {
  const { book, comboId } = await anOpenSession();
  const forever = Number.POSITIVE_INFINITY;
  expect(await lastPlanned(book, comboId, forever)).toBeUndefined();
  const begin = (date: string, purpose?: string) =>
    startSession(book, {
      ...{ comboId, date, zone: "Europe/Berlin", startedAt: Date.parse(`${date}T18:00:00Z`) },
      ...(purpose !== undefined && { plan: [{ id: book.newId(), purpose }] }),
    });
  const { sessionId, runId } = await begin("2026-03-11", "Corner 5");
  await addLaps(book, { runId, laps: [{ id: book.newId(), lap: aLap(84_000) }] });
  await begin("2026-03-12");
  const later = await begin("2026-03-20", "Corner 6");
  const found = await lastPlanned(book, comboId, Date.parse("2026-03-15T00:00:00Z"));
  expect(found?.session.id).toBe(sessionId);
  expect(found?.runs.map(({ laps }) => laps.length)).toEqual([1]);
  expect((await lastPlanned(book, comboId, forever))?.session.id).toBe(later.sessionId);
});
