import { expect, test } from "vitest";
import { practiceDay, type Stamped, tableNames } from "#domain";
import { pairOrder, pairsNeeded, testProgress } from "#stats";
import { bad, preferences, rows, runsOf, truth } from "./theDemo.ts";

const laps = rows.runs.flatMap((run) => run.laps);
const everyRow: Stamped[] = [...tableNames.flatMap((table): readonly Stamped[] => rows[table]), ...laps];

test("every row of the demo is taken", () => {
  expect(bad).toEqual([]);
});

test("every table has rows", () => {
  for (const table of tableNames) expect(rows[table].length, table).toBeGreaterThan(0);
});

test("an id is of version 7 and carries the time its row was made", () => {
  for (const { id, createdAt } of everyRow.filter((row) => row !== rows.preferences[0])) {
    expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(Number.parseInt(id.slice(0, 8) + id.slice(9, 13), 16)).toBe(createdAt);
  }
  expect(new Set(everyRow.map(({ id }) => id)).size).toBe(everyRow.length);
});

test("no stamp runs back, and none lies outside the twelve weeks", () => {
  const from = Date.parse(`${truth.firstDay}T00:00:00+02:00`);
  const to = Date.parse(`${truth.lastDay}T23:59:59+01:00`);
  for (const { createdAt, updatedAt, deletedAt } of everyRow) {
    expect(createdAt).toBeGreaterThanOrEqual(from);
    expect(updatedAt).toBeGreaterThanOrEqual(createdAt);
    expect(updatedAt).toBeLessThanOrEqual(to);
    if (deletedAt !== undefined) expect(deletedAt).toBeLessThanOrEqual(updatedAt);
  }
});

test("sessions do not overlap, and each is dated by the day the driver would name", () => {
  const known = rows.sessions.filter(({ isTimeOfDayKnown }) => isTimeOfDayKnown);
  const ordered = known.toSorted((a, b) => a.startedAt - b.startedAt);
  ordered.forEach((session, index) => {
    expect(practiceDay(session.startedAt, session.zone, 4)).toBe(session.date);
    const next = ordered[index + 1];
    if (next) expect(session.endedAt).toBeLessThan(next.startedAt);
  });
});

test("runs follow each other inside their session, and last as long as their laps", () => {
  for (const session of rows.sessions.filter(({ isTimeOfDayKnown }) => isTimeOfDayKnown)) {
    let before = session.startedAt;
    for (const run of runsOf(session.id)) {
      const driven = run.laps
        .filter(({ deletedAt }) => deletedAt === undefined)
        .reduce((sum, { ms = 0 }) => sum + ms, 0);
      expect(run.startedAt).toBeGreaterThanOrEqual(before);
      expect((run.endedAt ?? 0) - run.startedAt).toBeGreaterThan(driven);
      before = run.endedAt ?? 0;
    }
    expect(session.endedAt).toBeGreaterThanOrEqual(before);
  }
});

test("the sectors of a lap add up to its time", () => {
  const withSectors = laps.filter(({ sectors }) => sectors !== undefined);
  expect(withSectors.length).toBeGreaterThan(200);
  for (const { sectors = [], ms } of withSectors) {
    expect(sectors).toHaveLength(3);
    expect(sectors.reduce((sum, sector) => sum + sector, 0)).toBe(ms);
  }
});

test("a run names the rig that was in force, those of the gain test too", () => {
  const dated = rows.rigs.toSorted((a, b) => (a.from < b.from ? -1 : 1));
  const dateOf = new Map(rows.sessions.map(({ id, date }) => [id, date]));
  for (const run of rows.runs) {
    const inForce = dated.findLast(({ from }) => from <= (dateOf.get(run.sessionId) ?? ""));
    expect(run.rigId).toBe(inForce?.id);
  }
});

test("the gain test is one that its plan asks for, and each of its runs names its place in the drawn order", () => {
  const [test, ...more] = rows.rigTests;
  if (test?.smallestMs === undefined || test.spreadMs === undefined) throw new RangeError("no planned test");
  expect(more).toEqual([]);
  const plan = {
    difference: test.smallestMs,
    standardDeviation: test.spreadMs,
    power: 0.8,
    level: test.level,
  };
  expect(test.pairsPlanned).toBe(pairsNeeded(plan));
  expect(test.pairs.map(({ first }) => first)).toEqual(pairOrder(test.pairsPlanned, test.seed));
  const rigOf = (id = "") => rows.rigs.find((rig) => rig.id === id)?.wheel.gainPercent;
  expect([rigOf(test.rigA), rigOf(test.rigB)]).toEqual([test.valueA, test.valueB]);
  const runs = rows.runs.filter(({ rigTest }) => rigTest?.id === test.id);
  const { pairs, complete, voided } = testProgress(test, runs, preferences);
  expect([complete, voided]).toEqual([test.pairsPlanned, []]);
  for (const { a, b } of pairs) expect(a?.sessionId).toBe(b?.sessionId);
});
