import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { deleteSession, mergeInto } from "#db";
import { askHere } from "#live";
import { aLogbook } from "../../../support/aLogbook.ts";
import { rows, truth } from "../../demo-data/theDemo.ts";

async function theDemoOpened() {
  const { book } = await aLogbook(Date.UTC(2026, 10, 25));
  await mergeInto(book, rows, "the demo");
  const [test] = rows.rigTests;
  if (test?.rigA === undefined || test.rigB === undefined) throw new Error("The demo has a rig test.");
  return { book, test: { rigA: test.rigA, rigB: test.rigB } };
}

test("the demo's pairs of runs find what the lower gain did, and name the setting it was tried against", async () => {
  const { book, test: tried } = await theDemoOpened();
  const [found, ...more] = await askHere(book, "rigTests", { rigId: tried.rigB });
  expect(more).toEqual([]);
  expect(found).toMatchObject({ side: "B", comboId: truth.combos.moorHatch.comboId });
  expect(found?.against?.name).toBe("As it was");
  const effect = truth.settings.gain.effectMs.moorHatch;
  const verdict = found?.report.verdict;
  if (!verdict?.known) throw new Error("Eight pairs of eight planned are enough.");
  expect(verdict.value.finding).toBe("B");
  expect(verdict.value.low).toBeLessThan(effect);
  expect(verdict.value.high).toBeGreaterThan(effect);
  expect(found?.sessions).toHaveLength(4);
  expect(found?.sessions.map(({ date }) => date)).toEqual(found?.sessions.map(({ date }) => date).toSorted());
  expect((await askHere(book, "rigTests", { rigId: tried.rigA }))[0]?.side).toBe("A");
  book.close();
});

test("a record that was tried in no pairs has no test, and deleted runs leave their pair without a difference", async () => {
  const { book, test: tried } = await theDemoOpened();
  expect(await askHere(book, "rigTests", { rigId: book.newId() })).toEqual([]);
  const [before] = await askHere(book, "rigTests", { rigId: tried.rigB });
  await deleteSession(book, { sessionId: before?.sessions[0]?.id ?? "" });
  const [after] = await askHere(book, "rigTests", { rigId: tried.rigB });
  expect(after?.sessions).toHaveLength(3);
  expect(after?.report.complete).toBe(6);
  expect(after?.report.verdict.known).toBe(false);
  book.close();
});
