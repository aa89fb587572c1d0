import { expect, test } from "vitest";
import { tableNames } from "#domain";
import { checkRow } from "../../../../src/db/checks/checkRow.ts";
import { fieldLimits } from "../../../support/fieldLimits.ts";
import { wholeRows, withAt } from "../../../support/wholeRows.ts";

for (const table of tableNames)
  test(`every field of ${table} takes its whole range, and what lies beyond is refused in words`, () => {
    const row = wholeRows[table];
    expect(checkRow(table, row)).toEqual({ ok: true, row });
    for (const [field, { takes, refuses }] of Object.entries(fieldLimits[table])) {
      for (const value of takes) {
        const changed = withAt(row, field, value);
        expect(checkRow(table, changed), `${field} ${String(value).slice(0, 40)}`).toEqual({
          ok: true,
          row: changed,
        });
      }
      for (const [value, why] of refuses)
        expect(checkRow(table, withAt(row, field, value)), `${field} ${String(value).slice(0, 40)}`).toEqual({
          ok: false,
          why: `${field}: ${why}`,
          fault: { field, why },
        });
    }
  });

test("what is no row at all is refused as a whole", () => {
  for (const row of [null, 7, "x"])
    expect(checkRow("cars", row)).toEqual({
      ok: false,
      why: "not made of fields",
      fault: { why: "not made of fields" },
    });
});

test("the first wrong field is the one that is named", () => {
  const { id, createdAt } = wholeRows.cars;
  expect(checkRow("cars", { id, createdAt, name: 7 })).toMatchObject({ fault: { field: "updatedAt" } });
});

const lap = (change: object) => {
  const { ms: _, decimals: __, sectors: ___, sectorDecimals: ____, ...bare } = wholeRows.runs.laps[0] ?? {};
  return checkRow("runs", { ...wholeRows.runs, laps: [{ ...bare, ...change }] });
};
const refusedLap = (why: string) => ({ ok: false, fault: { field: "laps.0", why } });

test("a lap has a time with its decimals, or neither", () => {
  expect(lap({})).toMatchObject({ ok: true });
  for (const ms of [100, 86_400_000]) expect(lap({ ms, decimals: 0 })).toMatchObject({ ok: true });
  const why = "decimals stand where a time stands";
  expect(lap({ ms: 83_456 })).toMatchObject(refusedLap(why));
  expect(lap({ decimals: 3 })).toMatchObject(refusedLap(why));
});

test("sectors have their decimals each, or none has", () => {
  const sectors = [27_100, 31_456, 24_900];
  const why = "sectors and their decimals are not as many";
  expect(lap({ sectors })).toMatchObject({ ok: true });
  expect(lap({ sectors, sectorDecimals: [1, 3, 2] })).toMatchObject({ ok: true });
  expect(lap({ sectors, sectorDecimals: [1, 3] })).toMatchObject(refusedLap(why));
  expect(lap({ sectors, sectorDecimals: [1, 3, 2, 0] })).toMatchObject(refusedLap(why));
  expect(lap({ sectorDecimals: [1] })).toMatchObject(refusedLap(why));
});

test("sectors add up to their lap, but for half of each last digit and 2 ms", () => {
  const why = "its sectors are another lap's";
  // One sector and the lap, each known to whole seconds: half a second either, and 2 ms.
  expect(lap({ ms: 80_000, decimals: 0, sectors: [81_002] })).toMatchObject({ ok: true });
  expect(lap({ ms: 80_000, decimals: 0, sectors: [78_998] })).toMatchObject({ ok: true });
  expect(lap({ ms: 80_000, decimals: 0, sectors: [81_003] })).toMatchObject(refusedLap(why));
  expect(lap({ ms: 80_000, decimals: 0, sectors: [78_997] })).toMatchObject(refusedLap(why));
  // Three sectors: four halves.
  expect(lap({ ms: 80_000, decimals: 0, sectors: [20_000, 30_000, 32_002] })).toMatchObject({ ok: true });
  expect(lap({ ms: 80_000, decimals: 0, sectors: [20_000, 30_000, 32_003] })).toMatchObject(refusedLap(why));
  expect(lap({ ms: 80_000, decimals: 0, sectors: [] })).toMatchObject({ ok: true });
  // A lap without a time has nothing to add up to.
  expect(lap({ sectors: [20_000, 30_000, 40_000] })).toMatchObject({ ok: true });
});

test("as many sectors as a simulator may time are taken, and no more", () => {
  const sectors = Array.from({ length: 99 }, () => 1000);
  const sectorDecimals = sectors.map(() => 3);
  expect(lap({ ms: 99_000, decimals: 3, sectors, sectorDecimals })).toMatchObject({ ok: true });
  expect(lap({ ms: 100_000, decimals: 3, sectors: [...sectors, 1000] })).toMatchObject({
    fault: { field: "laps.0.sectors", why: "longer than 99" },
  });
  const more = { sectors, sectorDecimals: [...sectorDecimals, 3] };
  expect(lap(more)).toMatchObject({ fault: { field: "laps.0.sectorDecimals", why: "longer than 99" } });
  expect(lap({ sectors: [1, 86_400_000] })).toMatchObject({ ok: true });
});

test("a target's figure and its start are of its kind: a lap time, a scatter, or thousandths of laps", () => {
  const target = (kind: string, value: number, start = value) =>
    checkRow("targets", { ...wholeRows.targets, kind, value, start }).ok;
  for (const kind of ["best", "median", "meanOf"]) {
    expect([target(kind, 100), target(kind, 86_400_000)], kind).toEqual([true, true]);
    expect([target(kind, 99.9), target(kind, 86_400_001)], kind).toEqual([false, false]);
  }
  expect([target("scatter", 0), target("scatter", 86_400_000)]).toEqual([true, true]);
  expect(target("scatter", 86_400_001)).toBe(false);
  expect([target("cleanShare", 0), target("cleanShare", 1000)]).toEqual([true, true]);
  expect(target("cleanShare", 1001)).toBe(false);
  expect([target("best", 83_000, 99), target("cleanShare", 800, 1001)]).toEqual([false, false]);
  expect(checkRow("targets", { ...wholeRows.targets, value: 99 })).toMatchObject({
    why: "no figure of its kind",
    fault: { why: "no figure of its kind" },
  });
  const { start: _, ...without } = wholeRows.targets;
  expect(checkRow("targets", without)).toMatchObject({ ok: true });
});

test("no preferences, no combo and no run is taken without what it cannot be without", () => {
  for (const table of tableNames) expect(checkRow(table, {}), table).toMatchObject({ ok: false });
});

test("a row may be as deep as sixteen levels under it, and no deeper", () => {
  const nested = (levels: number) => {
    let inner: object = {};
    for (let level = 1; level < levels; level += 1) inner = { inner };
    return { ...wholeRows.cars, inner };
  };
  expect(checkRow("cars", nested(16))).toMatchObject({ ok: true });
  const why = "nested deeper than 16 levels";
  expect(checkRow("cars", nested(17))).toEqual({ ok: false, why, fault: { why } });
});

test("a field named like one that every object has is refused, however deep it stands", () => {
  const why = "a field named toString";
  const row = { ...wholeRows.cars, colour: [{ toString: 1 }] };
  expect(checkRow("cars", row)).toEqual({ ok: false, why, fault: { why } });
});
