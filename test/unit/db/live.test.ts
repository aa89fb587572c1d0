import "fake-indexeddb/auto";

import { liveQuery } from "dexie";
import { expect, test, vi } from "vitest";
import { addCombo, addLap, idMaker, markOfCombo, openLogbook, runsOfSession, startSession } from "#db";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";

test("a list of runs follows a lap typed in another tab", async () => {
  const { book, runId, sessionId, clock } = await anOpenSession();
  const otherTab = await openLogbook({ name: book.name, clock: clock.now, newId: idMaker(clock.now) });
  const seen: number[] = [];
  const listening = liveQuery(() => runsOfSession(book, sessionId)).subscribe((runs) =>
    seen.push(runs.reduce((sum, run) => sum + run.laps.length, 0)),
  );
  await vi.waitFor(() => expect(seen).toEqual([0]));
  await addLap(otherTab, { runId, id: otherTab.newId(), lap: aLap(83000) });
  await vi.waitFor(() => expect(seen.at(-1)).toBe(1));
  listening.unsubscribe();
  otherTab.close();
});

test("the mark of a combo is not woken by laps of another one", async () => {
  const { book, runId, comboId } = await anOpenSession();
  const { comboId: other } = await addCombo(book, { car: { name: "Junior" }, track: { name: "Old Mill" } });
  const { runId: elsewhere } = await startSession(book, { comboId: other, date: "2026-03-10", zone: "UTC" });
  const seen: string[] = [];
  const listening = liveQuery(() => markOfCombo(book, comboId)).subscribe((mark) => seen.push(mark));
  const there: string[] = [];
  const sentinel = liveQuery(() => markOfCombo(book, other)).subscribe((mark) => there.push(mark));
  await vi.waitFor(() => expect([seen.length, there.length]).toEqual([1, 1]));
  await addLap(book, { runId: elsewhere, id: book.newId(), lap: aLap(83000) });
  // Once those who watch the other combo have heard of it, so have all.
  await vi.waitFor(() => expect(there).toHaveLength(2));
  sentinel.unsubscribe();
  expect(seen).toHaveLength(1);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  await vi.waitFor(() => expect(seen).toHaveLength(2));
  listening.unsubscribe();
});
