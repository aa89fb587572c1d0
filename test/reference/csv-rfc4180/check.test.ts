import { expect, test } from "vitest";
import { readCsv, writeCsv } from "#files";
import reference from "./csv-rfc4180.json";

const cellsOf = (text: string) => readCsv(text, ",").map(({ cells }) => cells);

test.each(reference.expected.cases)("RFC 4180, section 2: $name is read", ({ text, rows }) => {
  expect(cellsOf(text)).toEqual(rows);
});

test.each(reference.expected.cases)(
  "RFC 4180, section 2: $name is written so that it reads the same",
  ({ rows }) => {
    const text = writeCsv(rows, { hasMark: false });
    expect(cellsOf(text)).toEqual(rows);
    expect(text.endsWith("\r\n")).toBe(true);
  },
);

test("RFC 4180, section 2, rules 6 and 7: cells are quoted where they must be", () => {
  const cells = [['a"b', "c,d", "e\r\nf", "plain", " spaces "]];
  expect(writeCsv(cells, { hasMark: false })).toBe('"a""b","c,d","e\r\nf",plain, spaces \r\n');
});
