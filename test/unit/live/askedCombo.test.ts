import { expect, test } from "vitest";
import { askedCombo } from "../../../src/live/askedCombo.ts";

const combos = [{ id: "late" }, { id: "early" }];

test("the combo of the address, else the one driven last", () => {
  expect(askedCombo(combos, "early")).toBe(combos[1]);
  expect(askedCombo(combos, undefined)).toBe(combos[0]);
});

test("none where the one asked for is not there, nor where there is none at all", () => {
  expect(askedCombo(combos, "gone")).toBeUndefined();
  expect(askedCombo([], undefined)).toBeUndefined();
});
