import { afterEach, expect, test, vi } from "vitest";
import { LedgerFault } from "#db";
import { sayNeededSpace } from "../../../src/live/sayNeededSpace.ts";

afterEach(() => vi.unstubAllGlobals());

const full = new LedgerFault("quota", "Not merged: this browser has no space left for it.");
const allows = (estimate: StorageEstimate | undefined) =>
  vi.stubGlobal("navigator", estimate && { storage: { estimate: async () => estimate } });

test("the driver reads how much space is needed and how much the browser allows", async () => {
  allows({ quota: 4_000_000, usage: 3_150_000 });
  expect(await sayNeededSpace(full, () => 5_878_116)).toBe(
    "Not merged: this browser has no space left for it. Nothing was changed. It needs about 5.9 MB; this browser says it allows this address about 0.8 MB more.",
  );
});

test("a browser that allows what it had no space for is not quoted", async () => {
  allows({ quota: 10_000_000_000, usage: 0 });
  const text = await sayNeededSpace(full, async () => 5_878_116);
  expect(text).toMatch(/It needs about 5\.9 MB\. How much it may still store, this browser does not tell\.$/);
});

test("where the browser does not say what it allows, that is said, and none where that is unknown", async () => {
  allows({});
  expect(await sayNeededSpace(full, () => 20)).toMatch(
    /It needs about 0\.1 MB\. How much it may still store, this browser does not tell\.$/,
  );
  allows(undefined);
  expect(await sayNeededSpace(full, () => 20)).toMatch(/It needs about 0\.1 MB\. How much/);
  expect(await sayNeededSpace(full, () => undefined)).toMatch(/Nothing was changed\.$/);
});

test("any other fault is said as it is", async () => {
  expect(await sayNeededSpace(new LedgerFault("failed", "Not merged: gone."), () => 20)).toBe(
    "Not merged: gone.",
  );
});
