import { expect, test } from "vitest";
import type { TableName } from "#domain";
import { afterTomorrow } from "../../../../src/db/checks/afterTomorrow.ts";
import { wholeRows, withAt } from "../../../support/wholeRows.ts";

/** In the zone that is furthest ahead it is 08:00 of 11 March. */
const now = Date.UTC(2026, 2, 10, 18);
/** Of a row whose stamps lie before `now`. */
const asked = (table: TableName, field: string, value: unknown) => {
  const { disproved: _, ...row } = wholeRows[table];
  return afterTomorrow(table, withAt({ ...row, had: [] }, field, value) as typeof row, now);
};
const said = (date: string) => `dated ${date}, after tomorrow; is this device’s clock right?`;

const days: readonly (readonly [TableName, string])[] = [
  ["sessions", "date"],
  ["targets", "setOn"],
  ["forecasts", "madeOn"],
  ["cornerReviews", "on"],
];
const instants: readonly (readonly [TableName, string])[] = [
  ["pages", "from"],
  ["sessions", "startedAt"],
  ["sessions", "endedAt"],
  ["runs", "startedAt"],
  ["runs", "endedAt"],
  ["targets", "setAt"],
  ["targets", "archivedAt"],
  ["rigTests", "endedAt"],
];

for (const [table, field] of days)
  test(`${field} of ${table} may be tomorrow wherever it is latest, and no later day`, () => {
    expect(asked(table, field, "2026-03-12")).toBeUndefined();
    expect(asked(table, field, "2026-03-13")).toBe(said("2026-03-13"));
  });

for (const [table, field] of instants)
  test(`${field} of ${table} may be as late as tomorrow ends where it ends last, and no later`, () => {
    // The end of 12 March, twelve hours behind UTC.
    const end = Date.UTC(2026, 2, 13, 12);
    expect(asked(table, field, end - 1)).toBeUndefined();
    expect(asked(table, field, end)).toBe(said("2026-03-13"));
    expect(asked(table, field, undefined)).toBeUndefined();
  });

test("what is meant to lie ahead is asked about in no row: a target's day, a forecast's, a rig's", () => {
  expect(asked("targets", "by", "2027-03-10")).toBeUndefined();
  expect(asked("forecasts", "by", "2027-03-10")).toBeUndefined();
  expect(asked("rigs", "from", "2027-03-10")).toBeUndefined();
  expect(asked("cars", "name", "2027-03-10")).toBeUndefined();
});

test("a clock that stood ahead when the row was made, changed or once stamped is believed of it", () => {
  const day = "2030-01-02";
  const late = Date.UTC(2030, 0, 1, 12);
  expect(asked("sessions", "date", day)).toBe(said(day));
  for (const stamps of [{ createdAt: late }, { updatedAt: late }, { had: [5, late, 7] }]) {
    const row = { ...wholeRows.sessions, date: day, had: [], ...stamps };
    expect(afterTomorrow("sessions", row, now)).toBeUndefined();
  }
});
