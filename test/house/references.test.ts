import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const root = "test/reference";
const folders = readdirSync(root);

test("there are checks against the outside", () => {
  expect(folders.length).toBeGreaterThan(20);
});

test.each(folders)("%s says where its values come from and is checked", (folder) => {
  const source = join(root, folder, "source.md");
  expect(existsSync(source), `${source} is missing`).toBe(true);
  expect(readFileSync(source, "utf8").trim().length).toBeGreaterThan(80);
  expect(readdirSync(join(root, folder)).some((name) => name.endsWith(".test.ts"))).toBe(true);
});
