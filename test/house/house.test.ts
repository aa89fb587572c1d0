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

test("what is fetched once it is drawn is so by one piece, which knows what to do where it does not come through", () => {
  const lazily = sources.filter(({ text }) => /\blazy\(/.test(text)).map(({ path }) => path);
  expect(lazily).toEqual(["ui/laterPart.ts"]);
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

test.each([
  ["of values", ["ui/a.ts", 'import "./b.ts"'], ["ui/b.ts", 'import "./a.ts"']],
  [
    "of types",
    ["ui/a.ts", 'import type { B } from "./b.ts"'],
    ["ui/b.ts", 'export type { A } from "./a.ts"'],
  ],
  [
    "through a face",
    ["stats/index.ts", 'export { a } from "./a.ts"'],
    ["stats/a.ts", 'import { b } from "#stats"'],
  ],
  ["through a shelf", ["ui/a.ts", 'import type { B } from "#ui/b.ts"'], ["ui/b.ts", 'import "./a.ts"']],
  ["through a late import", ["ui/a.ts", 'import type { B } from "./b.ts"'], ["ui/b.ts", 'import("./a.ts")']],
] as const)("a circle is found: %s", (_, [a, inA], [b, inB]) => {
  expect(cycles([...wrongTree(a, inA), ...wrongTree(b, inB)])).toEqual([`${a} → ${b} → ${a}`]);
});

test("files that lead to one and the same are no circle", () => {
  const tree = [
    ...wrongTree("stats/index.ts", 'export { a } from "./a.ts"; export { b } from "./b.ts"'),
    ...wrongTree("stats/a.ts", 'import { c } from "./c.ts"; import { b } from "./b.ts"'),
    ...wrongTree("stats/b.ts", 'import { c } from "./c.ts"'),
    ...wrongTree("stats/c.ts", 'import { d } from "#domain"'),
    ...wrongTree("domain/index.ts", "export const d = 1;"),
  ];
  expect(cycles(tree)).toEqual([]);
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
