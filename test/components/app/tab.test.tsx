import { beforeEach, expect, it } from "vitest";
import { browserSurroundings } from "#live";

// Here, as at an address without https, a page has no locks, so tabs ask each other.
beforeEach(() => window.sessionStorage.clear());

it("a page that begins with another tab's storage is a tab of its own, and both know of each other", async () => {
  expect(navigator.locks).toBeUndefined();
  const first = browserSurroundings().tab;
  const id = await first.id;
  const copy = browserSurroundings().tab;
  expect(await copy.id).not.toBe(id);
  expect([...(await first.living())].sort()).toEqual([id, await copy.id].sort());
  expect([...(await copy.living())].sort()).toEqual([id, await copy.id].sort());
});

it("a page that is loaded again is the same tab", async () => {
  window.sessionStorage.setItem("lap-ledger tab", "0192-the-same");
  expect(await browserSurroundings().tab.id).toBe("0192-the-same");
});
