import { posix } from "node:path";
import { expect, test } from "vitest";
import { importsOf, readSources, type Source } from "./sources.ts";

/** Every file that one of them leads to, and every package, at once or later; types lead nowhere. */
function reached(sources: readonly Source[], from: string): ReadonlySet<string> {
  const byPath = new Map(sources.map((source) => [source.path, source]));
  const found = new Set<string>();
  const walk = (path: string) => {
    if (found.has(path)) return;
    found.add(path);
    for (const { specifier, isType } of byPath.get(path)?.imports ?? [])
      if (!isType) walk(to(path, specifier));
  };
  walk(from);
  return found;
}

function to(path: string, specifier: string): string {
  if (specifier.startsWith(".")) return posix.join(posix.dirname(path), specifier);
  if (!specifier.startsWith("#")) return specifier;
  const place = specifier.slice(1);
  return place.includes("/") ? place : `${place}/index.ts`;
}

/** What only a page can do, and what holds its state: a worker that fetched it would fail, or fetch it for nothing. */
const ofThePage = /^(react|zustand|dexie-react-hooks|recharts)\b|^(app|charts|screens|state|ui)\/|\.tsx$/;

test("the workers' script leads to nothing that draws, for it is built with the page", () => {
  const files = [...reached(readSources("src"), "live/worker.ts")];
  expect(files).toContain("live/jobs/jobs.ts");
  expect(files).toContain("live/errands/restore.ts");
  expect(files).toContain("dexie");
  expect(files.filter((file) => ofThePage.test(file))).toEqual([]);
});

test("a worker that leads to the page is found, however far away", () => {
  const file = (path: string, text: string) => ({ path, text, imports: importsOf(path, text) });
  const tree = [
    file("live/worker.ts", 'const job = import("./job.ts"); import type { Hook } from "zustand";'),
    file("live/job.ts", 'import { read } from "#db";'),
    file("db/index.ts", 'export { read } from "./read.ts";'),
    file("db/read.ts", 'import { useState } from "react";'),
  ];
  expect([...reached(tree, "live/worker.ts")].filter((name) => ofThePage.test(name))).toEqual(["react"]);
});
