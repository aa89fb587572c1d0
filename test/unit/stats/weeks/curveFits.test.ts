import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitExponential, fitPower } from "#stats";

const laps = [10, 30, 50, 80, 120, 170, 230, 300];

describe("least-squares curves", () => {
  test("a curve without noise is found again", () => {
    const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(range(50_000, 150_000), range(500, 9000), range(20, 300), (floor, span, halfLife) => {
        const fit = fitExponential(
          laps,
          laps.map((x) => floor + span * 2 ** (-x / halfLife)),
        );
        if (!fit.known) throw new Error(JSON.stringify(fit.reason));
        expect(fit.value.halfLife / halfLife).toBeCloseTo(1, 4);
        expect(fit.value.floor / floor).toBeCloseTo(1, 4);
      }),
      { seed: 9, numRuns: 50 },
    );
    fc.assert(
      fc.property(range(50, 150), range(-1.5, 2), (scale, exponent) => {
        const fit = fitPower(
          laps,
          laps.map((x) => scale * x ** exponent),
        );
        if (!fit.known) return Math.abs(exponent) < 1e-9;
        return Math.abs(fit.value.exponent - exponent) < 1e-4;
      }),
      { seed: 10, numRuns: 50 },
    );
  });

  test("rising data have a ceiling: the span is below 0", () => {
    const fit = fitExponential(
      laps,
      laps.map((x) => 100 - 30 * 2 ** (-x / 60)),
    );
    expect(fit.known && fit.value.span).toBeCloseTo(-30, 4);
  });

  test("a straight line, a constant and too few places give a reason", () => {
    const line = laps.map((x) => 90_000 - 3 * x);
    expect(fitExponential(laps, line)).toMatchObject({
      known: false,
      reason: { because: "along a line or a step" },
    });
    for (const fit of [fitExponential, fitPower]) {
      expect(fit(laps, Array(8).fill(90_000)).known).toBe(false);
      for (const count of [0, 1, 2])
        expect(fit(laps.slice(0, count), line.slice(0, count)).known).toBe(false);
      expect(fit([10, 10, 10, 10], [1, 2, 3, 4]).known).toBe(false);
    }
    expect(fitPower([0, 1, 2, 3], [1, 2, 3, 5])).toMatchObject({ known: false });
  });

  test("the reasons say what is missing", () => {
    const of = "different place";
    expect(fitExponential([1, 2, 3, 3], [5, 4, 3, 3])).toEqual({
      known: false,
      reason: { needs: 4, of, has: 3 },
    });
    expect(fitPower([1, 2, 2], [5, 4, 4])).toEqual({ known: false, reason: { needs: 3, of, has: 2 } });
    expect(fitPower([1, 2, 4], [8, 4, 2]).known).toBe(true);
    expect(fitExponential([0, 1, 2, 3], [8, 4, 2, 1]).known).toBe(true);
    for (const fit of [fitExponential, fitPower])
      expect(fit([1, 2, 3, 4], [7, 7, 7, 7])).toEqual({
        known: false,
        reason: { because: "all values equal" },
      });
    expect(fitPower([3, 2, 0, 1], [1, 2, 3, 4])).toEqual({
      known: false,
      reason: { because: "place not above zero", smallest: 0 },
    });
    expect(fitPower([1, 1.01, 1.02], [1, 5, 40])).toEqual({
      known: false,
      reason: { because: "along a step" },
    });
  });

  test("a value that is not a number is named, and so are columns of different length", () => {
    for (const fit of [fitExponential, fitPower]) {
      expect(() => fit(laps, [...laps.slice(1), Number.NaN])).toThrow(/y\[7\]/);
      expect(() => fit([Number.POSITIVE_INFINITY, 1, 2, 3], [1, 2, 3, 4])).toThrow(/x\[0\]/);
      expect(() => fit(laps, [1, 2])).toThrow(RangeError);
    }
  });
});
