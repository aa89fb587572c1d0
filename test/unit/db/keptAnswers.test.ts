import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addCombo,
  addLap,
  deleteTarget,
  dump,
  idMaker,
  keptAnswer,
  type Logbook,
  mergeInto,
  openLogbook,
  type Question,
  type ReadOnlyLogbook,
  rawRows,
  setPreferences,
  startSession,
} from "#db";
import { aFullLogbook } from "../../support/aFullLogbook.ts";
import { aLap } from "../../support/aLap.ts";
import { putRaw } from "../../support/damage.ts";

interface Level {
  readonly ms: number;
  readonly grid: Float64Array;
}

const question = (methodVersion = "1"): Question<Level> => ({
  name: "level",
  methodVersion,
  isWhole: (answer): answer is Level => (answer as Level | undefined)?.grid instanceof Float64Array,
});

/** Asks, and tells how often was computed. */
function anAsker() {
  let computed = 0;
  return async (book: ReadOnlyLogbook | Logbook, comboId: string, methodVersion?: string) => {
    const { ms } = await keptAnswer(book, comboId, question(methodVersion), async () => {
      computed += 1;
      return { ms: computed, grid: Float64Array.of(1, 2) };
    });
    return { ms, computed };
  };
}

async function twoCombos() {
  const full = await aFullLogbook();
  const names = { car: { name: "Junior" }, track: { name: "Old Mill" } };
  const { comboId: other } = await addCombo(full.book, names);
  const { runId: elsewhere } = await startSession(full.book, {
    comboId: other,
    date: "2026-03-10",
    zone: "UTC",
  });
  return { ...full, other, elsewhere };
}

test("an answer is kept while nothing changes, and for another tab as well", async () => {
  const { book, comboId } = await aFullLogbook();
  const ask = anAsker();
  expect(await ask(book, comboId)).toEqual({ ms: 1, computed: 1 });
  expect(await ask(book, comboId)).toEqual({ ms: 1, computed: 1 });
  const tab = await openLogbook({ name: book.name, clock: book.clock, newId: idMaker(book.clock) });
  expect(await ask(tab, comboId)).toEqual({ ms: 1, computed: 1 });
  tab.close();
  book.close();
});

test("an answer is computed anew after any change of its combo and of preferences, and of no other combo", async () => {
  const { book, comboId, other, runId, elsewhere } = await twoCombos();
  const ask = anAsker();
  await ask(book, comboId);
  await ask(book, other);
  await addLap(book, { runId: elsewhere, id: book.newId(), lap: aLap(83_000) });
  expect((await ask(book, comboId)).computed).toBe(2);
  expect((await ask(book, other)).computed).toBe(3);
  const target = await book.tables.targets.toCollection().first();
  const changes = [
    () => addLap(book, { runId, id: book.newId(), lap: aLap(83_000) }),
    () => deleteTarget(book, target?.id ?? ""),
    () => setPreferences(book, { settlingLaps: 2 }),
    async () => {
      const rows = await dump(book);
      const references = rows.references.map((row) => ({ ...row, ms: 81_000, updatedAt: row.updatedAt + 1 }));
      await mergeInto(book, { ...rows, references }, "the other device");
    },
  ];
  let computed = 3;
  for (const change of changes) {
    await change();
    computed += 1;
    expect(await ask(book, comboId)).toEqual({ ms: computed, computed });
    expect(await ask(book, comboId)).toEqual({ ms: computed, computed });
  }
  book.close();
});

test("an answer of another method is computed anew, and takes the place of the old one", async () => {
  const { book, comboId } = await aFullLogbook();
  const ask = anAsker();
  await ask(book, comboId, "1");
  expect((await ask(book, comboId, "2")).computed).toBe(2);
  expect((await ask(book, comboId, "2")).computed).toBe(2);
  expect((await ask(book, comboId, "1")).computed).toBe(3);
  expect(await book.keptAnswers?.count()).toBe(1);
  book.close();
});

test("an answer is not kept when a lap came in while it was computed", async () => {
  const { book, comboId, runId } = await aFullLogbook();
  await keptAnswer(book, comboId, question(), async () => {
    await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
    return { ms: 0, grid: new Float64Array() };
  });
  expect(await book.keptAnswers?.count()).toBe(0);
  expect((await anAsker()(book, comboId)).computed).toBe(1);
  book.close();
});

test("a combo without a mark, from before there were marks or whose mark was damaged, gets one with its first answer", async () => {
  const { book, comboId } = await aFullLogbook();
  const ask = anAsker();
  await book.database.table("changeMarks").clear();
  await ask(book, comboId);
  expect((await ask(book, comboId)).computed).toBe(1);
  const mark = (await book.changeMarks?.get(comboId))?.mark;
  expect(mark).toHaveLength(36);
  expect((await book.changeMarks?.get("preferences"))?.mark).toHaveLength(36);
  expect(await book.changeMarks?.count()).toBe(2);
  await putRaw(book.name, "changeMarks", { id: comboId, mark: "" });
  expect((await ask(book, comboId)).computed).toBe(2);
  expect((await ask(book, comboId)).computed).toBe(2);
  expect((await book.changeMarks?.get(comboId))?.mark).not.toBe(mark);
  book.close();
});

test("whatever a kept answer holds, it is given whole or computed anew", async () => {
  const { book, comboId } = await aFullLogbook();
  const ask = anAsker();
  await ask(book, comboId);
  const row = (await book.keptAnswers?.toCollection().first()) as object;
  let computed = 1;
  for (const patch of [
    ...[undefined, null, "", 0, false, [], {}].map((answer) => ({ answer })),
    ...[undefined, "", 5].flatMap((value) => [{ mark: value }, { version: value }]),
  ]) {
    await putRaw(book.name, "keptAnswers", { ...row, ...patch });
    computed += 1;
    expect(await ask(book, comboId), JSON.stringify(patch)).toMatchObject({ ms: computed });
  }
  book.close();
});

test("a logbook that is only read has its answers computed, and nothing is stored", async () => {
  const { book, comboId } = await aFullLogbook();
  const { database: _, ...reading } = book;
  const ask = anAsker();
  await ask(reading, comboId);
  expect((await ask(reading, comboId)).computed).toBe(2);
  expect(await book.keptAnswers?.count()).toBe(0);
  book.close();
});

test("kept answers are in no backup, not even in one made past all checks", async () => {
  const { book, comboId } = await aFullLogbook();
  await anAsker()(book, comboId);
  expect(Object.keys(await dump(book))).not.toContain("keptAnswers");
  const { rows } = await rawRows(book.name);
  expect(Object.keys(rows)).not.toContain("keptAnswers");
  expect(Object.keys(rows)).not.toContain("changeMarks");
  book.close();
});

test("in a logbook that another tab has upgraded, or that lacks a place for answers, they are computed and not kept", async () => {
  const { book, comboId } = await aFullLogbook();
  const ask = anAsker();
  const status = { ...book.status, get: () => ({ kind: "newerTab" }) as const };
  await ask({ ...book, status }, comboId);
  expect(await book.keptAnswers?.count()).toBe(0);
  const { database: _, keptAnswers: __, changeMarks: ___, ...newer } = book;
  expect((await ask(newer, comboId)).computed).toBe(2);
  book.close();
});

test("an answer that cannot be kept is missed in words", async () => {
  const { book, comboId } = await aFullLogbook();
  const asking = keptAnswer(book, comboId, question(), async () => {
    book.database.close({ disableAutoOpen: true });
    return { ms: 0, grid: new Float64Array() };
  });
  await expect(asking).rejects.toMatchObject({
    code: "closed",
    message: expect.stringMatching(/^Answer not kept: /),
  });
});
