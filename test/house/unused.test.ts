import { parseSync } from "vite";
import { expect, test } from "vitest";
import { readSources, type Source } from "./sources.ts";

const publicFace = "of the public face of the figures, which checks from outside call";
const waiting = "waits for its screen";

/** Exports that nothing in src names, each with the reason why it stays. */
const kept: Readonly<Record<string, string>> = {};

/** The text without comments, and without what a face only passes on. */
function ownText({ text }: Source): string {
  return text
    .replace(/\/\*[\s\S]*?\*\/|(?<![:"'`])\/\/.*$/gm, "")
    .replace(/export (?:type )?\{[^}]*\} from "[^"]+";/g, "");
}

/** The values that a file exports under their own names. */
function valuesOf({ path, text }: Source): string[] {
  return parseSync(path, text).module.staticExports.flatMap(({ entries }) =>
    entries.flatMap(({ exportName, moduleRequest, isType }) =>
      moduleRequest || isType || exportName.name === null || exportName.name === undefined
        ? []
        : [exportName.name],
    ),
  );
}

/** Exported names that stand once in all the text there is: where they are made. */
function unused(sources: readonly Source[]): string[] {
  const times = new Map<string, number>();
  for (const source of sources)
    for (const [word] of ownText(source).matchAll(/[A-Za-z_$][\w$]*/g))
      times.set(word, (times.get(word) ?? 0) + 1);
  return sources.flatMap(valuesOf).filter((name) => (times.get(name) ?? 0) < 2);
}

const file = (path: string, text: string): Source => ({ path, text, imports: [] });

test("an export that nothing names is found, a passing on and a comment being no use", () => {
  const made = file("a.ts", "/** See lonely. */\nexport const lonely = 1;\nexport function met() {}\n");
  const face = file("index.ts", 'export { lonely, met } from "./a.ts";');
  const user = file("b.ts", 'import { met } from "./index.ts";\nmet(); // lonely');
  expect(unused([made, face, user])).toEqual(["lonely"]);
});

test("nothing is exported that src does not use, but what is kept with a reason", () => {
  const found = unused(readSources("src"));
  expect(found.length).toBeGreaterThan(0);
  expect(found.sort()).toEqual(Object.keys(kept).sort());
});
