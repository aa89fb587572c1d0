import fc from "fast-check";
import { expect, test } from "vitest";
import { guarded, readCsv, unguarded, writeCsv } from "#files";

const plain = { hasMark: false };

// OWASP, CSV Injection: the signs that begin a formula, and that they may follow a quote or separator.
test.each([
  ["=1+1", "'=1+1"],
  ["+1", "'+1"],
  ["-2+3", "'-2+3"],
  ["@x", "'@x"],
  ["\tx", "'\tx"],
  ["\rx", "'\rx"],
  ["＝1", "'＝1"],
  ["＠x", "'＠x"],
  ['";=1+1', "\";'=1+1"],
  ["a,=1", "a,'=1"],
  ["'=1", "''=1"],
  ["late on the brakes - again", "late on the brakes - again"],
  ["−0.3 on the last lap", "−0.3 on the last lap"],
])("the text %j is written as %j", (text, written) => {
  expect(guarded(text)).toBe(written);
  expect(unguarded(written)).toBe(text);
});

test("numbers and figures stay what they are, negative ones too", () => {
  expect(writeCsv([[-0.312, { figures: "1:23.450" }, "-0.312"]], plain)).toBe("-0.312,1:23.450,'-0.312\r\n");
});

test("with a decimal comma the figures have it, and are quoted where the comma separates", () => {
  const row = [[-0.5, { figures: "1:23.45" }, "1.5"]];
  expect(writeCsv(row, { ...plain, decimal: ",", delimiter: ";" })).toBe("-0,5;1:23,45;1.5\r\n");
  expect(writeCsv(row, { ...plain, decimal: "," })).toBe('"-0,5","1:23,45",1.5\r\n');
});

test("the byte order mark is written by choice and passed over on reading", () => {
  expect(writeCsv([["a"]]).startsWith("\uFEFF")).toBe(true);
  expect(readCsv("\uFEFFa,b\n", ",")).toEqual([{ line: 1, cells: ["a", "b"] }]);
});

test("whatever the text, it is read back as it was and begins no formula", () => {
  const signs = fc.constantFrom(
    "=",
    "+",
    "-",
    "@",
    "\t",
    "\r",
    "\n",
    '"',
    "'",
    ",",
    ";",
    "|",
    "＝",
    "a",
    " ",
    "1",
  );
  const text = fc.oneof(
    fc.string({ unit: signs, maxLength: 12 }),
    fc.string({ unit: "grapheme", maxLength: 20 }),
  );
  const delimiter = fc.constantFrom(",", ";", "\t");
  fc.assert(
    fc.property(
      fc.array(fc.array(text, { minLength: 2, maxLength: 4 }), { minLength: 1 }),
      delimiter,
      (rows, sign) => {
        const written = writeCsv(rows, { ...plain, delimiter: sign as ",", decimal: "." });
        expect(readCsv(written, sign).map(({ cells }) => cells)).toEqual(rows);
        for (const cell of rows.flat())
          expect(guarded(cell)).not.toMatch(/^[=+\-@\t\r\n＝＋－＠]|[",;|\t\r\n][=+\-@＝＋－＠]/);
      },
    ),
    { seed: 5, numRuns: 2000 },
  );
});
