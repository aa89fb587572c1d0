import "fake-indexeddb/auto";

import { beforeEach, expect, test } from "vitest";
import {
  draftAbout,
  draftKey,
  draftsAbout,
  draftsFrom,
  forgetDraft,
  idMaker,
  moveDrafts,
  openShelf,
  readDraft,
  readDrafts,
  type Shelf,
  takeOverDraft,
  writeDraft,
} from "#db";

const clock = () => 1_770_000_000_000;
let shelf: Shelf;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  shelf = await openShelf({ clock, newId: idMaker(clock), name: `drafts-${opened}` });
});
const keys = async () => (await readDrafts(shelf)).map(({ key }) => key);

test("a key says what is typed and in which tab; from before tabs were told apart, only what", () => {
  expect(draftKey("own/entry 1", "tab")).toBe("own/entry 1|tab");
  expect(draftAbout("own/entry 1|tab")).toBe("own/entry 1");
  expect(draftAbout("own/a|b|tab")).toBe("own/a|b");
  expect(draftAbout("own/entry 1")).toBe("own/entry 1");
  expect(draftAbout("|tab")).toBe("");
});

test("what is typed about one thing is found in every tab, and about no other thing whose key begins so", async () => {
  for (const key of ["own/lap 1|a", "own/lap 1|b", "own/lap 1", "own/lap 12|a", "own/note|a"])
    await writeDraft(shelf, { key, text: key });
  expect((await draftsAbout(shelf, "own/lap 1")).map(({ key }) => key)).toEqual([
    "own/lap 1",
    "own/lap 1|a",
    "own/lap 1|b",
  ]);
  expect((await draftsFrom(shelf, "own/lap ")).map(({ text }) => text)).toEqual([
    "own/lap 1",
    "own/lap 12|a",
    "own/lap 1|a",
    "own/lap 1|b",
  ]);
});

test("what a tab that is gone left behind is taken over as it was, and is then this tab's alone", async () => {
  const left = { key: "own/lap 1|gone", text: "1:23", tab: "gone", at: 5, state: { corner: 5 } };
  await writeDraft(shelf, left);
  const mine = { ...left, key: "own/lap 1|mine", tab: "mine" };
  expect(await takeOverDraft(shelf, left, "mine")).toEqual(mine);
  expect(await readDrafts(shelf)).toEqual([mine]);
});

test("what another tab was quicker to take over is not taken over again", async () => {
  const left = { key: "own/lap 1|gone", text: "1:23", tab: "gone" };
  expect(await takeOverDraft(shelf, left, "mine")).toBeUndefined();
  expect(await keys()).toEqual([]);
});

test("what was left behind stays where it is when this tab has typed about the same thing", async () => {
  const left = { key: "own/lap 1|gone", text: "1:23", tab: "gone" };
  const own = { key: "own/lap 1|mine", text: "1:25", tab: "mine" };
  await writeDraft(shelf, left);
  await writeDraft(shelf, own);
  expect(await takeOverDraft(shelf, left, "mine")).toBeUndefined();
  expect(await readDrafts(shelf)).toEqual([left, own]);
});

test("half-typed text of one logbook alone moves to another, each under the same thing", async () => {
  for (const key of ["demo/start|a", "demo/lap 1|b", "demonstration/start|a", "own/note|a"])
    await writeDraft(shelf, { key, text: key, tab: key.slice(-1) });
  await moveDrafts(shelf, "demo", "own");
  expect(await keys()).toEqual(["demonstration/start|a", "own/lap 1|b", "own/note|a", "own/start|a"]);
  expect(await readDraft(shelf, "own/lap 1|b")).toEqual({
    key: "own/lap 1|b",
    text: "demo/lap 1|b",
    tab: "b",
  });
});

test("a text is kept in place of the one before, and forgotten when it is stored", async () => {
  await writeDraft(shelf, { key: "own/lap 1|a", text: "1:2" });
  await writeDraft(shelf, { key: "own/lap 1|a", text: "1:23" });
  await writeDraft(shelf, { key: "own/lap 2|a", text: "1:24" });
  expect(await readDraft(shelf, "own/lap 1|a")).toEqual({ key: "own/lap 1|a", text: "1:23" });
  await forgetDraft(shelf, "own/lap 1|a");
  expect(await keys()).toEqual(["own/lap 2|a"]);
});

const failing: readonly (readonly [string, () => Promise<unknown>])[] = [
  ["Typed text not kept", () => writeDraft(shelf, { key: "a", text: "" })],
  ["Typed text not forgotten", () => forgetDraft(shelf, "a")],
  ["Typed text not taken over", () => takeOverDraft(shelf, { key: "a", text: "" }, "mine")],
  ["Half-typed text not moved", () => moveDrafts(shelf, "demo", "own")],
];
for (const [words, change] of failing)
  test(`${words} is what is said when the list of logbooks was closed by another tab`, async () => {
    shelf.database.close({ disableAutoOpen: true });
    await expect(change()).rejects.toMatchObject({
      code: "closed",
      message: `${words}: the logbook is closed in this tab. Reload the page; typed text is kept.`,
    });
  });
