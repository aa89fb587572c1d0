import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addLaps, addRigTest, addRun, beginTestRun, deleteRun, rigTests } from "#db";
import { askHere } from "#live";
import { aFullLogbook } from "../../../support/aFullLogbook.ts";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

test("the tests of a combo, one of them, or all are read with what their settings are called", async () => {
  const { book } = await aFullLogbook();
  const [stored] = await rigTests(book);
  if (stored === undefined) throw new Error("a full logbook holds a rig test");
  const all = await askHere(book, "rigTestPages", {});
  expect(all.map(({ test }) => test.id)).toEqual((await rigTests(book)).map(({ id }) => id));
  const [one] = await askHere(book, "rigTestPages", { testId: stored.id });
  expect(one?.test).toEqual(stored);
  expect(one?.report.planned).toBe(stored.pairsPlanned);
  const sides = [stored.rigA, stored.rigB].filter((id) => id !== undefined);
  expect(one?.records.map(({ id }) => id).sort()).toEqual(sides.sort());
  expect(await askHere(book, "rigTestPages", { comboId: stored.comboId })).toEqual(all);
  expect(await askHere(book, "rigTestPages", { testId: "none" })).toEqual([]);
  book.close();
});

test("the runs of a test go by the numbers they have on Log, where a run was deleted before them", async () => {
  const { book, comboId, sessionId, runId } = await anOpenSession();
  const drive = (id: string) => addLaps(book, { runId: id, laps: [{ id: book.newId(), lap: aLap(84_000) }] });
  await drive(runId);
  const { runId: gone } = await addRun(book, { sessionId });
  await drive(gone);
  const { id: testId } = await addRigTest(book, {
    comboId,
    question: "",
    pairsPlanned: 6,
    level: 0.1,
    seed: 1,
    pairs: (["A", "B", "A", "B", "A", "B"] as const).map((first) => ({ first })),
  });
  const { runId: tested } = await beginTestRun(book, { sessionId, testId, pair: 1, side: "A" });
  await drive(tested);
  await deleteRun(book, { runId: gone });
  const [page] = await askHere(book, "rigTestPages", { testId });
  expect(page?.numbers).toEqual({ [tested]: 2 });
  book.close();
});
