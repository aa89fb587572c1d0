import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import {
  addCornerReview,
  combosWithNames,
  cornerReviewsOfCombo,
  deleteCornerReview,
  editCornerReview,
  editLayout,
  undoChange,
} from "#db";
import { anOpenSession } from "../../../support/aLogbook.ts";

async function aLayout() {
  const { book, comboId } = await anOpenSession();
  const layoutOf = async () => {
    const found = (await combosWithNames(book))[0]?.layout;
    if (found === undefined) throw new Error("no layout");
    return found;
  };
  const { id: layoutId } = await layoutOf();
  const corners = async () => (await layoutOf()).corners;
  const reviews = async () => (await cornerReviewsOfCombo(book, comboId)).map((review) => review.corners);
  return { book, comboId, layoutId, corners, reviews };
}

test("a review and what it said of the layout's corners are one change, taken back as one", async () => {
  const { book, comboId, layoutId, corners, reviews } = await aLayout();
  const before = [
    { number: 3, name: "Church", radius: 40 },
    { number: 9, bend: "slow" as const },
  ];
  await editLayout(book, { layoutId, patch: { corners: before } });
  const seen = [{ number: 3, exit: 0.9 }];
  const change = await addCornerReview(
    book,
    { comboId, on: "2026-03-10", corners: seen },
    {
      layoutId,
      corners: [{ number: 5, bend: "hairpin", after: "long" }, { number: 3, after: "short" }, { number: 7 }],
    },
  );
  expect(change.what).toBe("Corner review added");
  expect(await reviews()).toEqual([seen]);
  expect(await corners()).toEqual([
    { number: 3, name: "Church", radius: 40, after: "short" },
    { number: 5, bend: "hairpin", after: "long" },
    { number: 7 },
    { number: 9, bend: "slow" },
  ]);
  const undone = await undoChange(book, change);
  expect(undone.what).toBe("Undone: Corner review added");
  expect(await reviews()).toEqual([]);
  expect(await corners()).toEqual(before);
  await undoChange(book, undone);
  expect(await reviews()).toEqual([seen]);
  expect((await corners()).map(({ number }) => number)).toEqual([3, 5, 7, 9]);
});

test("a review is changed with its layout and deleted, and says when it had been changed elsewhere", async () => {
  const { book, comboId, layoutId, corners, reviews } = await aLayout();
  const { id } = await addCornerReview(book, {
    comboId,
    on: "2026-03-10",
    corners: [{ number: 1, apex: 0 }],
  });
  const [expected] = await cornerReviewsOfCombo(book, comboId);
  if (expected === undefined) throw new Error("no review");
  const edit = (apex: number) =>
    editCornerReview(
      book,
      { id, patch: { corners: [{ number: 1, apex }] }, expected },
      { layoutId, corners: [{ number: 1, bend: "kink" }] },
    );
  expect((await edit(0.5)).what).toBe("Corner review changed");
  expect(await corners()).toEqual([{ number: 1, bend: "kink" }]);
  expect(await edit(0.7)).toMatchObject({ overwrote: ["corners"] });
  const gone = await deleteCornerReview(book, id);
  expect(await reviews()).toEqual([]);
  await undoChange(book, gone);
  expect(await reviews()).toEqual([[{ number: 1, apex: 0.7 }]]);
});

test("a layout that is gone refuses the review as well: nothing is half stored", async () => {
  const { book, comboId, reviews } = await aLayout();
  const row = { comboId, on: "2026-03-10", corners: [{ number: 1, apex: 0 }] };
  await expect(addCornerReview(book, row, { layoutId: "gone", corners: [{ number: 1 }] })).rejects.toThrow(
    /the layout is no longer there/,
  );
  expect(await reviews()).toEqual([]);
});
