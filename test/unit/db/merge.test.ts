import "fake-indexeddb/auto";

import fc from "fast-check";
import { expect, test } from "vitest";
import { addLap, countChanges, dump, editRun, mergeInto, mergeRows, runOf, undoChange } from "#db";
import { type AllRows, noRows, type Stamped } from "#domain";
import { aLap } from "../../support/aLap.ts";
import { anOpenSession } from "../../support/aLogbook.ts";
import { someRows } from "../../support/someRows.ts";

const settled = { seed: 20261014, numRuns: 250 };

test("merging the same copy again changes nothing", () => {
  fc.assert(
    fc.property(someRows, someRows, (a, b) => {
      const once = mergeRows(a, b);
      expect(mergeRows(once, b)).toEqual(once);
      expect(mergeRows(once, a)).toEqual(once);
      expect(mergeRows(once, once)).toEqual(once);
    }),
    settled,
  );
});

test("the order of two copies does not matter", () => {
  fc.assert(
    fc.property(someRows, someRows, (a, b) => {
      expect(mergeRows(a, b)).toEqual(mergeRows(b, a));
    }),
    settled,
  );
});

test("the grouping of three copies does not matter", () => {
  fc.assert(
    fc.property(someRows, someRows, someRows, (a, b, c) => {
      expect(mergeRows(mergeRows(a, b), c)).toEqual(mergeRows(a, mergeRows(b, c)));
    }),
    settled,
  );
});

test("nothing newer is lost, and a lap is never in two runs", () => {
  fc.assert(
    fc.property(someRows, someRows, (a, b) => {
      const merged = mergeRows(a, b);
      const rowsIn = (rows: AllRows): Stamped[] => [...rows.sessions, ...rows.runs];
      for (const row of [...rowsIn(a), ...rowsIn(b)]) {
        const kept = rowsIn(merged).find(({ id }) => id === row.id);
        expect(kept?.updatedAt).toBeGreaterThanOrEqual(row.updatedAt);
      }
      const laps = merged.runs.flatMap((run) => run.laps.map(({ id }) => id));
      expect(new Set(laps).size).toBe(laps.length);
    }),
    settled,
  );
});

test("a row deleted and changed at the same instant stays deleted", () => {
  const session = { id: "a", createdAt: 1, updatedAt: 5 };
  const live = { ...noRows, sessions: [session as never] };
  const deleted = { ...noRows, sessions: [{ ...session, deletedAt: 5 } as never] };
  expect(mergeRows(live, deleted)).toEqual(deleted);
  expect(mergeRows(deleted, live)).toEqual(deleted);
});

test("a note written on the phone and a lap typed on the PC both stay", async () => {
  const { book, runId, clock } = await anOpenSession();
  await addLap(book, { runId, id: book.newId(), lap: aLap(83000) });
  const phone = await dump(book);
  clock.pass(1000);
  await editRun(book, { runId, patch: { note: "kerb at 5" } });
  clock.pass(1000);
  const [run] = phone.runs;
  if (run === undefined) throw new Error("no run");
  const typed = { ...aLap(82900), n: 2, id: book.newId(), createdAt: clock.now(), updatedAt: clock.now() };
  const change = await mergeInto(book, { ...phone, runs: [{ ...run, laps: [...run.laps, typed] }] }, "phone");
  const merged = await runOf(book, runId);
  expect(merged?.note).toBe("kerb at 5");
  expect(merged?.laps.map(({ ms }) => ms)).toEqual([83000, 82900]);
  await undoChange(book, change);
  const laps = (await runOf(book, runId))?.laps ?? [];
  expect(laps.filter(({ deletedAt }) => deletedAt === undefined).map(({ ms }) => ms)).toEqual([83000]);
});

test("the preview counts what is new, changed, deleted and brought back", () => {
  const session = (id: string, fields: object) => ({ ...fields, id, createdAt: 1, updatedAt: 1 }) as never;
  const before = {
    ...noRows,
    sessions: [session("a", {}), session("b", {}), session("c", { deletedAt: 1 })],
  };
  const after = {
    ...noRows,
    sessions: [
      session("a", { note: "x" }),
      session("b", { deletedAt: 2 }),
      session("c", {}),
      session("d", {}),
    ],
  };
  const counts = { added: 1, changed: 1, deleted: 1, broughtBack: 1, unchanged: 0 };
  expect(countChanges(before, after).sessions).toEqual(counts);
});
