import { expect, test } from "vitest";
import { typedWords } from "../../../src/live/typedWords.ts";

test("a half-typed form is known by its words, one after the other, without ids and figures", () => {
  const form = {
    car: " Club hatch ",
    track: { id: "x1", layoutId: "x2", name: "Varnholt Ring" },
    laps: 12,
    note: "",
  };
  expect(typedWords(form)).toBe("Club hatch · Varnholt Ring");
  expect(typedWords({ corners: [{ name: "Mill" }, { name: "Weir" }] })).toBe("Mill · Weir");
});

test("only what is an id is left out, not each word that holds those letters", () => {
  expect(typedWords({ id: "1", carId: "2", idea: "brake later", grid: "front" })).toBe("brake later · front");
});

test("a text is its own words, and what is no text has none", () => {
  expect(typedWords("  1:24.5 ")).toBe("1:24.5");
  for (const nothing of [null, undefined, 7, true, {}, { a: null, b: undefined, c: 3 }])
    expect(typedWords(nothing)).toBe("");
});
