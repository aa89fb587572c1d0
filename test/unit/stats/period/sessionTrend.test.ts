import { describe, expect, it } from "vitest";
import { mannKendall } from "#stats";
import { reviewTrends } from "../../../../src/stats/period/reviewTrends.ts";
import { sessionTrend } from "../../../../src/stats/period/sessionTrend.ts";
import { aDigest } from "./manySessions.ts";

const WEEK = 7 * 86_400_000;
/** A value a week, with the laps driven up to it. */
const weekly = (values: readonly number[], lapsEach = 50) =>
  values.map((value, week) => ({ startedAt: 1e12 + week * WEEK, laps: week * lapsEach, value }));
const counted = { of: "session" } as const;
const trendOf = (...asked: Parameters<typeof sessionTrend>) => {
  const trend = sessionTrend(...asked);
  if (!trend.known) throw new Error(JSON.stringify(trend.reason));
  return trend.value;
};

describe("the trend of a figure over sessions", () => {
  it("by hand: ten less each week are twenty less each hundred laps", () => {
    const slope = (value: number) => ({ slope: value, low: value, high: value });
    // Of 120 orders of five values, two are as one-sided.
    expect(trendOf(weekly([140, 130, 120, 110, 100]), counted, 0.05)).toEqual({
      sessions: 5,
      p: expect.closeTo(2 / 120, 12),
      tau: -1,
      finding: "falling",
      perWeek: slope(-10),
      per100Laps: slope(-20),
      change: 6,
      moreSessions: expect.any(Number),
    });
    expect(trendOf(weekly([100, 110, 120, 130, 140]), counted, 0.05)).toMatchObject({
      finding: "rising",
      tau: 1,
      perWeek: slope(10),
    });
  });

  it("is no clear change where chance does as much", () => {
    expect(trendOf(weekly([110, 100, 120, 115, 105]), counted, 0.05).finding).toBe("no clear change");
    expect(trendOf(weekly([100, 100, 100, 100, 100]), counted, 0.05)).toMatchObject({
      finding: "no clear change",
      p: 1,
      moreSessions: 0,
    });
  });

  it("asks for no change of a figure that is nothing", () => {
    expect(trendOf(weekly([0, 0, 0, 0, 0]), counted, 0.05)).toMatchObject({
      change: 0,
      moreSessions: undefined,
    });
    expect(trendOf(weekly([-140, -130, -120, -110, -100]), counted, 0.05).change).toBe(6);
  });

  it("has no slope by laps where none lie between", () => {
    expect(trendOf(weekly([5, 4, 3, 2, 1], 0), counted, 0.05).per100Laps).toBeUndefined();
  });

  it("beyond ten sessions takes what comes in streaks for less", () => {
    // Eleven sessions that fall by steps of their own are told as the test has them: z = 54/√165, one in 38,000.
    const p = trendOf(weekly([11, 10, 9, 8, 7, 6, 5, 4, 3, 2, 1]), counted, 0.05).p;
    expect(p).toBeGreaterThan(2.5e-5);
    expect(p).toBeLessThan(2.8e-5);
    // A wave on a slope: by the plain test a trend, but its good and bad weeks come in streaks.
    const wave = Array.from({ length: 24 }, (_, week) => 1000 - 0.4 * week + 12 * Math.sin(week / 3));
    expect(mannKendall(wave)?.p).toBeLessThan(0.05);
    const found = trendOf(weekly(wave), counted, 0.05);
    expect(found.finding).toBe("no clear change");
    expect(found.perWeek.high).toBeLessThan(0);
    expect(found.p).toBeGreaterThan(0.1);
    expect(found.p).toBeLessThan(0.25);
  });

  it("needs five sessions, at more than one time", () => {
    expect(sessionTrend(weekly([4, 3, 2, 1]), { of: "combo with this figure" }, 0.05)).toEqual({
      known: false,
      reason: { needs: 5, of: "combo with this figure", has: 4 },
    });
    const atOnce = weekly([5, 4, 3, 2, 1]).map((point) => ({ ...point, startedAt: 7 }));
    expect(sessionTrend(atOnce, counted, 0.05)).toEqual({
      known: false,
      reason: { because: "all at one time" },
    });
  });
});

describe("the trends of a period", () => {
  /** Five laps that go up and down by so much about a level. */
  const session = (day: number, level: number, swing: number) =>
    aDigest(
      day,
      [0, swing, 0, swing, 0, swing].map((ms) => level + ms),
    );

  it("count the laps of sessions before it, and of those without a usual lap", () => {
    // Middles at 15, 45, then two laps more, 77, 107, 137 and 167 laps: a usual lap of 10 ms less a lap.
    const thirty = (day: number, level: number) => aDigest(day, new Array<number>(30).fill(level));
    const page = [
      thirty(-2, 90_000),
      thirty(0, 84_000),
      aDigest(3, [84_000, 84_000]),
      thirty(7, 83_680),
      thirty(14, 83_380),
      thirty(21, 83_080),
      thirty(28, 82_780),
    ];
    const { trend } = reviewTrends(page.slice(1), page);
    expect(trend).toMatchObject({ known: true, value: { sessions: 5, finding: "falling" } });
    expect(trend.known && trend.value.per100Laps?.slope).toBeCloseTo(-1000, 9);
    expect(trend.known && trend.value.change).toBeCloseTo(0.005 * 83_380, 9);
  });

  it("tell nothing by a hundred laps before so many have been driven", () => {
    const page = [0, 7, 14, 21, 28].map((day) => session(day, 84_000 - 10 * day, 0));
    const { trend } = reviewTrends(page, page);
    expect(trend.known && trend.value.per100Laps).toBeUndefined();
  });

  it("tell of the scatter in percent, a quarter of it being worth showing", () => {
    const page = [600, 500, 400, 300, 200].map((swing, week) => session(7 * week, 84_000, swing));
    const { steadiness } = reviewTrends(page, page);
    expect(steadiness).toMatchObject({ known: true, value: { sessions: 5, finding: "falling" } });
    // Between neighbours 400 ms: that over the root of two, of a median of 84.2 s.
    const middle = (100 * 400) / Math.SQRT2 / 84_200;
    expect(steadiness.known && steadiness.value.change).toBeCloseTo(middle / 4, 9);
  });

  it("say what a session needs to count", () => {
    const page = [session(0, 84_000, 100)];
    expect(reviewTrends(page, page)).toEqual({
      trend: {
        known: false,
        reason: { needs: 5, of: "session", each: { needs: 5, of: "pace lap" }, has: 1 },
      },
      steadiness: {
        known: false,
        reason: { needs: 5, of: "session", each: { needs: 5, of: "exact pace lap" }, has: 1 },
      },
    });
  });
});
