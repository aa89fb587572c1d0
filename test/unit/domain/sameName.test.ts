import { expect, test } from "vitest";
import { sameName } from "#domain";

test("names that differ in case, accents, spaces or invisible signs are the same", () => {
  expect(sameName("Marlow Fen", " márlow  FEN\u200B")).toBe(true);
  expect(sameName("Marlow Fen", "MarlowFen")).toBe(true);
  expect(sameName("Über", "U\u0308ber")).toBe(true);
});

test("names that differ in a letter or a figure are not", () => {
  expect(sameName("Marlow Fen", "Marlow Fens")).toBe(false);
  expect(sameName("Fen 1²", "Fen 12")).toBe(false);
  expect(sameName("", "a")).toBe(false);
});
