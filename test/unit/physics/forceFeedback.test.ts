import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { gainForPeak, gainForShare, headroomDecibels, rimForce } from "#physics";

describe("force feedback", () => {
  test("the gain for a peak leaves the reserve, by hand", () => {
    expect(gainForPeak({ gain: 60, peak: 90, reserve: 0.1 })).toBeCloseTo(60, 12);
    expect(gainForPeak({ gain: 50, peak: 80, reserve: 0.1 })).toBeCloseTo(56.25, 12);
  });

  test("a cut-off peak gives a reason, not a gain", () => {
    expect(gainForPeak({ gain: 60, peak: 100, reserve: 0.1 })).toEqual({
      known: false,
      reason: { because: "peak cut off" },
    });
    expect(gainForPeak({ gain: 0, peak: 80, reserve: 0.1 })).toMatchObject({ known: false });
    for (const reserve of [-0.1, 1])
      expect(gainForPeak({ gain: 60, peak: 80, reserve })).toEqual({
        known: false,
        reason: { because: "out of range", measure: "reserve", from: 0, to: 1, value: reserve },
      });
    expect(() => gainForPeak({ gain: 60, peak: 80, reserve: Number.NaN })).toThrow(/reserve/);
  });

  test("without a reserve the peak may reach the limit", () => {
    expect(gainForPeak({ gain: 40, peak: 80, reserve: 0 })).toBeCloseTo(50, 12);
  });

  test("after the change the peak stands just under the limit", () => {
    const some = fc.double({ min: 1, max: 99, noNaN: true });
    fc.assert(
      fc.property(some, some, fc.double({ min: 0, max: 0.5, noNaN: true }), (gain, peak, reserve) => {
        const next = gainForPeak({ gain, peak, reserve });
        if (typeof next !== "number") throw new Error(JSON.stringify(next.reason));
        expect((peak * next) / gain).toBeCloseTo(100 * (1 - reserve), 8);
      }),
      { seed: 5 },
    );
  });

  test("a share of 0 or of 0.3 and more gives a reason", () => {
    for (const share of [0, -0.1, 0.3, 0.9])
      expect(gainForShare({ gain: 60, share })).toEqual({
        known: false,
        reason: { because: "out of range", measure: "share", from: 0, to: 0.3, value: share },
      });
    expect(gainForShare({ gain: 0, share: 0.1 })).toEqual({
      known: false,
      reason: { because: "not above zero", measure: "gain", value: 0 },
    });
    expect(() => gainForShare({ gain: 60, share: Number.NaN })).toThrow(/share/);
    expect(gainForShare({ gain: 60, share: 0.1, wanted: 0.4 })).toMatchObject({
      reason: { because: "out of range", measure: "wanted share", value: 0.4 },
    });
  });

  test("the wanted share is 1 % unless said, and the range is sorted both when gain falls and when it rises", () => {
    expect(gainForShare({ gain: 60, share: 0.1 })).toEqual(
      gainForShare({ gain: 60, share: 0.1, wanted: 0.01 }),
    );
    const share = fc.integer({ min: 1, max: 299 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(share, share, (now, wanted) => {
        const range = gainForShare({ gain: 60, share: now, wanted });
        if (!range.known) throw new Error(JSON.stringify(range.reason));
        return range.low <= range.high && range.low > 0 && range.high > 60 === now < wanted;
      }),
      { seed: 6 },
    );
  });

  test("headroom is below 0 where the peak lies over the limit", () => {
    expect(headroomDecibels({ peak: 120, limit: 100 })).toBeLessThan(0);
    expect(() => headroomDecibels({ peak: 0, limit: 100 })).toThrow(/peak/);
  });

  test("force at the rim by hand, and a reason without a radius", () => {
    expect(rimForce({ torque: 15, radius: 0.15 })).toEqual({ known: true, value: 100 });
    expect(rimForce({ torque: 15, radius: 0 }).known).toBe(false);
    expect(() => rimForce({ torque: Number.NaN, radius: 1 })).toThrow(/torque/);
  });
});
