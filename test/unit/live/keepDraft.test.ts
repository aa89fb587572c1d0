import "fake-indexeddb/auto";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { draftKey, idMaker, openShelf, readDraft, readDrafts, type Shelf } from "#db";
import { keepDraft } from "../../../src/live/keepDraft.ts";
import { fixedClock } from "../../support/fixedClock.ts";

const clock = fixedClock(Date.UTC(2026, 10, 28));
const tab = Promise.resolve("tab");
const about = "book/entry s";
const kept = (text: string) => ({ text, state: { text } });
let shelf: Shelf;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  shelf = await openShelf({ clock: clock.now, newId: idMaker(clock.now), name: `drafts-${opened}` });
});
afterEach(() => {
  vi.restoreAllMocks();
  shelf.close();
});

test("a hand quicker than the disk is at most some states ahead, and the newest one is kept", async () => {
  const put = vi.spyOn(IDBObjectStore.prototype, "put");
  const all = Array.from({ length: 100 }, (_, at) => keepDraft(shelf, tab, about, kept(String(at))));
  await Promise.all(all);
  expect(await readDraft(shelf, draftKey(about, "tab"))).toMatchObject({ text: "99", tab: "tab" });
  expect(put.mock.calls.length).toBeLessThan(20);
});

test("what was typed and at once forgotten is forgotten, and the other way round", async () => {
  await Promise.all([kept("1:2"), kept("1:25"), undefined].map((one) => keepDraft(shelf, tab, about, one)));
  expect(await readDrafts(shelf)).toEqual([]);
  await Promise.all([kept("1:2"), undefined, kept("1:3")].map((one) => keepDraft(shelf, tab, about, one)));
  expect(await readDrafts(shelf)).toMatchObject([{ text: "1:3" }]);
});

test("a state that cannot be kept is said, and the one typed after it is kept", async () => {
  const full = new DOMException("no space", "QuotaExceededError");
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementationOnce(() => {
    throw full;
  });
  const first = keepDraft(shelf, tab, about, kept("1:2"));
  const second = keepDraft(shelf, tab, about, kept("1:25"));
  await expect(first).rejects.toThrow("Typed text not kept");
  await second;
  expect(await readDrafts(shelf)).toMatchObject([{ text: "1:25" }]);
});
