import { expect, test } from "vitest";
import { readSources } from "./sources.ts";

const sources = readSources("src");

/** Where a sentence is handed on as the reason of a figure. */
const saidAsReason = /\bunknown\(\s*["'`]|known:\s*false,\s*reason:\s*["'`]/;
/** A reason in the middle of a text: only `words` makes sentences of them. */
const reasonInText = /\$\{[\w.]*\b(?:curve|view|figure|account|shift|trend|scatter|outlook)\.reason\}/;
/** What takes a text apart again. */
const reading = /\.(?:replace|replaceAll|match|matchAll|exec|test|search|split)\(|new RegExp/;

const found = (pattern: RegExp, among = sources) =>
  among.filter(({ text }) => pattern.test(text)).map(({ path }) => path);

test("no figure is missing for a reason that is a sentence", () => {
  expect(sources.length).toBeGreaterThan(20);
  expect(found(saidAsReason)).toEqual([]);
  expect(found(reasonInText)).toEqual([]);
});

test("no pattern reads a sentence where sentences are made", () => {
  const words = sources.filter(({ path }) => path.startsWith("words/"));
  expect(words.length).toBeGreaterThan(20);
  expect(found(reading, words)).toEqual([]);
});

test.each([
  [saidAsReason, 'return unknown("needs 5 laps, has 3");'],
  [saidAsReason, "return unknown(\n  `needs some laps`,\n);"],
  [saidAsReason, 'return { known: false, reason: "no target" };'],
  [reasonInText, ["`No forecast yet: $", "{curve.reason}.`"].join("")],
  [reading, "/^needs (\\d+)/.exec(reason)"],
])("a wrong line is found by %s", (pattern, text) => {
  expect(found(pattern, [{ path: "a.ts", text, imports: [] }])).toEqual(["a.ts"]);
});
