import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addLaps, addRigTest, addRun, beginTestRun, type Logbook, stopTest } from "#db";
import type { Id } from "#domain";
import { askHere } from "#live";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";

const even = (from: number) => Array.from({ length: 6 }, (_, lap) => from + lap * 17);

async function driven(book: Logbook, runId: Id, from: number) {
  await addLaps(book, { runId, laps: even(from).map((ms) => ({ id: book.newId(), lap: aLap(ms) })) });
  return runId;
}

/** An evening with the first pair of a test, and a run of practice after it. */
async function anEvening() {
  const { book, comboId, sessionId } = await anOpenSession();
  const { id: testId } = await addRigTest(book, {
    comboId,
    question: "",
    sayA: "gain 54 %",
    sayB: "gain 48 %",
    pairsPlanned: 6,
    level: 0.1,
    seed: 1,
    pairs: (["A", "B", "A", "B", "A", "B"] as const).map((first) => ({ first })),
  });
  const begin = async (side: "A" | "B") =>
    (await beginTestRun(book, { sessionId, testId, pair: 1, side })).runId;
  const a = await driven(book, await begin("A"), 84_500);
  const b = await driven(book, await begin("B"), 84_000);
  const practice = await driven(book, (await addRun(book, { sessionId })).runId, 84_200);
  const found = async (...ids: [Id, Id]) => {
    const sides = await askHere(book, "sideBySide", { kind: "run", ids });
    if (sides === null) throw new Error("Both runs are there.");
    return sides;
  };
  return { book, testId, a, b, practice, found };
}

test("nothing at all is told of a run of a test that lasts, beside its other run or one of practice", async () => {
  const { a, b, practice, found, book } = await anEvening();
  for (const ids of [[a, b] as const, [b, practice] as const]) {
    const { figures } = await found(...ids);
    expect(figures).toMatchObject({ apart: "lasting test", target: undefined, shift: { known: false } });
    for (const { best, usual, scatter, cleanShare, laps } of [figures.first, figures.second])
      expect([best.known, usual.known, scatter.known, cleanShare, laps]).toEqual([
        false,
        false,
        false,
        undefined,
        0,
      ]);
  }
  book.close();
});

test("once the test is over its runs compare with each other, and with no others", async () => {
  const { book, testId, a, b, practice, found } = await anEvening();
  await stopTest(book, testId);
  const { figures, second } = await found(a, b);
  expect(figures.apart).toBeUndefined();
  expect(figures.shift).toMatchObject({
    known: true,
    value: { by: "lap", first: 6, second: 6, estimate: -500 },
  });
  expect(second.tests.map(({ test }) => test.id)).toEqual([testId]);
  expect((await found(b, practice)).figures.apart).toBe("test");
  book.close();
});
