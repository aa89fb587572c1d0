import { expect, test } from "vitest";
import { isOnPage, onPage, pageOf, pageSpans, presentPage } from "#combo";
import { anEvening, aPage, march, noon } from "./someTargets.ts";

test("an instant belongs to the latest page that begins at it or before", () => {
  const pages = [aPage(20, { reason: "new tyre model" }), aPage(10)];
  expect(pageOf(pages, noon(10) - 1)).toEqual({ from: Number.NEGATIVE_INFINITY, to: noon(10) });
  expect(pageOf(pages, noon(10))).toMatchObject({ from: noon(10), to: noon(20) });
  expect(pageOf(pages, noon(25))).toMatchObject({ from: noon(20), page: { reason: "new tyre model" } });
  expect(pageOf([], 5)).toEqual({ from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY });
});

test("the present page is the latest that has begun; one turned under a clock ahead has not", () => {
  expect(presentPage([aPage(10), aPage(20)], march(25)).from).toBe(noon(20));
  expect(presentPage([aPage(10), aPage(20)], march(15)).from).toBe(noon(10));
  expect(presentPage([], march(15)).from).toBe(Number.NEGATIVE_INFINITY);
});

test("the sessions of a page are those that begin on it", () => {
  const sessions = [9, 10, 19, 20].map(anEvening);
  const page = pageOf([aPage(10), aPage(20)], noon(11));
  expect(onPage(page, sessions).map(({ date }) => date)).toEqual([march(10), march(19)]);
});

test("the instant at which the next page begins is no longer of this one", () => {
  const page = pageOf([aPage(10), aPage(20)], noon(11));
  expect([noon(10) - 1, noon(10), noon(20) - 1, noon(20)].map((at) => isOnPage(page, at))).toEqual([
    false,
    true,
    true,
    false,
  ]);
});

test("of two pages turned at one instant, one after the other on two devices, every device takes the same", () => {
  const [a, b] = [aPage(10, { id: "a" }), aPage(10, { id: "b" })];
  for (const pages of [
    [a, b],
    [b, a],
  ]) {
    expect(pageSpans(pages).map(({ page }) => page?.id)).toEqual([undefined, "a", "b"]);
    expect(pageOf(pages, noon(10)).page?.id).toBe("b");
  }
});
