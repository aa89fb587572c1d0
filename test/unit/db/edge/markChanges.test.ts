import "fake-indexeddb/auto";
import { liveQuery } from "dexie";
import fc from "fast-check";
import { expect, test, vi } from "vitest";
import {
  addCombo,
  addLap,
  addRig,
  dump,
  idMaker,
  joinCombos,
  type Logbook,
  markOfAllCombos,
  markOfBook,
  markOfCombo,
  markOfEverything,
  openLogbook,
  restoreAsNew,
  setPreferences,
  startSession,
} from "#db";
import type { Stamped } from "#domain";
import { addForecast } from "../../../support/addForecast.ts";
import { aFullLogbook } from "../../../support/aFullLogbook.ts";
import { aLap } from "../../../support/aLap.ts";
import { anOpenSession } from "../../../support/aLogbook.ts";
import { putRaw } from "../../../support/damage.ts";
import { failReadsOf } from "../../../support/unreadableRows.ts";

/** Sessions last: of a logbook without any no state is kept. */
const ofCombo = ["pages", "references", "runs", "targets", "sessions"] as const;
const others = ["preferences", "cars", "tracks", "layouts", "combos", "rigs"] as const;

/** A full logbook with a second combo that nothing is done to. */
async function twoCombos() {
  const full = await aFullLogbook();
  const { comboId: other } = await addCombo(full.book, {
    car: { name: "Junior" },
    track: { name: "Old Mill" },
  });
  await startSession(full.book, { comboId: other, date: "2026-03-10", zone: "UTC" });
  return { ...full, other };
}

/** Every way in which a table can be written, each on rows of one table. */
const ways: Readonly<Record<string, (book: Logbook, table: string) => Promise<unknown>>> = {
  put: async ({ database }, table) => {
    const row = await database.table<Stamped>(table).toCollection().first();
    await database.table(table).put(row);
  },
  add: async ({ database, newId }, table) => {
    const row = await database.table<Stamped>(table).toCollection().first();
    await database.table(table).add({ ...row, id: newId() });
  },
  bulkPut: async ({ database }, table) =>
    database.table(table).bulkPut(await database.table(table).toArray()),
  bulkAdd: async ({ database, newId }, table) => {
    const rows = await database.table<Stamped>(table).toArray();
    await database.table(table).bulkAdd(rows.map((row) => ({ ...row, id: newId() })));
  },
  update: async ({ database }, table) => {
    const row = await database.table<Stamped>(table).toCollection().first();
    await database.table(table).update(row?.id ?? "", { updatedAt: 5 });
  },
  modify: ({ database }, table) =>
    database
      .table<{ updatedAt: number }>(table)
      .toCollection()
      .modify((row) => {
        row.updatedAt += 1;
      }),
  delete: async ({ database }, table) => {
    const row = await database.table<Stamped>(table).toCollection().first();
    await database.table(table).delete(row?.id ?? "");
  },
  bulkDelete: async ({ database }, table) =>
    database.table(table).bulkDelete(await database.table(table).toCollection().primaryKeys()),
  "delete where": ({ database }, table) => database.table(table).where(":id").above("").delete(),
  clear: ({ database }, table) => database.table(table).clear(),
  "raise in a transaction of many tables": ({ database }, table) =>
    database.transaction("rw", [table, "digests"], () =>
      database.table(table).toCollection().modify({ n: 9 }),
    ),
};

for (const [way, change] of Object.entries(ways))
  test(`whatever rows of a combo are changed by ${way}, its mark is another one`, async () => {
    const { book, comboId } = await aFullLogbook();
    const marks = () => Promise.all([markOfCombo(book, comboId), markOfAllCombos(book), markOfBook(book)]);
    for (const table of ofCombo) {
      const before = await marks();
      await change(book, table);
      const after = await marks();
      after.forEach((mark, index) => {
        expect(mark, `${table} ${index}`).not.toBe(before[index]);
      });
    }
    book.close();
  });

test("the mark of a combo stays while only another one, rig settings, names or forecasts change", async () => {
  const { book, comboId, other, runId } = await twoCombos();
  const [mine, theirs] = [await markOfCombo(book, comboId), await markOfCombo(book, other)];
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  expect(await markOfCombo(book, other)).toBe(theirs);
  const now = await markOfCombo(book, comboId);
  expect(now).not.toBe(mine);
  const all = [await markOfAllCombos(book), await markOfBook(book)];
  for (const table of [...others.filter((name) => name !== "preferences"), "forecasts", "rigTests"]) {
    const before = await markOfEverything(book);
    await book.database.table(table).toCollection().modify({ updatedAt: 5 });
    expect(await markOfEverything(book), table).not.toBe(before);
  }
  expect(await markOfCombo(book, comboId)).toBe(now);
  expect([await markOfAllCombos(book), await markOfBook(book)]).toEqual(all);
  book.close();
});

test("preferences move the marks of every combo, and no state of the logbook is due to be kept for them", async () => {
  const { book, comboId, other } = await twoCombos();
  const before = [
    await markOfCombo(book, comboId),
    await markOfCombo(book, other),
    await markOfAllCombos(book),
  ];
  const due = await markOfBook(book);
  await setPreferences(book, { settlingLaps: 2 });
  const after = [
    await markOfCombo(book, comboId),
    await markOfCombo(book, other),
    await markOfAllCombos(book),
  ];
  after.forEach((mark, index) => {
    expect(mark).not.toBe(before[index]);
  });
  expect(await markOfBook(book)).toBe(due);
  book.close();
});

test("rows that go from one combo to another move the marks of both, in one put as in a join of combos", async () => {
  const { book, comboId, other } = await twoCombos();
  const both = () => Promise.all([markOfCombo(book, comboId), markOfCombo(book, other)]);
  const before = await both();
  const target = await book.tables.targets.toCollection().first();
  await book.database.table("targets").put({ ...target, comboId: other });
  const moved = await both();
  moved.forEach((mark, index) => {
    expect(mark).not.toBe(before[index]);
  });
  await joinCombos(book, { keepId: comboId, dropId: other });
  (await both()).forEach((mark, index) => {
    expect(mark).not.toBe(moved[index]);
  });
  book.close();
});

test("a write that fails moves no mark", async () => {
  const { book, comboId } = await aFullLogbook();
  const before = await markOfEverything(book);
  const failing = book.database.transaction("rw", ["targets"], async (transaction) => {
    await transaction.table("targets").toCollection().modify({ value: 1 });
    throw new Error("on purpose");
  });
  await expect(failing).rejects.toThrow("on purpose");
  expect(await markOfEverything(book)).toBe(before);
  expect(await markOfCombo(book, comboId)).toContain(" ");
  book.close();
});

test("however writes follow one another, no mark ever comes again, whatever the clock does", async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.tuple(fc.constantFrom("put", "bulkPut", "modify"), fc.integer({ min: -9e9, max: 9e9 })), {
        minLength: 1,
        maxLength: 8,
      }),
      async (deeds) => {
        const { book, comboId, clock } = await anOpenSession();
        const seen = [await markOfCombo(book, comboId)];
        for (const [way, passed] of deeds) {
          clock.pass(passed);
          await ways[way]?.(book, "runs");
          seen.push(await markOfCombo(book, comboId));
        }
        expect(new Set(seen).size).toBe(seen.length);
        book.close();
      },
    ),
    { seed: 20_261_128, numRuns: 25 },
  );
});

test("a mark is heard of by a live query, in another tab too, and where a merge has put the rows", async () => {
  const { book, comboId, clock } = await aFullLogbook();
  const tab = await openLogbook({ name: book.name, clock: clock.now, newId: idMaker(clock.now) });
  const seen: string[] = [];
  const listening = liveQuery(() => markOfCombo(book, comboId)).subscribe((mark) => seen.push(mark));
  await vi.waitFor(() => expect(seen).toHaveLength(1));
  await tab.database.table("references").toCollection().modify({ ms: 81_000 });
  await vi.waitFor(() => expect(seen).toHaveLength(2));
  listening.unsubscribe();
  tab.close();
  book.close();
});

test("a restored logbook has marks of its own, and no backup holds marks", async () => {
  const { book, comboId } = await aFullLogbook();
  const rows = await dump(book);
  expect(Object.keys(rows)).not.toContain("changeMarks");
  expect(Object.keys(rows)).not.toContain("keptAnswers");
  const tools = { clock: book.clock, newId: book.newId };
  const restored = await restoreAsNew(rows, { name: "restored with marks", ...tools });
  expect(await markOfCombo(restored, comboId)).not.toContain("never");
  expect(await markOfCombo(restored, comboId)).not.toBe(await markOfCombo(book, comboId));
  expect(await dump(restored)).toEqual(rows);
  restored.close();
  book.close();
});

test("whatever a stored mark holds, or if it cannot be read, the next change makes another one", async () => {
  const { book, comboId, runId } = await aFullLogbook();
  for (const mark of [undefined, null, "", 0, false, 5, [], {}, Number.NaN]) {
    await putRaw(book.name, "changeMarks", { id: comboId, mark });
    expect(await markOfCombo(book, comboId)).toMatch(/^never /);
    expect(await markOfAllCombos(book)).toEqual(expect.any(String));
    await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
    expect(await markOfCombo(book, comboId)).not.toMatch(/never/);
  }
  const mend = failReadsOf([{ table: "changeMarks", id: comboId }]);
  expect(await markOfCombo(book, comboId)).toMatch(/^never /);
  await addLap(book, { runId, id: book.newId(), lap: aLap(83_000) });
  mend();
  expect(await markOfCombo(book, comboId)).not.toMatch(/never/);
  book.close();
});

test("what the app writes by itself, a forecast, has no question asked again", async () => {
  const { book, comboId } = await aFullLogbook();
  const target = await book.tables.targets.toCollection().first();
  const before = await markOfCombo(book, comboId);
  const forecast = { comboId, madeOn: "2026-03-11", by: "2026-04-30", chance: 0.5, method: "curve 1" };
  await addForecast(book, { targetId: target?.id ?? "", ...forecast });
  expect(await markOfCombo(book, comboId)).toBe(before);
  const rig = { from: "2026-03-11", name: "near", screen: {}, view: {}, wheel: {}, pedals: {}, seat: {} };
  await addRig(book, { ...rig, note: "" } as never);
  expect(await markOfCombo(book, comboId)).toBe(before);
  book.close();
});
