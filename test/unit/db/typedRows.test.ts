import { expect, test } from "vitest";
import { typedBeside } from "#db";
import { type AllRows, everyTable, type Id, type Lap, type Run, tableNames } from "#domain";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

/** The whole rows as they came with a logbook, none of them deleted. */
const live = <R extends object>(row: R) => {
  const { deletedAt: _, ...rest } = row as R & { readonly deletedAt?: number };
  return rest as R;
};
const run: Run = { ...live(wholeRows.runs), laps: [live(wholeLap)] };
const came: AllRows = {
  ...(everyTable((table) => [live(wholeRows[table])]) as unknown as AllRows),
  runs: [run],
};
const typed = (some: Partial<AllRows>) => typedBeside({ ...came, ...some }, came);
const lap = (n: number, fields: object = {}): Lap => ({ ...live(wholeLap), id: idAt(80 + n), ...fields });
const changed = (row: { readonly updatedAt: number }) => ({ ...row, updatedAt: row.updatedAt + 1 });
const kept = ({ part }: ReturnType<typeof typed>) =>
  Object.fromEntries(
    tableNames.flatMap((table) => (part[table].length > 0 ? [[table, part[table].length]] : [])),
  );
const { summary: _, rigTest: __, counts: ___, ...withoutSummary } = run;

test("laps typed into a run that came are counted by session and go along without the others", () => {
  const found = typed({ runs: [{ ...run, laps: [...run.laps, lap(1), lap(2), lap(3, { deletedAt: 9 })] }] });
  expect([...found.laps]).toEqual([[wholeRows.sessions.id, 2]]);
  expect(found.part.runs.map(({ laps }) => laps.map(({ id }) => id))).toEqual([[idAt(81), idAt(82)]]);
  expect([found.others, found.changed]).toEqual([0, 0]);
  // The rig settings of others stay behind, and the run names none.
  expect(found.part.rigs).toEqual([]);
  expect(found.part.runs[0]).not.toHaveProperty("rigId");
  // So does their rig test.
  expect(found.part.rigTests).toEqual([]);
  expect(found.part.runs[0]).not.toHaveProperty("rigTest");
});

test("a run of a test that was typed goes along with its place in it", () => {
  const test = { ...live(wholeRows.rigTests), id: idAt(71), pairs: [] };
  const rigTest = { id: idAt(71), pair: 2, side: "A" as const };
  const found = typed({ rigTests: [test], runs: [{ ...run, rigTest, laps: [...run.laps, lap(1)] }] });
  expect(found.part.runs.map((one) => one.rigTest)).toEqual([rigTest]);
});

test("laps of two runs of a session are counted together, those of another apart", () => {
  const runs = [
    { ...run, laps: [lap(1)] },
    { ...run, id: idAt(71), laps: [lap(2), lap(3)] },
    { ...run, id: idAt(72), sessionId: idAt(73), laps: [lap(4)] },
  ];
  expect([...typed({ runs }).laps]).toEqual([
    [wholeRows.sessions.id, 3],
    [idAt(73), 1],
  ]);
});

test("a deleted run holds nothing typed", () => {
  const found = typed({ runs: [{ ...run, deletedAt: 9, laps: [lap(1)] }] });
  expect([found.laps.size, kept(found)]).toEqual([0, {}]);
});

test("a run written as a whole, with a note or with what was counted is typed and counted; one begun and left empty is not", () => {
  const begun = { ...withoutSummary, id: idAt(71), note: "", laps: [] };
  expect(kept(typed({ runs: [run, begun] }))).toEqual({});
  for (const fields of [
    { summary: { laps: 3 } },
    { note: "slow" },
    { counts: [{ drill: "kerb", tries: 2, good: 1 } as const] },
  ]) {
    const found = typed({ runs: [run, { ...begun, ...fields }] });
    expect(found.part.runs.map(({ id }) => id)).toEqual([idAt(71)]);
    expect(found.others).toBe(1);
  }
  const other = typed({
    runs: [
      { ...run, note: "" },
      { ...begun, note: "slow", deletedAt: 9 },
    ],
  });
  expect(other.others).toBe(0);
});

test("a run of typed laps is told by its laps, and with a note as another thing too", () => {
  const bare = { ...withoutSummary, id: idAt(71), note: "", laps: [lap(1)] };
  expect(typed({ runs: [run, bare] })).toMatchObject({ others: 0 });
  expect(typed({ runs: [run, { ...bare, note: "slow" }] })).toMatchObject({ others: 1 });
});

test("targets, rig settings, reviews and tests of rigs are counted; names of cars and tracks go along untold", () => {
  const again = <R extends object>(row: R) => [live(row), { ...live(row), id: idAt(71) }];
  for (const table of ["targets", "rigs", "references", "pages", "rigTests", "cornerReviews"] as const) {
    const found = typed({ [table]: again(wholeRows[table]) });
    expect(found.others, table).toBe(1);
    expect(
      found.part[table].map(({ id }) => id),
      table,
    ).toContain(idAt(71));
  }
  for (const table of ["cars", "tracks", "layouts", "combos"] as const) {
    const found = typed({ [table]: again(wholeRows[table]) });
    expect(found.others, table).toBe(0);
    expect(
      found.part[table].map(({ id }) => id),
      table,
    ).toContain(idAt(71));
  }
});

test("a forecast, which the app writes by itself, goes along with a typed target and not without one", () => {
  const forecast = { ...live(wholeRows.forecasts), id: idAt(71) };
  expect(kept(typed({ forecasts: [forecast] }))).toEqual({});
  const target = { ...live(wholeRows.targets), id: idAt(72) };
  const found = typed({ targets: [target], forecasts: [{ ...forecast, targetId: target.id }] });
  expect(found.part.forecasts.map(({ id }) => id)).toEqual([idAt(71)]);
  expect(found.others).toBe(1);
});

test("rig settings of others go along where a typed test compares them, and those typed always", () => {
  const rigTest = { ...live(wholeRows.rigTests), id: idAt(71), pairs: [] };
  expect(typed({ rigTests: [rigTest] }).part.rigs.map(({ id }) => id)).toEqual([wholeRows.rigs.id]);
  const rig = { ...live(wholeRows.rigs), id: idAt(72) };
  const runs = [{ ...run, rigId: idAt(72), laps: [lap(1)] }];
  const found = typed({ rigs: [live(wholeRows.rigs), rig], runs });
  expect(found.part.rigs.map(({ id }) => id)).toEqual([idAt(72)]);
  expect(found.part.runs[0]).toMatchObject({ rigId: idAt(72) });
});

test("what came and was changed is counted, rows and laps; what was deleted, and preferences, are not", () => {
  const count = (some: object) => typed(some as Partial<AllRows>).changed;
  expect(count({ cars: [changed(live(wholeRows.cars))] })).toBe(1);
  expect(count({ cars: [{ ...changed(live(wholeRows.cars)), deletedAt: 9 }] })).toBe(0);
  expect(count({ preferences: [changed(live(wholeRows.preferences))] })).toBe(0);
  expect(count({ runs: [{ ...run, laps: [changed(live(wholeLap))] }] })).toBe(1);
  expect(count({ runs: [{ ...changed(run), laps: [changed(live(wholeLap))] }] })).toBe(2);
  expect(count({ runs: [{ ...run, laps: [{ ...changed(live(wholeLap)), deletedAt: 9 }] }] })).toBe(0);
  expect(count({})).toBe(0);
});

test("nothing typed is nothing", () => {
  const found = typed({});
  expect([kept(found), found.laps.size, found.others, found.changed]).toEqual([{}, 0, 0, 0]);
  const ids: readonly Id[] = [];
  expect([...found.laps.keys()]).toEqual(ids);
});
