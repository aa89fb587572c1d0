import fc from "fast-check";
import { expect, test } from "vitest";
import type { CornerReview, GapScale } from "#domain";
import {
  draftOf,
  draftWords,
  inOtherUnit,
  nothingSeen,
  type ReviewDraft,
  readReview,
} from "../../../../../src/screens/corners/review/reviewDraft.ts";

const inCars: GapScale = { unit: "cars", carWidth: 1.8 };
const stored: CornerReview = {
  id: "r",
  createdAt: 1,
  updatedAt: 1,
  comboId: "c",
  on: "2026-03-10",
  corners: [
    { number: 3, exit: 0.1 + 0.2, note: "two\nlines" },
    { number: 5, entry: 0.9, braking: "late" },
  ],
};
const read = (draft: ReviewDraft, chosen: readonly number[], before?: CornerReview) =>
  readReview(draft, { chosen, scale: inCars, known: [{ number: 3 }, { number: 5, bend: "slow" }], before });

test("lines are read in lap order, skipped corners are left out, and the layout learns what it did not know", () => {
  const draft: ReviewDraft = {
    told: [7, 9],
    lines: { 7: "h", 3: "? . bl", 5: "" },
    kinds: { 7: { bend: "hairpin", after: "long" }, 5: { after: "short" }, 3: {} },
  };
  expect(read(draft, [3, 5, 7])).toEqual({
    ok: true,
    value: {
      corners: [
        { number: 3, apex: 0, braking: "late" },
        { number: 7, entry: 0.9 },
      ],
      learnt: [{ number: 5, after: "short" }, { number: 7, bend: "hairpin", after: "long" }, { number: 9 }],
    },
  });
});

test("a corner of an old review that the layout no longer has does not come back into it", () => {
  const draft = draftOf({ ...stored, corners: [{ number: 8, entry: 1 }] }, inCars);
  expect(read(draft, [8])).toMatchObject({ value: { corners: [{ number: 8 }], learnt: [] } });
  expect(read({ ...draft, kinds: { 8: { bend: "slow" } } }, [8])).toMatchObject({
    value: { learnt: [{ number: 8, bend: "slow" }] },
  });
});

test("a line that cannot be read is named with its corner, and so is a review without anything", () => {
  expect(read({ ...nothingSeen, lines: { 5: "h late" } }, [3, 5])).toMatchObject({
    problems: { lines: { wrong: "Corner 5: “late” is not understood." } },
  });
  expect(read(nothingSeen, [3, 5])).toMatchObject({
    problems: { lines: { wrong: "Nothing was noted at any corner" } },
  });
});

test("a corner that was not touched is stored as it was, to the last digit; a changed one keeps what a newer app wrote", () => {
  const newer = { ...stored, corners: [...stored.corners, { number: 9, apex: 1, seenFrom: "above" }] };
  const draft = draftOf(newer, inCars);
  expect(read(draft, [3, 5, 9], newer)).toMatchObject({ value: { corners: newer.corners } });
  const changed = { ...draft, lines: { ...draft.lines, 9: "? h" } };
  expect(read(changed, [3, 5, 9], newer)).toMatchObject({
    value: { corners: [...stored.corners, { number: 9, apex: 0.9, seenFrom: "above" }] },
  });
});

test("an opened review shows the table of its corners first, and a draft is known by what is typed in it", () => {
  expect(draftOf(stored, inCars)).toMatchObject({ at: "all", chosen: [3, 5], lap: undefined });
  expect(draftWords(draftOf({ ...stored, corners: [{ number: 5, entry: 0.9 }] }, inCars))).toBe(
    "corner 5: h",
  );
  expect(draftWords(nothingSeen)).toBe("");
});

test("in the other unit lines mean the same, and what cannot be read stays", () => {
  const gap = fc.integer({ min: -100, max: 600 }).map((n) => String(n / 100));
  fc.assert(
    fc.property(gap, gap, (entry, exit) => {
      const lines = { 3: `${entry} . ${exit} bl`, 5: "h x" };
      const metres: GapScale = { ...inCars, unit: "metres" };
      const other = inOtherUnit(lines, inCars, "metres");
      const corners = (of: ReviewDraft["lines"], scale: GapScale) =>
        readReview({ ...nothingSeen, lines: of }, { chosen: [3], scale, known: [] });
      expect(corners(other, metres)).toEqual(corners(lines, inCars));
      expect(other[5]).toBe("h x");
    }),
  );
});
