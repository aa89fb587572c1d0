import { expect, test } from "vitest";
import { type AllRows, everyTable, type Run, tableNames } from "#domain";
import { places } from "../../../src/db/places.ts";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const { deletedAt: _, summary: __, counts: ____, ...run } = wholeRows.runs;
const lap = (n: number) => ({ ...wholeLap, id: idAt(n) });
const other = (n: number, fields: Partial<Run>): Run => ({ ...run, id: idAt(n), laps: [], ...fields });

/** A session of four runs: one deleted, one without laps, one of two laps, one of a lap. */
const rows: AllRows = {
  ...(everyTable((table) => [wholeRows[table]]) as unknown as AllRows),
  runs: [
    other(91, { n: 0, deletedAt: 5, laps: [lap(81)].map(({ deletedAt: ___, ...rest }) => rest) }),
    other(92, { n: 2 }),
    { ...run, n: 1, laps: [lap(82), lap(83)].map(({ deletedAt: ___, ...rest }) => rest) },
    other(93, { n: 3, laps: [lap(84)].map(({ deletedAt: ___, ...rest }) => rest) }),
    other(94, { n: 0, sessionId: idAt(70), laps: [lap(85)] }),
  ],
};
const placeOf = places(rows);
const there = { date: "2026-03-10", combo: "Varnholt Ring, Short · Club hatch" };

test("a lap stands in its run and session, by its number in the run", () => {
  expect(placeOf("laps", idAt(82))).toEqual({ ...there, run: 1, lap: 1 });
  expect(placeOf("laps", idAt(83))).toEqual({ ...there, run: 1, lap: 2 });
  expect(placeOf("laps", idAt(84))).toEqual({ ...there, run: 2, lap: 1 });
});

test("a run is called as in its session, where an empty and a deleted one have no number", () => {
  expect(placeOf("runs", wholeRows.runs.id)).toEqual({ ...there, run: 1 });
  expect(placeOf("runs", idAt(93))).toEqual({ ...there, run: 2 });
});

test("a run whose session is not there is told by its combo alone", () => {
  expect(placeOf("runs", idAt(94))).toMatchObject({ combo: there.combo });
  expect(placeOf("runs", idAt(94))).not.toHaveProperty("date");
});

test("a combo is told by its names; a session, and what belongs to one, by its day too", () => {
  expect(placeOf("combos", wholeRows.combos.id)).toEqual({ combo: there.combo });
  expect(placeOf("sessions", wholeRows.sessions.id)).toEqual(there);
  expect(placeOf("cornerReviews", wholeRows.cornerReviews.id)).toEqual(there);
  expect(placeOf("targets", wholeRows.targets.id)).toEqual({ combo: there.combo });
  expect(placeOf("references", wholeRows.references.id)).toEqual({ combo: there.combo });
});

test("a review of corners without a session has its own day", () => {
  const { sessionId: ___, ...review } = wholeRows.cornerReviews;
  const alone = places({ ...rows, cornerReviews: [{ ...review, on: "2026-05-01" }] });
  expect(alone("cornerReviews", review.id)).toEqual({ ...there, date: "2026-05-01" });
});

test("what belongs to no combo, or is not there, stands nowhere", () => {
  for (const table of ["preferences", "cars", "tracks", "rigs"] as const)
    expect(placeOf(table, wholeRows[table].id), table).toEqual({});
  for (const table of [...tableNames, "laps"] as const) expect(placeOf(table, "nowhere"), table).toEqual({});
});

test("a combo of which a name is missing is told by no name", () => {
  for (const table of ["cars", "tracks", "layouts", "combos"] as const)
    expect(places({ ...rows, [table]: [] })("sessions", wholeRows.sessions.id), table).toEqual({
      date: there.date,
    });
});
