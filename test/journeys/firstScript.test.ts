import { readdirSync, readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { expect, test } from "@playwright/test";

const dist = "dist/";

/** The scripts that the page names itself, and all that they import at once. */
function firstScripts(): string[] {
  const page = readFileSync(`${dist}index.html`, "utf8");
  const found = new Set<string>();
  const follow = (path: string) => {
    if (found.has(path)) return;
    found.add(path);
    const text = readFileSync(dist + path, "utf8");
    for (const [, name] of text.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)) follow(`assets/${name}`);
  };
  for (const [, path = ""] of page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)) follow(path);
  return [...found];
}

test("the first field is in the script that the page begins with, which is at most 143 kB, gzipped", () => {
  const scripts = firstScripts();
  expect(scripts.length).toBeGreaterThan(1);
  const later = readdirSync(`${dist}assets`).filter((name) =>
    /^(Welcome|Begin|StartForm)-.*\.js$/.test(name),
  );
  expect(later, "fetched later").toEqual([]);
  const sizes = scripts.map((path) => gzipSync(readFileSync(dist + path)).length);
  const kilobytes = sizes.reduce((sum, size) => sum + size, 0) / 1000;
  console.log(`first script: ${kilobytes.toFixed(1)} kB`);
  expect(kilobytes).toBeLessThan(143);
});
