import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { breakpoints } from "../../src/ui/breakpoints.ts";

const sheets = readdirSync("src", { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".css"),
);

const allowed = Object.values(breakpoints).flatMap((px) => [`min-width: ${px}px`, `max-width: ${px - 1}px`]);

test("there are style sheets to look at", () => {
  expect(sheets.length).toBeGreaterThan(40);
});

test.each(sheets)("%s is laid out anew only at the widths of the house", (path) => {
  const queries = readFileSync(`src/${path}`, "utf8").matchAll(/@media[^{]*/g);
  const widths = [...queries].flatMap(([query]) => query.match(/\b(?:min-|max-)?width\b[^)]*/g) ?? []);
  expect(widths.filter((width) => !allowed.includes(width))).toEqual([]);
});

test.each(sheets)("%s knows enlarged letters by one width in letters, that of the box itself", (path) => {
  const queries = readFileSync(`src/${path}`, "utf8").matchAll(/@container[^{]*/g);
  expect(
    [...queries].map(([query]) => query.trim()).filter((query) => query !== "@container (max-width: 17rem)"),
  ).toEqual([]);
});
