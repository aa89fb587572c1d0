import fc from "fast-check";
import { expect, test } from "vitest";
import { isReached, pageOf, standingOf, type TargetPoint } from "#combo";
import { aPage, aTarget, march, noon } from "./someTargets.ts";

const whole = pageOf([], 0);
const point = (day: number, is: "there" | "away" | "between"): TargetPoint => ({
  date: march(day),
  at: noon(day),
  isThere: is === "there",
  isAway: is === "away",
});

test("a target counts as reached from the session on that came there, and stays so", () => {
  const points = [point(6, "between"), point(8, "there"), point(9, "between"), point(12, "between")];
  const standing = standingOf(aTarget(5), points, whole, march(14));
  expect(standing).toEqual({ kind: "reached", on: march(8) });
  expect(isReached(standing)).toBe(true);
});

test("a usual lap is lost only when it is very likely above again, and told so", () => {
  const points = [point(8, "there"), point(9, "away")];
  const target = aTarget(5, { by: march(20) });
  expect(standingOf(target, points, whole, march(14))).toEqual({
    kind: "open",
    daysLeft: 6,
    lostOn: march(9),
  });
  expect(standingOf(target, [...points, point(10, "there")], whole, march(14))).toEqual({
    kind: "reached",
    on: march(10),
  });
});

test("what stood there before it was set is told as such", () => {
  expect(standingOf(aTarget(5), [point(4, "there")], whole, march(6))).toEqual({
    kind: "reached before",
    on: march(4),
  });
  expect(isReached({ kind: "reached before", on: march(4) })).toBe(true);
  expect(standingOf(aTarget(5), [point(5, "there")], whole, march(6))).toMatchObject({ kind: "reached" });
});

test("when its date has passed it is missed, and a later session does not make it reached", () => {
  const target = aTarget(5, { by: march(10) });
  expect(standingOf(target, [point(9, "between")], whole, march(10))).toMatchObject({ daysLeft: 0 });
  expect(standingOf(target, [point(9, "between")], whole, march(11))).toEqual({
    kind: "missed",
    reachedOn: undefined,
  });
  const late = standingOf(target, [point(9, "between"), point(12, "there")], whole, march(13));
  expect(late).toEqual({ kind: "missed", reachedOn: march(12) });
  expect(isReached(late)).toBe(false);
});

test("reached on its very date it is reached in time", () => {
  const target = aTarget(5, { by: march(10) });
  expect(standingOf(target, [point(10, "there")], whole, march(13))).toEqual({
    kind: "reached",
    on: march(10),
  });
});

test("it is away again from the session on that lost it, and was there from the one that came there first", () => {
  const target = aTarget(5);
  const there = [point(6, "away"), point(8, "there"), point(9, "there")];
  expect(standingOf(target, there, whole, march(14))).toEqual({ kind: "reached", on: march(8) });
  expect(standingOf(target, [point(6, "away"), point(7, "between")], whole, march(14))).toEqual({
    kind: "open",
    daysLeft: undefined,
    lostOn: undefined,
  });
});

test("reached in time, it is not lost after its date", () => {
  const target = aTarget(5, { by: march(10) });
  expect(standingOf(target, [point(9, "there"), point(12, "away")], whole, march(13))).toEqual({
    kind: "reached",
    on: march(9),
  });
});

test("without a date it stays open", () => {
  expect(standingOf(aTarget(5), [], whole, march(13))).toEqual({
    kind: "open",
    daysLeft: undefined,
    lostOn: undefined,
  });
});

test("of an older page it neither stands nor falls", () => {
  const page = pageOf([aPage(10)], noon(11));
  expect(standingOf(aTarget(5), [point(12, "there")], page, march(13))).toEqual({ kind: "older page" });
});

test("a best once reached is reached for good, whatever comes after", () => {
  const kinds = fc.constantFrom("there" as const, "between" as const);
  fc.assert(
    fc.property(fc.array(kinds, { minLength: 1, maxLength: 20 }), (sessions) => {
      const points = sessions.map((is, index) => point(6 + index, is));
      const standing = standingOf(aTarget(5), points, whole, march(31));
      expect(isReached(standing)).toBe(sessions.includes("there"));
    }),
  );
});

test("reached before its date and lost again by then, it is missed, and when it was lost is known", () => {
  const target = aTarget(5, { by: march(10) });
  const points = [point(6, "there"), point(8, "away")];
  expect(standingOf(target, points, whole, march(11))).toEqual({
    kind: "missed",
    lostOn: march(8),
    reachedOn: undefined,
  });
});
