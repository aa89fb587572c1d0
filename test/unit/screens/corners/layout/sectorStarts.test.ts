import fc from "fast-check";
import { expect, test } from "vitest";
import {
  readSectorStarts,
  sectorOf,
  sectorStarts,
} from "../../../../../src/screens/corners/layout/sectorStarts.ts";

const corners = Array.from({ length: 10 }, (_, index) => ({ number: index + 1 }));
const read = (text: string, sectors?: number) => {
  const reading = readSectorStarts(text, corners, sectors);
  return reading.ok ? reading.starts : reading.problem;
};

test("two numbers make three sectors, and the first begins with the lap", () => {
  expect(read("4, 8", 3)).toEqual([4, 8]);
  expect(read("4 8")).toEqual([4, 8]);
  expect(corners.map(({ number }) => sectorOf(number, [4, 8]))).toEqual([1, 1, 1, 2, 2, 2, 2, 3, 3, 3]);
  expect(read("", 3)).toEqual([]);
});

test.each([
  ["4; x", 3, "“x” is not the number of a corner.", "Write numbers such as 4, 8."],
  ["4 12", 3, "There is no corner 12.", "Write numbers that are in the table."],
  ["8 4", 3, "The numbers do not rise.", "Write them in the order of the lap."],
  ["4 4", 3, "The numbers do not rise.", "Write them in the order of the lap."],
  ["4", 3, "3 sectors need 2 of them, not 1.", "Write the first corner of every sector but the first."],
  ["4", 1, "1 sector needs 0 of them, not 1.", "Write the first corner of every sector but the first."],
])("%j of %i sectors is refused", (text, sectors, wrong, right) => {
  expect(read(text, sectors)).toMatchObject({ wrong, right });
});

test("sectors that are filled in are shown by the numbers they were filled in with", () => {
  fc.assert(
    fc.property(fc.subarray([2, 3, 4, 5, 6, 7, 8, 9, 10]), (starts) => {
      const filled = corners.map(({ number }) => ({ number, sector: sectorOf(number, starts) }));
      expect(sectorStarts(filled)).toBe(starts.join(", "));
    }),
  );
});

test("sectors that do not follow the lap are said by no numbers", () => {
  expect(sectorStarts([{ number: 1, sector: 1 }, { number: 2 }, { number: 3, sector: 2 }])).toBe("");
  expect(
    sectorStarts([
      { number: 1, sector: 2 },
      { number: 2, sector: 1 },
    ]),
  ).toBe("");
  expect(
    sectorStarts([
      { number: 1, sector: 1 },
      { number: 2, sector: 3 },
    ]),
  ).toBe("");
});
