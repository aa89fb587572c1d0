import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { parseSync } from "vite";

export interface Import {
  readonly specifier: string;
  readonly isType: boolean;
}
export interface Source {
  /** Path below the root, with "/" on every system. */
  readonly path: string;
  readonly text: string;
  readonly imports: readonly Import[];
}

/** Every TypeScript file below a folder, with what it imports: static, type-only, re-exported and dynamic. */
export function readSources(root: string): Source[] {
  return readdirSync(root, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !name.endsWith(".d.ts") && statSync(join(root, name)).isFile())
    .map((name) => {
      const text = readFileSync(join(root, name), "utf8");
      return { path: relative(".", name).split(sep).join("/"), text, imports: importsOf(name, text) };
    });
}

/** What one file imports. A worker named by `new URL("./x.ts", import.meta.url)` counts as imported. */
export function importsOf(name: string, text: string): Import[] {
  const { module } = parseSync(name, text);
  const fixed = module.staticImports.map((entry) => ({
    specifier: entry.moduleRequest.value,
    isType: /^import\s+type\b/.test(text.slice(entry.start, entry.end)),
  }));
  const passedOn = module.staticExports.flatMap((statement) =>
    statement.entries.flatMap((entry) =>
      entry.moduleRequest === null || entry.moduleRequest === undefined
        ? []
        : [{ specifier: entry.moduleRequest.value, isType: entry.isType }],
    ),
  );
  const late = module.dynamicImports.map((entry) => ({
    specifier: text.slice(entry.moduleRequest.start, entry.moduleRequest.end).replace(/^["'`]|["'`]$/g, ""),
    isType: false,
  }));
  const workers = [...text.matchAll(/new URL\(\s*"([^"]+)",\s*import\.meta\.url/g)].map((match) => ({
    specifier: match[1] ?? "",
    isType: false,
  }));
  return [...fixed, ...passedOn, ...late, ...workers];
}
