import "fake-indexeddb/auto";

import { expect, test } from "vitest";
import { addLap, defaultPreferences, editRun, endSession, preferences, startSession } from "#db";
import { digestMaker } from "../../../src/live/digestMaker.ts";
import { pageBest } from "../../../src/live/pageBest.ts";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";

/** A combo, and the way to drive one lap of a kind on it in a session of its own. */
async function aPage() {
  const { book, comboId, clock, sessionId } = await anOpenSession();
  await endSession(book, { sessionId });
  const maker = digestMaker({ ...(await preferences(book)), ...defaultPreferences });
  const drive = async (ms: number, kind: "pace" | "warm-up" | "drill", decimals = 3) => {
    clock.pass(3_600_000);
    const started = await startSession(book, { comboId, date: "2026-03-10", zone: "UTC" });
    await editRun(book, { runId: started.runId, patch: { kind } });
    await addLap(book, { runId: started.runId, id: book.newId(), lap: aLap(ms, { decimals }) });
    await endSession(book, { sessionId: started.sessionId });
    return started.sessionId;
  };
  const best = async (except?: string, isAfterBest = false) => {
    const span = { from: 0, to: Number.POSITIVE_INFINITY };
    return (await pageBest(book, { comboId, span, isAfterBest, ...(except && { except }) }, maker))?.ms;
  };
  return { drive, best };
}

test("the page has no PB as long as only warm-ups and drills were driven on it", async () => {
  const { drive, best } = await aPage();
  await drive(84_000, "warm-up");
  await drive(83_900, "drill");
  expect(await best()).toBeUndefined();
});

test("a warm-up lap faster than every other is the PB only where a session before it has one", async () => {
  const { drive, best } = await aPage();
  await drive(84_000, "warm-up");
  const first = await drive(85_812, "pace");
  expect(await best()).toBe(85_812);
  await drive(84_500, "warm-up");
  expect(await best()).toBe(84_500);
  expect(await best(first)).toBeUndefined();
  await drive(83_000, "pace");
  expect(await best()).toBe(83_000);
});

test("a time of one decimal is the PB only where it is surely faster than the exact one", async () => {
  const { drive, best } = await aPage();
  await drive(83_450, "pace");
  // 83.4 may have been 83.400 or 83.499.
  await drive(83_400, "pace", 1);
  expect(await best()).toBe(83_450);
  expect(await best(undefined, true)).toBe(83_450);
  const sure = await drive(83_300, "pace", 1);
  expect(await best()).toBe(83_300);
  expect(await best(undefined, true)).toBe(83_300);
  expect(await best(sure, true)).toBe(83_450);
});

test("where the page had a PB before the span, a warm-up lap of two decimals can be the best of the span", async () => {
  const { drive, best } = await aPage();
  await drive(84_520, "warm-up", 2);
  await drive(84_510, "warm-up", 2);
  expect(await best()).toBeUndefined();
  expect(await best(undefined, true)).toBe(84_510);
});

test("a page on which nothing was driven has no PB", async () => {
  const { best } = await aPage();
  expect(await best()).toBeUndefined();
  expect(await best(undefined, true)).toBeUndefined();
});
