import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addLap, digestsOfCombo, preferences, setPreferences } from "#db";
import { digestMaker } from "../../../src/live/digestMaker.ts";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";

/** A session of six laps and what its stored figures say under the driver's choices. */
async function sixLaps(decimals = 3) {
  const { book, runId, comboId } = await anOpenSession();
  for (const ms of [85_000, 84_000, 83_500, 83_400, 83_300, 83_200])
    await addLap(book, { runId, id: book.newId(), lap: aLap(ms, { decimals }) });
  const pace = async () => {
    const [one] = await digestsOfCombo(book, comboId, digestMaker(await preferences(book)));
    return one && { laps: one.digest.pace.laps, exact: one.digest.pace.exactLaps, isNew: one.isNew };
  };
  return { book, pace };
}

test("a stored session is worked out anew when the driver says how many laps settle the tyres", async () => {
  const { book, pace } = await sixLaps();
  expect(await pace()).toMatchObject({ laps: 6, isNew: true });
  expect(await pace()).toMatchObject({ laps: 6, isNew: false });
  await setPreferences(book, { settlingLaps: 2 });
  expect(await pace()).toMatchObject({ laps: 4, isNew: true });
});

test("a lap of two decimals enters the spread once the simulator is said to show no more", async () => {
  const { book, pace } = await sixLaps(2);
  expect(await pace()).toMatchObject({ exact: 0, isNew: true });
  await setPreferences(book, { displayDecimals: 2 });
  expect(await pace()).toMatchObject({ exact: 6, isNew: true });
});
