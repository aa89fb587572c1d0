import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  decimalsOf,
  differenceShown,
  formatDelta,
  formatDifference,
  formatLapTime,
  formatPercent,
  formatSeconds,
  shownPart,
  wayOf,
} from "#domain";

describe("lap times", () => {
  it.each([
    [83_456, "1:23.456"],
    [59_120, "59.120"],
    [3_723_400, "1:02:03.400"],
    [1, "0.001"],
    [60_000, "1:00.000"],
    [0, "0.000"],
    [359_999_999, "99:59:59.999"],
    [-1_500, "−1.500"],
  ])("%i ms is %s", (ms, shown) => expect(formatLapTime(ms)).toBe(shown));

  it("shows fewer decimals as typed and never rounds up", () => {
    expect(formatLapTime(83_400, 1)).toBe("1:23.4");
    expect(formatLapTime(83_499, 1)).toBe("1:23.4");
    expect(formatLapTime(83_990, 2)).toBe("1:23.99");
    expect(formatLapTime(119_999, 0)).toBe("1:59");
  });

  it("knows which part of a time its decimals show, and how few would show all of it", () => {
    expect([0, 1, 2, 3].map((decimals) => shownPart(83_456, decimals))).toEqual([
      83_000, 83_400, 83_450, 83_456,
    ]);
    expect([83_000, 83_400, 83_450, 83_456].map(decimalsOf)).toEqual([0, 1, 2, 3]);
  });

  it("rounds a median between two milliseconds", () => expect(formatLapTime(83_456.5)).toBe("1:23.457"));

  it("refuses what is no time", () => {
    expect(() => formatLapTime(Number.NaN)).toThrow(RangeError);
    expect(() => formatLapTime(Number.POSITIVE_INFINITY)).toThrow(/must be a finite number, not Infinity/);
    for (const decimals of [4, -1, 1.5])
      expect(() => formatLapTime(1, decimals)).toThrow(`a time has 0 to 3 decimals, not ${decimals}`);
  });

  it("sorts like the times when they are of one length", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 60_000, max: 599_999 }),
        fc.integer({ min: 60_000, max: 599_999 }),
        (a, b) => {
          expect(formatLapTime(a) < formatLapTime(b)).toBe(a < b);
        },
      ),
      { seed: 1 },
    );
  });
});

describe("differences", () => {
  it.each([
    [-312, 3, "−0.312"],
    [1011, 3, "+1.011"],
    [0, 3, "±0.000"],
    [-0.4, 3, "±0.000"],
    [-49, 1, "±0.0"],
    [-50, 1, "−0.1"],
    [62_300, 3, "+1:02.300"],
    [59_999, 1, "+1:00.0"],
  ])("%f ms with %i decimals is %s", (ms, decimals, shown) => expect(formatDelta(ms, decimals)).toBe(shown));

  it("is the same figure with the other sign the other way round", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (ms) => {
        expect(formatDelta(-ms).slice(1)).toBe(formatDelta(ms).slice(1));
      }),
      { seed: 2 },
    );
  });
});

describe("seconds and shares", () => {
  it("carries its unit", () => {
    expect(formatSeconds(312)).toBe("0.312 s");
    expect(formatSeconds(-1011, 2)).toBe("−1.01 s");
    expect(formatSeconds(-4, 2)).toBe("0.00 s");
    expect(formatSeconds(59_949, 1)).toBe("59.9 s");
    expect(formatSeconds(59_950, 1)).toBe("1:00.0");
    expect(formatSeconds(-186_815)).toBe("−3:06.815");
  });

  it("of a shown pair is what the pair shows", () => {
    const halves = fc.integer({ min: 20_000, max: 200_000 }).map((twice) => twice / 2);
    fc.assert(
      fc.property(halves, halves, (from, to) => {
        const secondsOf = (ms: number) => {
          const [minutes, seconds] = formatLapTime(ms).padStart(9, "0:").split(":");
          return Math.round(Number(minutes) * 60_000 + Number(seconds) * 1000);
        };
        expect(differenceShown({ ms: from }, { ms: to }).ms).toBe(secondsOf(to) - secondsOf(from));
      }),
    );
    expect(formatDifference({ ms: 84_154.5 }, { ms: 84_014.6 })).toBe("−0.140");
  });

  it("has no more decimals than the coarser of its two times", () => {
    expect(formatDifference({ ms: 84_550 }, { ms: 98_000, decimals: 1 })).toBe("+13.5");
    expect(formatDifference({ ms: 84_200, decimals: 1 }, { ms: 84_240 })).toBe("±0.0");
    expect(formatDifference({ ms: 84_250, decimals: 2 }, { ms: 84_240, decimals: 2 })).toBe("−0.01");
  });

  it("is a percentage of a fraction", () => {
    expect(formatPercent(0.0037, 2)).toBe("0.37 %");
    expect(formatPercent(1)).toBe("100.0 %");
    expect(formatPercent(-0.0512)).toBe("−5.1 %");
    expect(formatPercent(-0.0001)).toBe("0.0 %");
    expect(formatPercent(0)).toBe("0.0 %");
  });
});

describe("the way of a difference", () => {
  it.each([
    [-1, 3, "faster"],
    [1, 3, "slower"],
    [0, 3, "the same"],
    [-0.4, 3, "the same"],
    [-40, 1, "the same"],
    [-60, 1, "faster"],
    [40, 1, "the same"],
  ] as const)("%d ms to %i decimals is %s", (ms, decimals, way) => {
    expect(wayOf(ms, decimals)).toBe(way);
    expect(formatDelta(ms, decimals).startsWith("±")).toBe(way === "the same");
  });
});
