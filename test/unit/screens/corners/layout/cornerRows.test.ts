import { expect, test } from "vitest";
import type { Corner } from "#domain";
import {
  cornerRows,
  type TypedRows,
  withCell,
  withoutStored,
} from "../../../../../src/screens/corners/layout/cornerRows.ts";

const around = { car: {}, speeds: new Map([[5, 25]]) };
const rowsOf = (corners: readonly Corner[], typed: TypedRows = {}) => cornerRows(corners, typed, around);
const keys = (corners: readonly Corner[], typed: TypedRows = {}) =>
  rowsOf(corners, typed).map(({ key }) => key);

test("an empty row stands at the end with the next number, and another one as soon as it is typed in", () => {
  expect(keys([])).toEqual(["1"]);
  expect(keys([{ number: 1 }, { number: 7 }])).toEqual(["1", "7", "8"]);
  expect(keys([{ number: 1 }], { "2": { bend: "h" } })).toEqual(["1", "2", "3"]);
  expect(keys([{ number: 1 }], { "2": { number: "12" } })).toEqual(["1", "2", "13"]);
  expect(keys([{ number: 999 }])).toEqual(["999"]);
});

test("a row shows what is stored, and over it what is typed", () => {
  const [first] = rowsOf([{ number: 5, bend: "slow", radius: 40 }], { "5": { bend: "h" } });
  expect(first?.texts).toMatchObject({ number: "5", bend: "h", radius: "40", speed: "90" });
  expect(first?.reading.edit).toEqual({ number: 5, patch: { bend: "hairpin" } });
  expect(first?.isTyped).toBe(true);
});

test("a new corner cannot take the number of one that is there", () => {
  const rows = rowsOf([{ number: 1 }, { number: 2 }], { "3": { number: "2" }, "4": { number: "9" } });
  const at = (key: string) => rows.find((row) => row.key === key);
  expect(at("3")?.reading.problems.number).toMatchObject({ wrong: "Corner 2 is there already." });
  expect(at("4")?.reading.problems).toEqual({});
  expect(at("4")?.reading.edit.number).toBe(9);
});

test("corners that follow at once are one chain, as typed and as stored", () => {
  const corners: Corner[] = [{ number: 1 }, { number: 2, after: "none" }, { number: 3 }, { number: 4 }];
  const chains = (typed: TypedRows = {}) => rowsOf(corners, typed).map(({ chain }) => chain);
  expect(chains()).toEqual([undefined, "first", "last", undefined, undefined]);
  expect(chains({ "3": { after: "n" } })).toEqual([undefined, "first", "middle", "last", undefined]);
  expect(chains({ "2": { after: "l" } })).toEqual([undefined, undefined, undefined, undefined, undefined]);
});

test("a cell that says what is stored is not typed, nor is an empty one of a new row", () => {
  const stored = { key: "5", corner: { number: 5, bend: "slow" } as const };
  const typed = withCell({}, stored, "bend", "h", undefined);
  expect(typed).toEqual({ "5": { bend: "h" } });
  expect(withCell(typed, stored, "bend", "slow", undefined)).toEqual({});
  expect(withCell(typed, stored, "bend", "", undefined)).toEqual({ "5": { bend: "" } });
  const empty = { key: "6", corner: undefined };
  expect(withCell({ "6": { bend: "h" } }, empty, "bend", "", undefined)).toEqual({});
  expect(withCell({}, empty, "number", "6", undefined)).toEqual({});
});

test("what was typed while a row was being stored stays", () => {
  const typed = { "5": { bend: "h", after: "lo" }, "6": { bend: "s" } };
  expect(withoutStored(typed, "5", { bend: "h", after: "l" })).toEqual({
    "5": { after: "lo" },
    "6": { bend: "s" },
  });
  expect(withoutStored(typed, "6", { bend: "s" })).toEqual({ "5": { bend: "h", after: "lo" } });
});
