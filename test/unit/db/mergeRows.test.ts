import { expect, test } from "vitest";
import { countChanges, merged, mergeRows, putRowsRight, rowsAhead, rowsIn } from "#db";
import { type AllRows, asideRow, type Lap, noRows, type Run } from "#domain";
import { idAt, wholeLap, wholeRows } from "../../support/wholeRows.ts";

const { deletedAt: _, had: __, disproved: ___, ...bareCar } = wholeRows.cars;
const car = (n: number, fields: object = {}) => ({
  ...bareCar,
  id: idAt(n),
  createdAt: 1,
  updatedAt: 5,
  ...fields,
});
const { deletedAt: _4, had: _5, disproved: _6, ...bareLap } = wholeLap;
const lap = (n: number, fields: object = {}): Lap => ({
  ...bareLap,
  id: idAt(80 + n),
  createdAt: 1,
  updatedAt: 5,
  n,
  ...fields,
});
const { deletedAt: _7, had: _8, disproved: _9, ...bareRun } = wholeRows.runs;
const run = (n: number, laps: readonly Lap[], fields: object = {}): Run => ({
  ...bareRun,
  id: idAt(n),
  createdAt: 1,
  updatedAt: 5,
  laps,
  ...fields,
});
const rows = (some: Partial<AllRows>): AllRows => ({ ...noRows, ...some });

test("merged rows stand in the order of their ids, each once", () => {
  const [here, coming] = [rows({ cars: [car(3), car(1)] }), rows({ cars: [car(2), car(3)] })];
  expect(mergeRows(here, coming)).toEqual(rows({ cars: [car(1), car(2), car(3)] }));
});

test("laps merge one by one: in the order of the run, those of one place in the order of their ids", () => {
  const here = rows({ runs: [run(1, [lap(1), lap(5, { n: 2 })])] });
  const coming = rows({
    runs: [run(1, [lap(1, { updatedAt: 6, note: "late" }), lap(4, { n: 2 }), lap(9, { n: 0.5 })])],
  });
  expect(mergeRows(here, coming)).toEqual(
    rows({
      runs: [
        run(1, [
          lap(9, { n: 0.5 }),
          lap(1, { updatedAt: 6, note: "late" }),
          lap(4, { n: 2 }),
          lap(5, { n: 2 }),
        ]),
      ],
    }),
  );
});

test("a run merges apart from its laps: the note of the later one, the laps of both", () => {
  const here = rows({ runs: [run(1, [lap(1)], { updatedAt: 9, note: "here" })] });
  const coming = rows({ runs: [run(1, [lap(2)], { updatedAt: 8, note: "there" })] });
  expect(mergeRows(here, coming)).toEqual(
    rows({ runs: [run(1, [lap(1), lap(2)], { updatedAt: 9, note: "here" })] }),
  );
});

test("a lap that was moved is in the run its later version is in, and an empty run stays", () => {
  const here = rows({ runs: [run(1, [lap(1)]), run(2, [])] });
  const coming = rows({ runs: [run(1, []), run(2, [lap(1, { updatedAt: 6 })])] });
  expect(mergeRows(here, coming)).toEqual(rows({ runs: [run(1, []), run(2, [lap(1, { updatedAt: 6 })])] }));
});

test("rows ahead of the clock are put right, their laps too, and all else is as it was", () => {
  const here = rows({
    cars: [car(1), car(2, { updatedAt: 99 })],
    runs: [run(3, [lap(1), lap(2, { updatedAt: 99 })]), run(4, [lap(3)], { updatedAt: 99 })],
  });
  expect(putRowsRight(here, 30)).toEqual(
    rows({
      cars: [car(1), car(2, { updatedAt: 2, had: [99] })],
      runs: [
        run(3, [lap(1), lap(2, { updatedAt: 2, had: [99] })]),
        run(4, [lap(3)], { updatedAt: 2, had: [99] }),
      ],
    }),
  );
  expect(putRowsRight(here, undefined)).toBe(here);
});

test("a merge puts both sides right first, where the driver has confirmed the date", () => {
  const here = rows({ cars: [car(1, { updatedAt: 99, name: "here" })] });
  const coming = rows({ cars: [car(1, { updatedAt: 20, name: "there" })] });
  expect(merged(here, coming, undefined).cars).toMatchObject([{ name: "here" }]);
  expect(merged(here, coming, 30).cars).toMatchObject([{ name: "there" }]);
  expect(merged(coming, here, 30).cars).toMatchObject([{ name: "there" }]);
});

test("a merge tells what the other side brought of rows set aside, and nothing where it brought none", () => {
  const aside = [asideRow("cars", { name: 7 }, "name: not a text", 3)];
  expect(merged(noRows, { ...noRows, aside }, undefined)).toEqual({ ...noRows, aside });
  expect(merged({ ...noRows, aside }, noRows, undefined)).not.toHaveProperty("aside");
});

test("rows and laps ahead of an instant are counted with the latest of their stamps", () => {
  const here = rows({
    cars: [car(1, { updatedAt: 30 }), car(2, { updatedAt: 31 })],
    tracks: [{ ...car(5), deletedAt: 90 }],
    runs: [run(3, [lap(1), lap(2, { updatedAt: 40, deletedAt: 35 })])],
  });
  expect(rowsAhead(here, 30)).toEqual({ count: 3, newest: 90 });
  expect(rowsAhead(here, 50)).toEqual({ count: 1, newest: 90 });
  expect(rowsAhead(rows({ runs: [run(3, [lap(2, { updatedAt: 40 })])] }), 30)).toEqual({
    count: 1,
    newest: 40,
  });
  expect(rowsAhead(here, 90)).toBeUndefined();
});

const none = { added: 0, changed: 0, deleted: 0, broughtBack: 0, unchanged: 0 };

test("what changes is counted row by row: new, changed, deleted, brought back and as it was", () => {
  const before = rows({
    cars: [car(1), car(2), car(3), car(4, { deletedAt: 5 }), car(5, { deletedAt: 5 }), car(9)],
  });
  const after = rows({
    cars: [
      car(1),
      car(2, { name: "new" }),
      car(3, { deletedAt: 7 }),
      car(4),
      car(5, { deletedAt: 5, name: "new" }),
      car(6),
      car(7, { deletedAt: 5 }),
    ],
  });
  const counts = countChanges(before, after);
  expect(counts.cars).toEqual({ added: 2, changed: 2, deleted: 1, broughtBack: 1, unchanged: 1 });
  expect(counts.tracks).toEqual(none);
  expect(counts.laps).toEqual(none);
});

test("laps are counted apart from their runs, and one that was moved as changed", () => {
  const before = rows({ runs: [run(1, [lap(1), lap(2), lap(3)]), run(2, [])] });
  const after = rows({
    runs: [run(1, [lap(1), lap(2, { ms: 80_000 })]), run(2, [lap(3), lap(4)], { note: "new" })],
  });
  const counts = countChanges(before, after);
  expect(counts.runs).toEqual({ ...none, changed: 1, unchanged: 1 });
  expect(counts.laps).toEqual({ ...none, added: 1, changed: 2, unchanged: 1 });
});

test("rows are counted in all tables, laps not", () => {
  expect(rowsIn(rows({ cars: [car(1), car(2)], runs: [run(3, [lap(1), lap(2)])] }))).toBe(3);
  expect(rowsIn(noRows)).toBe(0);
});
