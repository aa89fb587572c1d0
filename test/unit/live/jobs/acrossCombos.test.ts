import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { addCombo, addReference, editSession, type Logbook, type ReadOnlyLogbook, setTarget } from "#db";
import { askHere } from "#live";
import { markOf } from "../../../../src/live/jobs/markOf.ts";
import { addSessions } from "../../../support/addSessions.ts";
import { aLogbook } from "../../../support/aLogbook.ts";

const laps = [84_000, 84_100, 84_200, 84_300, 84_400];
const today = "2026-03-10";

async function withCombos(count: number) {
  const { book } = await aLogbook();
  for (let n = 0; n < count; n++) {
    const { comboId } = await addCombo(book, { car: { name: "club hatch" }, track: { name: `Hill ${n}` } });
    const date = new Date(Date.UTC(2025, 0, 1 + n)).toISOString().slice(0, 10);
    await addSessions(book, comboId, [{ date, laps }]);
    await addReference(book, { comboId, ms: 80_000, decimals: 3, source: "a friend" });
  }
  await askHere(book, "acrossCombos", { today });
  return book;
}

/** The same logbook, counting how often a table is read. */
function counting(book: Logbook): { readonly reading: ReadOnlyLogbook; readonly reads: () => number } {
  let reads = 0;
  const counted = <T extends object>(table: T): T =>
    new Proxy(table, {
      get: (of, key) => {
        const value: unknown = Reflect.get(of, key);
        if (typeof value !== "function") return value;
        return (...inputs: unknown[]) => {
          reads++;
          return Reflect.apply(value, of, inputs);
        };
      },
    });
  const tables = Object.fromEntries(
    Object.entries(book.tables).map(([name, table]) => [name, counted(table)]),
  ) as unknown as ReadOnlyLogbook["tables"];
  const { database: _, clock: __, newId: ___, ...reading } = book;
  return {
    reading: { ...reading, tables, digests: counted(book.digests) },
    reads: () => reads,
  };
}

test("two hundred combos take no more reads than three", async () => {
  const [few, many] = [await withCombos(3), await withCombos(200)];
  const [three, all] = [counting(few), counting(many)];
  expect(await askHere(three.reading, "acrossCombos", { today })).toHaveLength(3);
  expect(await askHere(all.reading, "acrossCombos", { today })).toHaveLength(200);
  expect(all.reads()).toBe(three.reads());
  expect(all.reads()).toBeLessThan(10);
  few.close();
  many.close();
});

test("the mark moves with a lap, a target, a reference lap and a note", async () => {
  const book = await withCombos(2);
  const details = { today };
  const marks = [await markOf(book, "acrossCombos", details)];
  const [combo, session] = await Promise.all([
    book.tables.combos.toCollection().first(),
    book.tables.sessions.toCollection().first(),
  ]);
  const comboId = combo?.id ?? "";
  for (const change of [
    () => editSession(book, { sessionId: session?.id ?? "", patch: { note: "windy" } }),
    () => addSessions(book, comboId, [{ date: "2026-03-09", laps }]),
    () => setTarget(book, { comboId, kind: "best", value: 80_000, setOn: today }),
    () => addReference(book, { comboId, ms: 79_000, decimals: 3, source: "a video" }),
  ]) {
    await change();
    const mark = await markOf(book, "acrossCombos", details);
    expect(marks).not.toContain(mark);
    marks.push(mark);
  }
  book.close();
});
