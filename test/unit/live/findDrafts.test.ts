import "fake-indexeddb/auto";
import { afterEach, beforeEach, expect, test } from "vitest";
import { type Draft, draftKey, idMaker, openShelf, readDrafts, type Shelf, writeDraft } from "#db";
import { findDrafts, findDraftsFrom } from "../../../src/live/findDrafts.ts";
import { keepDraft } from "../../../src/live/keepDraft.ts";
import { fixedClock } from "../../support/fixedClock.ts";

const clock = fixedClock(Date.UTC(2026, 10, 28));
const about = "book/entry s";
let shelf: Shelf;
let opened = 0;
beforeEach(async () => {
  opened += 1;
  shelf = await openShelf({ clock: clock.now, newId: idMaker(clock.now), name: `found-drafts-${opened}` });
});
afterEach(() => shelf.close());

/** This tab, "me", among the tabs that are open. */
const tabAmong = (...others: string[]) => ({
  id: Promise.resolve("me"),
  living: async () => new Set(["me", ...others]),
});

/** Something that was typed in a tab; without one, by an older version of the app. */
async function typed(tab: string | undefined, text: string, of = about): Promise<Draft> {
  const row = { key: tab === undefined ? of : draftKey(of, tab), text, state: { text }, at: clock.now() };
  const draft = tab === undefined ? row : { ...row, tab };
  await writeDraft(shelf, draft);
  return draft;
}
const textOf = (draft: Draft | undefined) => draft?.text;
const keys = async () => (await readDrafts(shelf)).map(({ key }) => key).sort();
const may = () => true;

test("where nothing was typed nothing is found", async () => {
  expect(await findDrafts(shelf, tabAmong(), about, may)).toEqual({ mine: undefined, left: [] });
});

test("what this tab has typed is its own, and needs no look at other tabs", async () => {
  const draft = await typed("me", "1:24");
  const tab = { ...tabAmong(), living: () => Promise.reject(new Error("asked")) };
  expect(await findDrafts(shelf, tab, about, may)).toEqual({ mine: draft, left: [] });
});

test("what one tab left that is gone becomes this tab's at once, where this is the only one", async () => {
  await typed("gone", "1:24");
  const { mine, left } = await findDrafts(shelf, tabAmong(), about, may);
  expect(mine).toMatchObject({
    key: draftKey(about, "me"),
    tab: "me",
    text: "1:24",
    state: { text: "1:24" },
  });
  expect(left).toEqual([]);
  expect(await keys()).toEqual([draftKey(about, "me")]);
});

test("what an older version left, which knew no tabs, becomes this tab's as well", async () => {
  await typed(undefined, "1:24");
  expect(textOf((await findDrafts(shelf, tabAmong(), about, may)).mine)).toBe("1:24");
  expect(await keys()).toEqual([draftKey(about, "me")]);
});

test("it stays where it is, to be offered, while another tab is open", async () => {
  await typed("gone", "1:24");
  const { mine, left } = await findDrafts(shelf, tabAmong("other"), about, may);
  expect([mine, left.map(textOf)]).toEqual([undefined, ["1:24"]]);
  expect(await keys()).toEqual([draftKey(about, "gone")]);
});

test("it is offered where more than one was left, where this tab has typed, and where it may not be taken", async () => {
  await typed("gone", "1:24");
  expect((await findDrafts(shelf, tabAmong(), about, () => false)).left.map(textOf)).toEqual(["1:24"]);
  await typed("gone too", "1:25");
  const two = await findDrafts(shelf, tabAmong(), about, may);
  expect([two.mine, two.left.map(textOf)]).toEqual([undefined, ["1:24", "1:25"]]);
  const own = await typed("me", "1:26");
  const beside = await findDrafts(shelf, tabAmong(), about, may);
  expect([beside.mine, beside.left.map(textOf)]).toEqual([own, ["1:24", "1:25"]]);
});

test("one left beside what this tab has typed is offered, not taken", async () => {
  const own = await typed("me", "1:26");
  await typed("gone", "1:24");
  const { mine, left } = await findDrafts(shelf, tabAmong(), about, may);
  expect([mine, left.map(textOf)]).toEqual([own, ["1:24"]]);
});

test("what another open tab holds is neither taken nor offered", async () => {
  await typed("other", "1:24");
  expect(await findDrafts(shelf, tabAmong("other"), about, may)).toEqual({ mine: undefined, left: [] });
});

test("where another tab was quicker, what there is now is offered, and nothing more is taken", async () => {
  const row = await typed("gone", "1:24");
  // Between the look and the taking the row is gone, and another tab that is gone by then has left one.
  const mayTake = () => {
    void shelf.drafts.clear();
    const key = draftKey(about, "gone too");
    void shelf.drafts.put({ ...row, key, tab: "gone too", text: "1:25" });
    return true;
  };
  const { mine, left } = await findDrafts(shelf, tabAmong(), about, mayTake);
  expect([mine, left.map(textOf)]).toEqual([undefined, ["1:25"]]);
});

test("of several things what is mine and what was left is found, and nothing of an open tab", async () => {
  await typed("me", "mine", "book/lap 1");
  await typed("gone", "left", "book/lap 2");
  await typed("other", "open", "book/lap 3");
  await typed("gone", "elsewhere", "book/entry s");
  await typed("gone", "other book", "book2/lap 1");
  const found = await findDraftsFrom(shelf, tabAmong("other"), "book/lap ");
  expect(found.map(({ row, isMine }) => [row.text, isMine])).toEqual([
    ["mine", true],
    ["left", false],
  ]);
});

test("where all is of this tab, others are not asked for", async () => {
  await typed("me", "mine", "book/lap 1");
  const tab = { ...tabAmong(), living: () => Promise.reject(new Error("asked")) };
  expect(await findDraftsFrom(shelf, tab, "book/lap ")).toMatchObject([{ isMine: true }]);
});

test("what is on its way to the disk is waited for", async () => {
  const keeping = keepDraft(shelf, Promise.resolve("me"), "book/lap 1", { text: "on its way", state: {} });
  const found = await findDraftsFrom(shelf, tabAmong(), "book/lap ");
  expect(found.map(({ row }) => row.text)).toEqual(["on its way"]);
  await keeping;
});
