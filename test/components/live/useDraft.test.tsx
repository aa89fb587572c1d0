import { act, waitFor } from "@testing-library/react";
import { afterEach, expect, it, vi } from "vitest";
import { draftKey, readDrafts, type Shelf, writeDraft } from "#db";
import { useDraft } from "#live";
import { hooksAt, said } from "../../support/hooksAt.tsx";

afterEach(() => vi.restoreAllMocks());

const blank = { text: "", lap: 1 };
const drafted = (key: string) => useDraft(key, blank);
const texts = async (shelf: Shelf) => (await readDrafts(shelf)).map(({ text }) => text);

/** What a tab that is no longer there has typed about something. */
async function leave(page: Awaited<ReturnType<typeof hooksAt>>, tab: string, text: string, of = "entry s") {
  const { shelf, book, clock } = page;
  const key = draftKey(`${book.name}/${of}`, tab);
  await writeDraft(shelf, { key, tab, text, state: { text, lap: 2 }, at: clock.now() });
  return key;
}

it("stands empty until something is typed, which is then kept under its tab with its words and its time", async () => {
  const { draw, shelf, book, surroundings, clock } = await hooksAt();
  const { result } = draw(drafted, "entry s");
  expect(result.current).toMatchObject({ value: blank, isRead: false, isEmpty: true, left: [] });
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current).toMatchObject({ value: blank, isEmpty: true, left: [] });
  act(() => result.current.set({ text: "1:24", lap: 3 }));
  expect(result.current).toMatchObject({ value: { text: "1:24", lap: 3 }, isEmpty: false, isRead: true });
  const tab = await surroundings.tab.id;
  await waitFor(async () =>
    expect(await readDrafts(shelf)).toEqual([
      {
        key: draftKey(`${book.name}/entry s`, tab),
        tab,
        text: "1:24",
        state: { text: "1:24", lap: 3 },
        at: clock.now(),
      },
    ]),
  );
});

it("is found again after a reload, and is forgotten for good", async () => {
  const { draw, shelf } = await hooksAt();
  const first = draw(drafted, "entry s");
  act(() => first.result.current.set({ text: "1:24", lap: 3 }));
  await waitFor(async () => expect(await texts(shelf)).toEqual(["1:24"]));
  first.unmount();
  const second = draw(drafted, "entry s");
  await waitFor(() => expect(second.result.current.isRead).toBe(true));
  expect(second.result.current).toMatchObject({ value: { text: "1:24", lap: 3 }, isEmpty: false });
  act(() => second.result.current.set(undefined));
  expect(second.result.current).toMatchObject({ value: blank, isEmpty: true });
  await waitFor(async () => expect(await texts(shelf)).toEqual([]));
});

it("what is typed before the old draft has been read wins over it", async () => {
  const page = await hooksAt();
  await leave(page, await page.surroundings.tab.id, "old");
  const { result } = page.draw(drafted, "entry s");
  act(() => result.current.set({ text: "new", lap: 1 }));
  expect(result.current).toMatchObject({ value: { text: "new" }, isRead: false });
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current.value.text).toBe("new");
  await waitFor(async () => expect(await texts(page.shelf)).toEqual(["new"]));
});

it("what was left is offered, not taken, once something is typed here, however early", async () => {
  const page = await hooksAt();
  await leave(page, "gone", "1:24");
  const { result } = page.draw(drafted, "entry s");
  act(() => result.current.set({ text: "new", lap: 1 }));
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current.value.text).toBe("new");
  expect(result.current.left.map(({ text }) => text)).toEqual(["1:24"]);
  await waitFor(async () => expect((await texts(page.shelf)).sort()).toEqual(["1:24", "new"]));
});

it("a page that is gone before its old draft has been read says nothing of it", async () => {
  const page = await hooksAt();
  let fail: (error: unknown) => void = () => undefined;
  const reading = new Promise((_, reject) => {
    fail = reject;
  });
  vi.spyOn(page.shelf.drafts, "where").mockReturnValue({
    startsWith: () => ({ toArray: () => reading }),
  } as never);
  const { unmount } = page.draw(drafted, "entry s");
  await act(async () => undefined);
  unmount();
  fail(new DOMException("broken", "UnknownError"));
  await act(async () => undefined);
  expect(said()).toEqual([]);
});

it("another thing that is drafted has a text of its own", async () => {
  const { draw, shelf } = await hooksAt();
  const { result, rerender } = draw(drafted, "entry a" as string);
  await waitFor(() => expect(result.current.isRead).toBe(true));
  act(() => result.current.set({ text: "of a", lap: 1 }));
  rerender("entry b");
  expect(result.current).toMatchObject({ value: blank, isRead: false, isEmpty: true, left: [] });
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current.value).toEqual(blank);
  act(() => result.current.set({ text: "of b", lap: 1 }));
  await waitFor(async () => expect(await texts(shelf)).toEqual(["of a", "of b"]));
  rerender("entry a");
  await waitFor(() => expect(result.current.value.text).toBe("of a"));
});

it("what a tab that is gone left becomes this tab's, where it is the only one", async () => {
  const page = await hooksAt();
  await leave(page, "gone", "1:24");
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current).toMatchObject({ value: { text: "1:24", lap: 2 }, isEmpty: false, left: [] });
});

it("what two tabs left is offered with its words and when it was typed; what is taken up is this tab's from then on", async () => {
  const page = await hooksAt();
  const [one] = [await leave(page, "gone", "1:24"), await leave(page, "gone too", "1:25")];
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.left).toHaveLength(2));
  const [first, second] = result.current.left;
  // 18:00 UTC is 19:00 on the wall of Berlin in November.
  expect(first).toMatchObject({
    key: one,
    text: "1:24",
    state: { text: "1:24" },
    when: "Wednesday 25 November, 19:00",
  });
  expect(result.current.isEmpty).toBe(true);
  act(() => first && result.current.takeUp(first));
  expect(result.current.value).toEqual({ text: "1:24", lap: 2 });
  expect(result.current.left).toEqual([second]);
  const tab = await page.surroundings.tab.id;
  await waitFor(async () =>
    expect((await readDrafts(page.shelf)).map((row) => [row.tab, row.text]).sort()).toEqual(
      [
        [tab, "1:24"],
        ["gone too", "1:25"],
      ].sort(),
    ),
  );
  act(() => second && result.current.settleLeft(second));
  expect(result.current.left).toEqual([]);
  await waitFor(async () => expect(await texts(page.shelf)).toEqual(["1:24"]));
});

it("of what was left a rest can be kept, with its own words", async () => {
  const page = await hooksAt();
  const key = await leave(page, "gone", "1:24 1:25");
  await leave(page, "gone too", "other");
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.left).toHaveLength(2));
  const [first] = result.current.left;
  act(() => first && result.current.settleLeft(first, { text: "1:25", lap: 2 }));
  expect(result.current.left.map(({ text }) => text)).toEqual(["1:25", "other"]);
  await waitFor(async () =>
    expect(await page.shelf.drafts.get(key)).toMatchObject({
      text: "1:25",
      state: { text: "1:25", lap: 2 },
      tab: "gone",
    }),
  );
});

it("what an older version left without a time is offered without one", async () => {
  const page = await hooksAt();
  const key = `${page.book.name}/entry s`;
  await writeDraft(page.shelf, { key, text: "1:24", state: { text: "1:24", lap: 2 } });
  page.otherTab();
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.left).toHaveLength(1));
  expect(result.current.left[0]).toMatchObject({ text: "1:24", when: undefined });
});

it("what another tab holds is offered once that tab is closed and the driver looks at this page", async () => {
  const page = await hooksAt();
  const other = page.otherTab();
  const theirs = other.draw(drafted, "entry s");
  act(() => theirs.result.current.set({ text: "1:24", lap: 1 }));
  await waitFor(async () => expect(await texts(page.shelf)).toEqual(["1:24"]));
  theirs.unmount();
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.isRead).toBe(true));
  expect(result.current).toMatchObject({ isEmpty: true, left: [] });
  page.living.delete(await other.page.surroundings.tab.id);
  act(() => void window.dispatchEvent(new Event("focus")));
  await waitFor(() => expect(result.current.left.map(({ text }) => text)).toEqual(["1:24"]));
  // It is offered, not taken: the driver is at work here.
  expect(result.current.isEmpty).toBe(true);
});

it("a text that cannot be read or kept is said once, not at every key", async () => {
  const page = await hooksAt();
  vi.spyOn(page.shelf.drafts, "where").mockImplementation(() => {
    throw new DOMException("broken", "UnknownError");
  });
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(said()).toHaveLength(1));
  expect(said()[0]).toMatchObject({ kind: "fault", text: expect.stringMatching(/^Typed text not read: /) });
  expect(result.current).toMatchObject({ value: blank, isRead: true, left: [] });
  vi.restoreAllMocks();
  vi.spyOn(page.shelf.drafts, "put").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  for (const text of ["1", "1:", "1:2"]) act(() => result.current.set({ text, lap: 1 }));
  await waitFor(() => expect(said()).toHaveLength(2));
  expect(said()[1]).toMatchObject({
    kind: "fault",
    text: expect.stringMatching(/^Typed text not kept: .*no space/),
  });
  expect(result.current.value.text).toBe("1:2");
  await act(async () => undefined);
  expect(said()).toHaveLength(2);
});

it("what is taken up and could not be kept here stays where it was left", async () => {
  const page = await hooksAt();
  await leave(page, "gone", "1:24");
  await leave(page, "gone too", "1:25");
  const { result } = page.draw(drafted, "entry s");
  await waitFor(() => expect(result.current.left).toHaveLength(2));
  const [first] = result.current.left;
  const put = vi.spyOn(page.shelf.drafts, "put").mockImplementation(() => {
    throw new DOMException("full", "QuotaExceededError");
  });
  act(() => first && result.current.takeUp(first));
  await waitFor(() => expect(said()).toHaveLength(1));
  put.mockRestore();
  await act(async () => undefined);
  expect(await texts(page.shelf)).toEqual(["1:24", "1:25"]);
});
