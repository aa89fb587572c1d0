import { describe, expect, it } from "vitest";
import { sessionsNeededForChange } from "#stats";
import { bandOf, rangeOf } from "../../../../src/stats/weeks/bands.ts";
import { requireSessions } from "../../../../src/stats/weeks/history.ts";
import { longestPause } from "../../../../src/stats/weeks/longestPause.ts";

describe("the longest pause", () => {
  it("is that between two days driven, the first of equal ones", () => {
    const driven = { date: "2026-01-01", drivenSince: ["2026-01-04", "2026-01-10", "2026-01-16"] };
    expect(longestPause(driven, "2026-01-18")).toEqual({ from: "2026-01-04", to: "2026-01-10", days: 6 });
    expect(longestPause(driven, "2026-01-30")).toEqual({ from: "2026-01-16", to: "2026-01-30", days: 14 });
    expect(longestPause({ date: "2026-01-01" }, "2026-01-03").days).toBe(2);
  });

  it("knows nothing of what was driven later", () => {
    const driven = { date: "2026-01-01", drivenSince: ["2026-01-12", "2026-03-01"] };
    expect(longestPause(driven, "2026-01-12")).toEqual({ from: "2026-01-01", to: "2026-01-12", days: 11 });
  });
});

describe("bands of draws", () => {
  it("are quantiles, whatever order the draws come in, which stay as they were", () => {
    const draws = Float64Array.from({ length: 101 }, (_, i) => 100 - i);
    expect(rangeOf(draws)).toEqual({ low: 5, mid: 50, high: 95 });
    expect(bandOf(draws)).toEqual({ low: 5, lowHalf: 25, mid: 50, highHalf: 75, high: 95 });
    expect(draws[0]).toBe(100);
  });
});

describe("sessions that a forecast takes", () => {
  const session = { lapsBefore: 0, laps: 0, medianMs: 84_000, bestMs: 0 };

  it("may have no laps", () => {
    expect(() => requireSessions([session], [{ laps: 0 }])).not.toThrow();
    expect(() => requireSessions([])).not.toThrow();
  });

  it.each(["lapsBefore", "laps", "medianMs", "bestMs"] as const)(
    "have a %s that is a number from 0 on",
    (name) => {
      const wrong = (value: number) => () => requireSessions([session, { ...session, [name]: value }]);
      expect(wrong(-1)).toThrow(`history[1].${name} is -1: 0 or more is needed`);
      expect(wrong(Number.NaN)).toThrow(`history[1].${name} is NaN`);
    },
  );

  it("have a usual lap, and those to come no laps below 0", () => {
    expect(() => requireSessions([{ ...session, medianMs: 0 }])).toThrow(
      "history[0].medianMs is 0: a lap time is needed",
    );
    expect(() => requireSessions([], [{ laps: 3 }, { laps: -2 }])).toThrow(
      "future[1].laps is -2: 0 or more is needed",
    );
    expect(() => requireSessions([], [{ laps: Number.NaN }])).toThrow("future[0].laps is NaN");
  });
});

describe("sessions needed to show a change", () => {
  /** Up and down by 200 ms: the variance from one to the next is 200²/2. */
  const upAndDown = (count: number) =>
    Array.from({ length: count }, (_, index) => (index % 2 === 0 ? 0 : 200));

  it("by hand: the least n at which (n − 1)/(n·(n + 1)) is small enough", () => {
    // z = 1.645 + 0.842 (tables of the normal distribution): z²·200²/2·12/0.955 = 1,554,000 times it, against 420².
    expect([3, 5, 6, 7, 8].map((count) => sessionsNeededForChange(upAndDown(count), 420))).toEqual([
      4, 2, 1, 0, 0,
    ]);
    // z = 1.645 + 1.282, and 1.960 + 0.842.
    expect(sessionsNeededForChange(upAndDown(5), 420, 0.9)).toBe(5);
    expect(sessionsNeededForChange(upAndDown(5), 420, 0.8, 0.05)).toBe(4);
  });

  it("are not told for fewer than three, or where they are more than 500", () => {
    expect(sessionsNeededForChange([0, 200], 420)).toBeUndefined();
    // At n = 503 the sum is 1,554,000·502/(503·504) = 3077, the square of 55.47; at 502 that of 55.53.
    expect(sessionsNeededForChange(upAndDown(3), 55.5)).toBe(500);
    expect(sessionsNeededForChange(upAndDown(3), 55.45)).toBeUndefined();
  });

  it("names what is wrong", () => {
    expect(() => sessionsNeededForChange([1, 2, 3], 0)).toThrow("change is 0: a number above 0 is needed");
    expect(() => sessionsNeededForChange([1, 2, 3], Number.NaN)).toThrow("change is NaN");
    expect(() => sessionsNeededForChange([1, Number.NaN, 3], 5)).toThrow("medians[1] is NaN");
    expect(() => sessionsNeededForChange([1, 2, 3], 5, 1)).toThrow("power is 1");
    expect(() => sessionsNeededForChange([1, 2, 3], 5, 0.8, 0)).toThrow("level is 0");
  });
});
