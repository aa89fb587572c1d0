import { expect, test } from "vitest";
import { accountTarget, bestLapTargets, type MeasuredBy, newestReference, pageOf } from "#combo";
import type { Page } from "#domain";
import { anEvening, aPage, aReference, aTarget, march } from "./someTargets.ts";

const measured = (day: number, more: Partial<MeasuredBy> = {}, pages: readonly Page[] = []) => {
  const session = anEvening(day);
  return accountTarget({
    session,
    page: pageOf(pages, session.startedAt),
    targets: [],
    references: [],
    pbBefore: 85_000,
    ...more,
  });
};

test("the session's own target comes first", () => {
  const session = { ...anEvening(10), targetMs: 83_000 };
  expect(measured(10, { session, targets: [aTarget(1)] })).toEqual({ ms: 83_000, from: "session" });
});

test("then the best-lap or usual-lap target whose date lies nearest, one without a date only where none has one", () => {
  const targets = [
    aTarget(1, { by: march(28), value: 1 }),
    aTarget(2, { by: march(20), value: 2, kind: "median" }),
    aTarget(3, { value: 3 }),
    aTarget(4, { by: march(11), value: 4, kind: "scatter" }),
  ];
  expect(measured(10, { targets })).toEqual({ ms: 2, from: "target", kind: "median" });
  expect(measured(10, { targets: targets.slice(2) })).toEqual({ ms: 3, from: "target", kind: "best" });
});

test("all best-lap targets of the day count as wanted, as they were wanted then", () => {
  const session = anEvening(10);
  const targets = [
    aTarget(1, { by: march(28), value: 1 }),
    aTarget(2, { by: march(20), value: 2, kind: "median" }),
    aTarget(3, { by: march(20), value: 3 }),
    aTarget(11, { by: march(28), value: 4 }),
    aTarget(4, { by: march(9), value: 5 }),
  ];
  expect(bestLapTargets({ session, page: pageOf([], session.startedAt), targets }).toSorted()).toEqual([
    1, 3,
  ]);
});

test("of two targets for one day the one set last counts", () => {
  const by = march(20);
  const targets = [aTarget(2, { by, value: 2 }), aTarget(5, { by, value: 5 }), aTarget(3, { by, value: 3 })];
  expect(measured(10, { targets })).toEqual({ ms: 5, from: "target", kind: "best" });
});

test("“2.39 s off the target” on an evening before it existed: a target set today rewrites no earlier session", () => {
  const targets = [aTarget(12, { by: march(28) })];
  expect(measured(11, { targets })).toEqual({ ms: 85_000, from: "pb" });
  expect(measured(12, { targets })).toMatchObject({ from: "target" });
});

test("a target of the old page measures nothing driven after the new page was begun", () => {
  const targets = [aTarget(5, { by: march(28) })];
  expect(measured(12, { targets }, [aPage(10)])).toEqual({ ms: 85_000, from: "pb" });
  expect(measured(9, { targets }, [aPage(10)])).toMatchObject({ from: "target" });
});

test("a target measures no session after its date, and none after it was archived", () => {
  const targets = [aTarget(5, { by: march(10) })];
  expect(measured(10, { targets })).toMatchObject({ from: "target" });
  expect(measured(11, { targets })).toMatchObject({ from: "pb" });
  const archivedAt = anEvening(8).startedAt + 1;
  const archived = [aTarget(5, { by: march(20), archivedAt })];
  expect(measured(8, { targets: archived })).toMatchObject({ from: "target" });
  expect(measured(9, { targets: archived })).toMatchObject({ from: "pb" });
});

test("then the newest reference lap known by then, then the PB before, then nothing", () => {
  const references = [aReference(2, 82_000), aReference(9, 83_000), aReference(12, 84_000)];
  expect(measured(10, { references })).toEqual({ ms: 83_000, from: "reference" });
  expect(measured(1, { references })).toEqual({ ms: 85_000, from: "pb" });
  expect(measured(1, { pbBefore: undefined })).toBeUndefined();
});

test("a reference lap written down in the session measures it", () => {
  const session = anEvening(10);
  const inSession = aReference(10, 82_000, { createdAt: session.startedAt + 3_600_000 });
  expect(measured(10, { references: [inSession] })).toMatchObject({ from: "reference" });
});

test("what was written down within half a day of the start was known in the session, and a lap after that was not", () => {
  const { startedAt } = anEvening(10);
  const writtenDown = (after: number) =>
    measured(10, { references: [aReference(10, 82_000, { createdAt: startedAt + after })] });
  expect(writtenDown(12 * 3_600_000)).toMatchObject({ from: "reference" });
  expect(writtenDown(12 * 3_600_000 + 1)).toMatchObject({ from: "pb" });
});

test("of reference laps the one changed last is the newest", () => {
  const old = aReference(2, 82_000);
  const changed = { ...aReference(1, 83_000), updatedAt: old.updatedAt + 1 };
  expect(newestReference([old, changed])?.ms).toBe(83_000);
  expect(newestReference([])).toBeUndefined();
});
