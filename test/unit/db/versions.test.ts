import { expect, test } from "vitest";
import { believedUpTo } from "#db";
import type { Stamped } from "#domain";
import { deletionAsSaid, hasSeen, isAhead, putRight, stays, withStamps } from "../../../src/db/versions.ts";

interface Noted extends Stamped {
  readonly note?: string;
}
const version = (fields: Partial<Noted>): Noted => ({ id: "a", createdAt: 1, updatedAt: 5, ...fields });

/** The version that stays, which must be the same whichever of the two comes first. */
function staying(a: Noted, b: Noted): Noted {
  const kept = stays(a, b);
  expect(stays(b, a)).toEqual(kept);
  return kept;
}

test("of two versions the one changed later stays", () => {
  const late = version({ updatedAt: 6 });
  expect(staying(version({ note: "x" }), late)).toBe(late);
});

test("a version whose writer had the other before them stays, however late a clock stamped that one", () => {
  const early = version({ had: [3, 9] });
  expect(staying(early, version({ updatedAt: 9 }))).toBe(early);
});

test("a version whose stamp is disproved goes, also where the one that stays is stamped earlier", () => {
  const knowing = version({ disproved: [9] });
  expect(staying(knowing, version({ updatedAt: 9 }))).toBe(knowing);
});

test("where each has seen the other, the later stamp stays", () => {
  const late = version({ updatedAt: 9, had: [5] });
  expect(staying(version({ had: [9] }), late)).toBe(late);
});

test("at one stamp the version that was never put right stays, and remembers the false stamp", () => {
  const right = version({ had: [3] });
  const mended = version({ had: [3, 9], note: "zzz", deletedAt: 5 });
  expect(staying(right, mended)).toEqual({ ...right, disproved: [9] });
});

test("of two that were put right, the one whose false stamp was the later stays", () => {
  const [earlier, later] = [version({ had: [8], deletedAt: 5 }), version({ had: [7, 9], note: "x" })];
  expect(staying(earlier, later)).toEqual({ ...later, disproved: [8] });
});

test("at one stamp the deleted version stays, then the one whose text is the greater", () => {
  const deleted = version({ deletedAt: 5 });
  expect(staying(deleted, version({ note: "zzz" }))).toBe(deleted);
  const b = version({ note: "b" });
  expect(staying(version({ note: "a" }), b)).toBe(b);
  const later = version({ deletedAt: 4, note: "b" });
  expect(staying(version({ deletedAt: 4, note: "a" }), later)).toBe(later);
});

test("what one has learnt of false stamps does not decide which text is the greater, and is not lost", () => {
  // "disproved" would come before "note" in the text.
  expect(staying(version({ note: "b" }), version({ note: "a", disproved: [9] }))).toEqual(
    version({ note: "b", disproved: [9] }),
  );
});

test("the version that stays remembers, in order and once, every false stamp under which the other could come again", () => {
  const kept = staying(
    version({ updatedAt: 6, had: [7], disproved: [20] }),
    version({ had: [12, 7, 3], disproved: [20, 11, 12, 2] }),
  );
  expect(kept).toEqual(version({ updatedAt: 6, had: [7], disproved: [11, 12, 20] }));
});

test("a version with nothing to learn from the other stays as it is", () => {
  const late = version({ updatedAt: 9, disproved: [20] });
  expect(staying(late, version({ had: [4], disproved: [20] }))).toBe(late);
});

test("a version is overtaken by one that had it, or has its stamp disproved, and by no other", () => {
  const seen = version({ updatedAt: 9 });
  expect(hasSeen(version({ had: [9] }), seen)).toBe(true);
  expect(hasSeen(version({ disproved: [8, 9] }), seen)).toBe(true);
  expect(hasSeen(version({ had: [8], disproved: [7] }), seen)).toBe(false);
  expect(hasSeen(version({ updatedAt: 9 }), seen)).toBe(false);
});

test("stamps of two lists stand once each, in the order of time", () => {
  expect(withStamps([30, 4], [200, 4, 5])).toEqual([4, 5, 30, 200]);
});

test("a stamp is believed up to a day ahead of the clock", () => {
  expect(believedUpTo(1000)).toBe(86_401_000);
});

test("a row is ahead where it was changed, or deleted, later than is believed", () => {
  expect(isAhead(version({ updatedAt: 10 }), 10)).toBe(false);
  expect(isAhead(version({ updatedAt: 11 }), 10)).toBe(true);
  expect(isAhead(version({ deletedAt: 11 }), 10)).toBe(true);
  expect(isAhead(version({ deletedAt: 10, had: [99] }), 10)).toBe(false);
});

test("a row that is not ahead is given as it is", () => {
  const row = version({ updatedAt: 10, deletedAt: 10 });
  expect(putRight(row, 10)).toBe(row);
});

test("a row ahead is stamped just behind the newest stamp it had that is believed, and remembers the false one", () => {
  expect(putRight(version({ createdAt: 4, updatedAt: 99, had: [6, 50, 20] }), 30)).toEqual(
    version({ createdAt: 4, updatedAt: 21, had: [6, 20, 50, 99] }),
  );
  expect(putRight(version({ createdAt: 4, updatedAt: 99 }), 30)).toEqual(
    version({ createdAt: 4, updatedAt: 5, had: [99] }),
  );
  expect(putRight(version({ createdAt: 4, updatedAt: 99, had: [30] }), 30).updatedAt).toBe(31);
  expect(putRight(version({ createdAt: 30, updatedAt: 99, had: [20] }), 30).updatedAt).toBe(31);
});

test("a row that was made ahead too is stamped as if it were of the day from which stamps are kept", () => {
  // 28 November 2026, in UTC.
  const kept = Date.UTC(2026, 10, 28);
  const upTo = Date.UTC(2027, 0, 1);
  const late = Date.UTC(2036, 0, 1);
  expect(putRight(version({ createdAt: late, updatedAt: late }), upTo)).toEqual(
    version({ createdAt: late, updatedAt: kept + 1, had: [late] }),
  );
});

test("a deletion ahead is put right with its row, and alone where only it is ahead", () => {
  expect(putRight(version({ createdAt: 4, updatedAt: 99, deletedAt: 99 }), 30)).toMatchObject({
    updatedAt: 5,
    deletedAt: 5,
  });
  expect(putRight(version({ updatedAt: 9, deletedAt: 99 }), 30)).toEqual(
    version({ updatedAt: 9, deletedAt: 9 }),
  );
  expect(putRight(version({ createdAt: 4, updatedAt: 99, deletedAt: 3 }), 30).deletedAt).toBe(3);
  expect(putRight(version({ createdAt: 4, updatedAt: 99 }), 30)).not.toHaveProperty("deletedAt");
});

test("a deletion is told as the clock said it, also where that was put right; without one there is none", () => {
  expect(deletionAsSaid(version({ had: [99] }))).toBeUndefined();
  expect(deletionAsSaid(version({ deletedAt: 5 }))).toBe(5);
  expect(deletionAsSaid(version({ deletedAt: 5, had: [3, 99, 50] }))).toBe(99);
  expect(deletionAsSaid(version({ updatedAt: 50, deletedAt: 5, had: [50] }))).toBe(5);
});
