import { expect, test } from "vitest";
import { textMark } from "#domain";

// FNV-1a, 32 bits: test values of draft-eastlake-fnv, appendix C (from memory: "", "a", "foobar").
test.each([
  ["", 0x811c9dc5],
  ["a", 0xe40c292c],
  ["foobar", 0xbf9cf968],
])("the mark of “%s” is that of FNV-1a", (text, mark) => {
  expect(textMark(text)).toBe(mark);
});
