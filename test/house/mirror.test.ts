import { existsSync, readdirSync, statSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";
import { expect, test } from "vitest";

/** Where tests of a kind stand, and the tree that they mirror. */
const trees = [
  { tests: "test/unit", roots: ["src", "."] },
  { tests: "test/components", roots: ["src"] },
];

const filesUnder = (folder: string): string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesUnder(path) : [path];
  });

const nameOf = (path: string) => basename(path).replace(/(\.test)?\.tsx?$/, "");

test.each(trees)("a folder of $tests stands where the one it tests does", ({ tests, roots }) => {
  const folders = [...new Set(filesUnder(tests).map((path) => relative(tests, dirname(path))))];
  expect(folders.length).toBeGreaterThan(1);
  const lost = folders.filter((folder) => !roots.some((root) => existsSync(join(root, folder))));
  expect(lost).toEqual([]);
});

test.each(trees)("a test of $tests named after a file stands beside it in the mirror", ({ tests }) => {
  const sources = filesUnder("src").filter((path) => /\.tsx?$/.test(path));
  const wrong = filesUnder(tests)
    .filter((path) => /\.test\.tsx?$/.test(path))
    .flatMap((path) => {
      const folder = relative(tests, dirname(path));
      const room = join("src", folder.split("/")[0] ?? "");
      const likes = sources.filter(
        (source) => source.startsWith(`${room}/`) && nameOf(source) === nameOf(path),
      );
      const isBeside = likes.some((source) => relative("src", dirname(source)) === folder);
      return likes.length === 0 || isBeside ? [] : [`${path}: ${likes.join(" or ")}`];
    });
  expect(wrong).toEqual([]);
});
