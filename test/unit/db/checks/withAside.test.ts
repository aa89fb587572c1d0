import { expect, test } from "vitest";
import { newestSchema, withAside } from "#db";
import { asideRow, noRows } from "#domain";
import { wholeRows } from "../../../support/wholeRows.ts";

const taken = { ...noRows, tracks: [wholeRows.tracks] };
const bad = (table: string, row: unknown, why = "name: not a text") => ({ table, place: 1, why, row });
const car = { ...wholeRows.cars, name: 7 };
const old = asideRow("laps", { n: "two" }, "n: not a number", 2);
/** The rows set aside, of a file that holds these and of which these could not be taken. */
const aside = (held: readonly unknown[] | undefined, refused: readonly ReturnType<typeof bad>[] = []) => {
  const tables = held === undefined ? {} : { aside: held };
  return withAside(tables, { rows: taken, bad: refused }).rows.aside;
};

test("where nothing was set aside the rows come as they are", () => {
  const checked = { rows: taken, bad: [] };
  expect(withAside({}, checked)).toEqual(checked);
  expect(withAside({ aside: [] }, checked).rows).toBe(taken);
});

test("what cannot be taken is set aside with its reason, and is named as bad all the same", () => {
  const refused = [bad("cars", car)];
  const { rows, bad: named } = withAside({}, { rows: taken, bad: refused });
  expect(named).toBe(refused);
  expect(rows).toEqual({ ...taken, aside: [asideRow("cars", car, "name: not a text", newestSchema)] });
});

test("what no table of a logbook could hold, or what is no row, is not set aside", () => {
  expect(aside(undefined, [bad("invoices", car)])).toBeUndefined();
  for (const row of [7, "x", null, undefined]) expect(aside(undefined, [bad("cars", row)])).toBeUndefined();
});

test("what the file had set aside comes along, of rows and of laps, and once", () => {
  const session = asideRow("sessions", { date: "never" }, "date: not a day", 1);
  expect(aside([old, session])).toEqual([old, session]);
  expect(aside([old, { ...old }])).toEqual([old]);
  const car7 = asideRow("cars", car, "name: not a text", newestSchema);
  expect(aside([car7], [bad("cars", car)])).toEqual([car7]);
});

test("a row set aside that was settled stays settled; its id is all that is left to believe", () => {
  const settled = { id: "0123456789abcdef", table: "cars", schema: 3, why: "name: not a text" };
  expect(aside([settled])).toEqual([settled]);
  for (const id of [
    7,
    undefined,
    "",
    "0123456789abcde",
    "x0123456789abcdef",
    "0123456789abcdef0",
    "0123456789abcdeg",
  ])
    expect(aside([{ ...settled, id }]), String(id)).toBeUndefined();
  expect(aside([{ ...settled, row: null }])).toEqual([settled]);
  expect(aside([{ ...settled, row: 7 }])).toEqual([settled]);
});

test("the id of a row set aside is made anew from what it holds, whatever the file says", () => {
  expect(aside([{ ...old, id: "ffffffffffffffff" }])).toEqual([old]);
});

test("what is not set aside as a logbook does it is left out", () => {
  for (const held of [null, 7, "x", undefined]) expect(aside([held])).toBeUndefined();
  for (const table of [7, undefined, "invoices", "aside", "digests"])
    expect(aside([{ ...old, table }]), String(table)).toBeUndefined();
  for (const schema of ["3", undefined, 1.5, Number.NaN, 2 ** 53])
    expect(aside([{ ...old, schema }]), String(schema)).toBeUndefined();
});

test("of a reason that is none, nothing is kept, and of a long one its beginning", () => {
  expect(aside([{ ...old, why: 7 }])).toEqual([{ ...old, why: "" }]);
  expect(aside([{ ...old, why: "x".repeat(401) }])).toEqual([{ ...old, why: "x".repeat(400) }]);
});
