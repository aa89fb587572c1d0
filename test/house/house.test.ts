import { expect, test } from "vitest";
import { cycles, impurities, wrongImports } from "./check.ts";
import { exceptions, rooms } from "./rooms.ts";
import { importsOf, readSources } from "./sources.ts";

const sources = readSources("src");
const house = { rooms, exceptions };
const wrongTree = (path: string, text: string) => [{ path, text, imports: importsOf(path, text) }];

test("every import goes one way, through the face of a room", () => {
  expect(sources.length).toBeGreaterThan(20);
  expect(wrongImports(sources, house)).toEqual([]);
});

test("no file imports itself in a circle", () => {
  expect(cycles(sources)).toEqual([]);
});

test("the pure rooms know no screen, no database, no clock and no chance", () => {
  expect(impurities(sources, rooms)).toEqual([]);
});

test.each([
  ["charts/A.tsx", 'import { x } from "#db"', "charts may not import db"],
  ["charts/A.tsx", 'import { median } from "#stats"', "charts may import only types of stats"],
  ["stats/a.ts", 'import { x } from "dexie"', "stats may not import this package"],
  [
    "stats/a.ts",
    'import { x } from "../db/y.ts"',
    "a relative path does not leave its room; use the room's face",
  ],
  ["screens/log/A.tsx", 'import { x } from "../review/B.tsx"', "one screen never imports another"],
  ["helpers/a.ts", "import { x } from '#domain'", "helpers is not a room of the house"],
  ["screens/log/A.tsx", 'import { x } from "#stats/sample/mean.ts"', "stats is not entered this way"],
  ["words/a.ts", 'export type { x } from "#live"', "words may not import live"],
  ["entry/a.ts", 'const x = import("#db")', "entry may not import db"],
])("a wrong tree is refused: %s with %s", (path, text, complaint) => {
  const found = wrongImports(wrongTree(path, text), house);
  expect(found).toHaveLength(1);
  expect(found[0]).toContain(complaint);
});

test("types of a room that may only be drawn are let through", () => {
  expect(wrongImports(wrongTree("charts/A.tsx", 'import type { Figure } from "#stats"'), house)).toEqual([]);
});

test("a circle is found", () => {
  const tree = [...wrongTree("ui/a.ts", 'import "./b.ts"'), ...wrongTree("ui/b.ts", 'import "./a.ts"')];
  expect(cycles(tree)).toEqual(["ui/a.ts → ui/b.ts → ui/a.ts"]);
});

test.each([
  "const t = Date.now();",
  "const d = new Date();",
  "const r = Math.random();",
  "localStorage.getItem('x')",
])("an impure line is found: %s", (line) => {
  expect(impurities(wrongTree("stats/a.ts", line), rooms)).toHaveLength(1);
  expect(impurities(wrongTree("ui/a.ts", line), rooms)).toHaveLength(0);
  expect(impurities(wrongTree("stats/a.ts", `// ${line}`), rooms)).toHaveLength(0);
});
