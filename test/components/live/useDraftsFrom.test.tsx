import { act, waitFor } from "@testing-library/react";
import { expect, it, vi } from "vitest";
import { draftKey, readDrafts, writeDraft } from "#db";
import { useDraftsFrom } from "#live";
import { hooksAt, said } from "../../support/hooksAt.tsx";

/** A page with edits of two laps, one of this tab and one of a tab that is gone, and another logbook's beside. */
async function halfEdited() {
  const page = await hooksAt();
  const { shelf, book, clock } = page;
  const tab = await page.surroundings.tab.id;
  const type = (of: string, by: string, text: string, at?: number) =>
    writeDraft(shelf, {
      key: draftKey(of, by),
      tab: by,
      text,
      state: { text },
      ...(at !== undefined && { at }),
    });
  await type(`${book.name}/lap a`, tab, "1:24.1", clock.now());
  await type(`${book.name}/lap b`, "gone", "1:24.2");
  await type("another-book/lap c", "gone", "1:24.3");
  return { ...page, tab, type };
}

const edits = (about: readonly unknown[]) => useDraftsFrom("lap ", about);

it("lists what is half typed about each lap: what of, its words, when, and whether it is this tab's", async () => {
  const { draw, book, tab } = await halfEdited();
  const { result } = draw(edits, []);
  expect(result.current.list).toEqual([]);
  await waitFor(() => expect(result.current.list).toHaveLength(2));
  expect(result.current.list).toMatchObject([
    {
      key: draftKey(`${book.name}/lap a`, tab),
      of: "a",
      text: "1:24.1",
      state: { text: "1:24.1" },
      when: "Wednesday 25 November, 19:00",
      isMine: true,
    },
    { of: "b", text: "1:24.2", when: undefined, isMine: false },
  ]);
});

it("what a tab that is gone left is taken over, or let go, and the list follows", async () => {
  const { draw, shelf, book, tab } = await halfEdited();
  const { result } = draw(edits, []);
  await waitFor(() => expect(result.current.list).toHaveLength(2));
  const left = result.current.list.find(({ isMine }) => !isMine);
  await act(async () => left && (await result.current.takeOver(left)));
  await waitFor(() => expect(result.current.list.map(({ isMine }) => isMine)).toEqual([true, true]));
  expect(await shelf.drafts.get(draftKey(`${book.name}/lap b`, tab))).toMatchObject({ tab, text: "1:24.2" });
  const [first] = result.current.list;
  await act(async () => first && (await result.current.letGo(first)));
  await waitFor(() => expect(result.current.list.map(({ of }) => of)).toEqual(["b"]));
  expect((await readDrafts(shelf)).map(({ text }) => text).sort()).toEqual(["1:24.2", "1:24.3"]);
});

it("looks again when it is asked to, when what it is about changes, and when the driver comes back to the page", async () => {
  const { draw, type, book } = await halfEdited();
  const { result, rerender } = draw(edits, ["before"]);
  await waitFor(() => expect(result.current.list).toHaveLength(2));
  await type(`${book.name}/lap d`, "gone", "1:24.4");
  await act(async () => undefined);
  expect(result.current.list).toHaveLength(2);
  act(() => result.current.lookAgain());
  await waitFor(() => expect(result.current.list).toHaveLength(3));
  await type(`${book.name}/lap e`, "gone", "1:24.5");
  rerender(["after"]);
  await waitFor(() => expect(result.current.list).toHaveLength(4));
  await type(`${book.name}/lap f`, "gone", "1:24.6");
  act(() => void document.dispatchEvent(new Event("visibilitychange")));
  await waitFor(() => expect(result.current.list).toHaveLength(5));
});

it("what cannot be let go is said, and stays in the list", async () => {
  const { draw, shelf } = await halfEdited();
  const { result } = draw(edits, []);
  await waitFor(() => expect(result.current.list).toHaveLength(2));
  const broken = vi.spyOn(shelf.drafts, "delete").mockImplementation(() => {
    throw new DOMException("broken", "UnknownError");
  });
  const [first] = result.current.list;
  await act(async () => first && (await result.current.letGo(first)));
  expect(said()).toMatchObject([{ kind: "fault" }]);
  broken.mockRestore();
  expect(result.current.list).toHaveLength(2);
});

it("a shelf that can no longer be read leaves the list as it was", async () => {
  const { draw, shelf } = await halfEdited();
  const { result } = draw(edits, []);
  await waitFor(() => expect(result.current.list).toHaveLength(2));
  shelf.close();
  await act(async () => result.current.lookAgain());
  expect(result.current.list).toHaveLength(2);
  expect(said()).toEqual([]);
});
