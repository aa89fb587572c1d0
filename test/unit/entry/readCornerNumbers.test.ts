import { expect, it } from "vitest";
import { readCornerNumbers } from "#entry";

it.each([
  ["", []],
  ["3 5 9", [3, 5, 9]],
  ["9, 3;5 3", [3, 5, 9]],
  ["1-4 12", [1, 2, 3, 4, 12]],
  [" 7 ", [7]],
])("numbers of corners are read in lap order, each once: %j", (text, numbers) => {
  expect(readCornerNumbers(text)).toEqual({ ok: true, numbers });
});

it.each([
  ["3 five", 2, 4],
  ["0", 0, 1],
  ["5-3", 0, 3],
  ["1000", 0, 4],
])("what is no number of a corner is named: %j", (text, at, length) => {
  expect(readCornerNumbers(text)).toMatchObject({
    ok: false,
    problem: { at, length, wrong: `“${text.slice(at)}” is not the number of a corner.` },
  });
});
