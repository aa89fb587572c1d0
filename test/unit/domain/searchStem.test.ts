import fc from "fast-check";
import { expect, test } from "vitest";
import { searchText } from "#domain";
import { searchStem, standsInText } from "../../../src/domain/searchStem.ts";

test.each([
  ["tyres", "new tyre, left front"],
  ["tyre", "old tyres"],
  ["brakes", "braking later"],
  ["braking", "brake at the tree"],
  ["corners", "corner 5"],
  ["wind", "windy"],
  ["tyr", "tyres"],
  ["kerbs", "over the kerb."],
])("“%s” is found in “%s”", (word, text) => expect(standsInText(word, text)).toBe(true));

test.each([
  ["soft", "sofa"],
  ["mill", "mile"],
  ["off", "of"],
  ["as", "a soft set"],
  ["bus", "bu"],
  ["line", "lint"],
])("“%s” is not found in “%s”", (word, text) => expect(standsInText(word, text)).toBe(false));

test("what is left of a word has three letters at least, and none is added", () => {
  expect(searchStem("es")).toBe("es");
  fc.assert(
    fc.property(fc.string(), (typed) => {
      const word = searchText(typed);
      expect(word.startsWith(searchStem(word))).toBe(true);
      expect(searchStem(word).length).toBeGreaterThanOrEqual(Math.min(3, word.length));
      if (word !== "") expect(standsInText(word, `before ${word} after`)).toBe(true);
    }),
  );
});
