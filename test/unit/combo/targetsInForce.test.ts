import { expect, test } from "vitest";
import { inOrder, isInForce, pageOf, targetsInForce } from "#combo";
import type { Target } from "#domain";
import { aPage, aTarget, march, noon } from "./someTargets.ts";

const whole = pageOf([], 0);
const ids = (targets: readonly Target[]) => targets.map(({ id }) => id);
const days = (from: number, to = from) => ({ from: march(from), to: march(to), at: noon(from) });

test("a target rules from the day it is set to its date, both counted", () => {
  const target = aTarget(5, { by: march(10) });
  expect([4, 5, 10, 11].map((day) => isInForce(target, whole, days(day)))).toEqual([
    false,
    true,
    true,
    false,
  ]);
  expect(isInForce(target, whole, days(1, 5))).toBe(true);
  expect(isInForce(aTarget(5), whole, days(28))).toBe(true);
});

test("a target archived at the very instant the days begin rules none of them", () => {
  const archived = (archivedAt: number) => isInForce(aTarget(5, { archivedAt }), whole, days(8));
  expect(archived(noon(8))).toBe(false);
  expect(archived(noon(8) + 1)).toBe(true);
});

test("targets in force come with the nearest date first, one without a date last, of one date the one set first", () => {
  const targets = [
    aTarget(1, { id: "no date" }),
    aTarget(4, { id: "late", by: march(28) }),
    aTarget(3, { id: "near, set last", by: march(20) }),
    aTarget(2, { id: "near", by: march(20) }),
    aTarget(1, { id: "gone by", by: march(9) }),
  ];
  const sorted = ["near", "near, set last", "late", "no date"];
  expect(ids(targetsInForce(targets, whole, days(10)))).toEqual(sorted);
  expect(ids(targetsInForce(targets.toReversed(), whole, days(10)))).toEqual(sorted);
});

test("a driver sees first what is to be reached, then dates gone by, the newest first, then older pages", () => {
  const page = pageOf([aPage(5)], noon(12));
  const targets = [
    aTarget(1, { id: "older page", by: march(20) }),
    aTarget(2, { id: "older page, no date" }),
    aTarget(6, { id: "long gone", by: march(8) }),
    aTarget(7, { id: "just gone", by: march(11) }),
    aTarget(9, { id: "no date, set last" }),
    aTarget(8, { id: "no date" }),
    aTarget(8, { id: "late", by: march(28) }),
    aTarget(7, { id: "today", by: march(12) }),
  ];
  const sorted = [
    "today",
    "late",
    "no date",
    "no date, set last",
    "just gone",
    "long gone",
    "older page",
    "older page, no date",
  ];
  expect(ids(inOrder(targets, page, march(12)))).toEqual(sorted);
  expect(ids(inOrder(targets.toReversed(), page, march(12)))).toEqual(sorted);
});
