import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatLapTime } from "#domain";
import { calendarTicks } from "../../../../src/charts/axes/calendarTicks.ts";
import { dateTicks } from "../../../../src/charts/axes/dateTicks.ts";
import { percentTicks } from "../../../../src/charts/axes/percentTicks.ts";
import { timeTicks } from "../../../../src/charts/axes/timeTicks.ts";

describe("timeTicks", () => {
  it("steps in whole seconds over a few seconds", () => {
    const axis = timeTicks([83_213, 86_431]);
    expect(axis.ticks.map((tick) => formatLapTime(tick, axis.decimals))).toEqual([
      "1:23.0",
      "1:24.0",
      "1:25.0",
      "1:26.0",
      "1:27.0",
    ]);
    expect(axis.domain).toEqual([83_000, 87_000]);
  });

  it("shows hundredths when the laps lie that close, and one value still makes an axis", () => {
    const near = timeTicks([59_120, 59_310]);
    expect(near.ticks.map((tick) => formatLapTime(tick, near.decimals))).toContain("59.15");
    const one = timeTicks([83_000]);
    expect(one.domain[1]).toBeGreaterThan(one.domain[0]);
  });

  it("holds all values within few, evenly spaced ticks it can write exactly", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 20_000, max: 8_000_000 }), { minLength: 1, maxLength: 30 }),
        (times) => {
          const { domain, ticks, decimals } = timeTicks(times, 6);
          expect(domain[0]).toBeLessThanOrEqual(Math.min(...times));
          expect(domain[1]).toBeGreaterThanOrEqual(Math.max(...times));
          expect(ticks.length).toBeLessThanOrEqual(6);
          expect(new Set(ticks.slice(1).map((tick, at) => tick - (ticks[at] ?? 0))).size).toBe(1);
          for (const tick of ticks) expect(tick % 10 ** (3 - decimals)).toBe(0);
        },
      ),
      { seed: 20261014, numRuns: 300 },
    );
  });
});

describe("percentTicks", () => {
  it("begins at nothing", () => {
    expect(percentTicks([0.41, 0.63]).domain).toEqual([0, 0.8]);
  });
});

describe("dateTicks", () => {
  it("names single days over a week", () => {
    expect(dateTicks("2026-08-03", "2026-08-06", 6).map(({ label }) => label)).toEqual([
      "3 Aug",
      "4 Aug",
      "5 Aug",
      "6 Aug",
    ]);
  });

  it("names Mondays over weeks", () => {
    // 2026-08-03 is a Monday.
    expect(dateTicks("2026-08-05", "2026-09-05", 6).map(({ date }) => date)).toEqual([
      "2026-08-10",
      "2026-08-17",
      "2026-08-24",
      "2026-08-31",
    ]);
  });

  it("names months over a year, and the year at its turn", () => {
    expect(dateTicks("2026-08-05", "2027-03-02", 8).map(({ label }) => label)).toEqual([
      "Sep",
      "Oct",
      "Nov",
      "Dec",
      "2027",
      "Feb",
      "Mar",
    ]);
  });

  it("never gives more than wanted, nor outside the dates, over up to forty years", () => {
    const day = (days: number) => new Date(days * 86_400_000).toISOString().slice(0, 10);
    fc.assert(
      fc.property(
        fc.integer({ min: 15_000, max: 25_000 }),
        fc.integer({ min: 0, max: 14_600 }),
        fc.integer({ min: 2, max: 12 }),
        (start, length, wanted) => {
          const [from, to] = [day(start), day(start + length)];
          const ticks = dateTicks(from, to, wanted);
          expect(ticks.length).toBeLessThanOrEqual(wanted);
          for (const { date } of ticks) expect(date >= from && date <= to).toBe(true);
        },
      ),
      { seed: 20261014, numRuns: 300 },
    );
  });
});

describe("calendarTicks", () => {
  it("makes an axis of one session", () => {
    const { domain, ticks } = calendarTicks([20_668], 6);
    expect(domain[1]).toBeGreaterThan(domain[0]);
    expect(ticks).toEqual([{ value: 20_668, label: "3 Aug" }]);
  });
});
