import { expect, test } from "vitest";
import { sayPair, slopeTable } from "../../../../src/charts/slope/slopeTable.ts";

const pair = { number: 3, first: "B", a: 84_310, b: 84_104 } as const;

test("a pair is read out with both its ends and which way it points", () => {
  expect(sayPair(pair, "usual")).toBe("pair 3, B first: A 1:24.31, B 1:24.10, −0.21 s, B faster");
  expect(sayPair({ ...pair, a: 84_104, b: 84_310 }, "usual")).toMatch(/\+0\.21 s, B slower$/);
  expect(sayPair({ ...pair, a: 84_104, b: 84_104 }, "usual")).toMatch(/±0\.00 s, the same$/);
  expect(sayPair({ ...pair, a: 410, b: 350 }, "scatter")).toBe(
    "pair 3, B first: A 0.41 s, B 0.35 s, −0.06 s, B steadier",
  );
});

test("the table holds every pair, for a spreadsheet in seconds", () => {
  const { rows, columns } = slopeTable([pair, { ...pair, number: 5, first: "A" }], "usual");
  expect(rows.map(({ id }) => id)).toEqual(["3", "5"]);
  expect(columns.map(({ key }) => key)).toEqual(["pair", "first", "a", "b", "difference"]);
  expect(rows[0]?.cells["a"]).toEqual({ text: "1:24.31", value: 84.31 });
  expect(rows[0]?.cells["difference"]).toEqual({ text: "−0.21 s", value: -0.206 });
});
