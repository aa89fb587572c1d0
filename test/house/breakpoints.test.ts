import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { boxWidths, breakpoints } from "../../src/ui/breakpoints.ts";

const sheets = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".css"),
);

const allowed = Object.values(breakpoints).flatMap((px) => [`min-width: ${px}px`, `max-width: ${px - 1}px`]);

const ofBoxes = Object.values(boxWidths).flatMap((rem) => [
  `inline-size >= ${rem}rem`,
  `inline-size < ${rem}rem`,
]);

test("there are style sheets to look at", () => {
  expect(sheets.length).toBeGreaterThan(40);
});

test.each(sheets)("%s is laid out anew only at the widths of the house", (path) => {
  const queries = readFileSync(`src/${path}`, "utf8").matchAll(/@media[^{]*/g);
  const widths = [...queries].flatMap(([query]) => query.match(/\b(?:min-|max-)?width\b[^)]*/g) ?? []);
  expect(widths.filter((width) => !allowed.includes(width))).toEqual([]);
});

test.each(sheets)("%s asks for the width of a box only in rem, and as the house has them", (path) => {
  const queries = readFileSync(`src/${path}`, "utf8").matchAll(/@container[^{]*/g);
  const widths = [...queries].flatMap(([query]) => query.match(/\b(?:inline-size|width)\b[^)]*/g) ?? []);
  expect(widths.filter((width) => !ofBoxes.includes(width))).toEqual([]);
});
