import { describe, expect, it } from "vitest";
import { levelOfPage, pageCurve, pageHistory, seasonBegins } from "#stats";
import { pageLevel } from "../../../../src/stats/combo/pageLevel.ts";
import { levelKnown } from "../../../../src/stats/level/levelKnown.ts";
import { aDigest } from "../period/manySessions.ts";
import type { Told } from "../someRows.ts";

const six = (ms: number): Told[] => new Array<number>(6).fill(ms);
const falling = [86_000, 85_500, 85_200, 85_000];
const sessions = (days: readonly number[]) =>
  days.map((day, index) => aDigest(day, six(falling[index] ?? 85_000)));

describe("the level of a page", () => {
  it("after a past session is what it was then, whatever was driven since", () => {
    const history = pageHistory(sessions([0, 1, 30, 31]));
    const level = pageLevel(history);
    expect(level.after(2)).toEqual(pageLevel(history.slice(0, 3)).after(2));
    expect(level.after(0)).toBeUndefined();
    expect(level.chanceUnder(0, 90_000)).toBeUndefined();
  });

  it("knows the breaks before each session", () => {
    const history = pageHistory(sessions([0, 1, 30, 31]));
    const withoutBreaks = levelKnown(history, () => []);
    expect(pageLevel(history).after(1)).toEqual(withoutBreaks.after(1));
    expect(pageLevel(history).after(2)?.mid).not.toBe(withoutBreaks.after(2)?.mid);
    const breakBefore = (session: number) =>
      levelKnown(history, () => [{ kind: "break", afterSession: session }]);
    expect(pageLevel(history).after(2)).toEqual(breakBefore(2).after(2));
    const rested = pageHistory(sessions([0, 1, 30, 60]));
    expect(pageLevel(rested).after(1)).toEqual(pageLevel(rested.slice(0, 2)).after(1));
    expect(pageLevel(history).after(3)).toEqual(
      levelKnown(history, () => [{ kind: "break", afterSession: 2 }]).after(3),
    );
  });

  it("is that after its last session, wherever it is asked", () => {
    const page = sessions([0, 1, 2, 3]);
    const level = levelOfPage(page.toReversed());
    expect(level).toBe(pageLevel(pageHistory(page)).after(3)?.mid);
    expect(level).toBeGreaterThan(84_500);
    expect(level).toBeLessThan(85_300);
    const curve = pageCurve({ comboId: "combo", page, today: "2026-01-06" });
    expect(curve.known && curve.value.line.at(-1)?.mid).toBe(level);
    expect(curve.known && curve.value.rate?.sessions).toBe(4);
  });

  it("is not known of one session", () => {
    expect(levelOfPage(sessions([0]))).toBeUndefined();
    expect(levelOfPage([])).toBeUndefined();
    expect(pageCurve({ comboId: "combo", page: sessions([0]), today: "2026-01-06" }).known).toBe(false);
  });

  it("has no break where another page was driven between", () => {
    const page = sessions([0, 20, 21]);
    const between = aDigest(7, six(90_000), {}, { id: "older page" });
    expect(levelOfPage(page, [...page, between, aDigest(14, [84_000], {}, { id: "short" })])).not.toBe(
      levelOfPage(page),
    );
  });
});

it("looks back twelve weeks, today counted", () => {
  expect(seasonBegins("2026-03-25")).toBe("2026-01-01");
});
