import "fake-indexeddb/auto";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { draftKey, idMaker, openShelf, readDraft, readDrafts, type Shelf } from "#db";
import { draftsSettled, keepDraft } from "../../../src/live/keepDraft.ts";
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

/** A tab whose id is not known yet, so that nothing of it is on the disk. */
function aTabToCome() {
  let come: (id: string) => void = () => undefined;
  const id = new Promise<string>((resolve) => {
    come = resolve;
  });
  return { id, come: () => come("tab") };
}

test("twelve states of one draft are on their way at most, and of those that wait only the newest", async () => {
  const put = vi.spyOn(IDBObjectStore.prototype, "put");
  const { id, come } = aTabToCome();
  const all = Array.from({ length: 20 }, (_, at) => keepDraft(shelf, id, about, kept(String(at))));
  come();
  await Promise.all(all);
  expect(put.mock.calls.map(([row]) => (row as { text: string }).text)).toEqual([
    ...Array.from({ length: 12 }, (_, at) => String(at)),
    "19",
  ]);
});

test("the thirteenth alone waits, and is kept as it was typed", async () => {
  const { id, come } = aTabToCome();
  const all = Array.from({ length: 13 }, (_, at) => keepDraft(shelf, id, about, kept(String(at))));
  come();
  await Promise.all(all);
  expect(await readDrafts(shelf)).toMatchObject([{ text: "12" }]);
});

test("what is typed is settled once all of it has arrived, kept or not, and nothing else is waited for", async () => {
  const { id, come } = aTabToCome();
  const keeping = Array.from({ length: 13 }, (_, at) => keepDraft(shelf, id, "book/lap 1", kept(String(at))));
  let isSettled = false;
  const settled = draftsSettled("book/lap ").then(() => {
    isSettled = true;
  });
  await draftsSettled("book/entry ");
  await draftsSettled("1");
  expect(isSettled).toBe(false);
  come();
  await settled;
  expect(await readDrafts(shelf)).toMatchObject([{ text: "12" }]);
  await Promise.all(keeping);
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementationOnce(() => {
    throw new DOMException("no space", "QuotaExceededError");
  });
  const failing = keepDraft(shelf, tab, "book/lap 1", kept("x"));
  await Promise.all([draftsSettled("book/lap "), expect(failing).rejects.toThrow("Typed text not kept")]);
});
