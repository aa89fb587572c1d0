import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { milestones } from "#stats";

/** Futures that all bring the same figures, one a session. */
const certain = (...figures: readonly number[]) => figures.map((ms) => new Float64Array(20).fill(ms));

describe("milestones", () => {
  test("by hand: what is reached after a quarter, a half and three quarters of the sessions it takes", () => {
    const figures = certain(84_000, 82_000, 81_000, 80_500);
    expect(milestones({ nowMs: 88_000, targetMs: 80_500, figures })).toEqual({
      known: true,
      value: [84_000, 82_000, 81_000, 80_500],
    });
  });

  test("shrinking gains make the first step the longest", () => {
    const figures = certain(...Array.from({ length: 12 }, (_, k) => 80_000 + 8000 * 2 ** (-(k + 1) / 3)));
    const found = milestones({ nowMs: 88_000, targetMs: 80_500, figures });
    if (!found.known) throw new Error("no milestones");
    const steps = [88_000, ...found.value]
      .slice(1)
      .map((ms, i) => (i === 0 ? 88_000 : (found.value[i - 1] ?? 0)) - ms);
    expect(steps).toHaveLength(4);
    expect(steps).toEqual(steps.toSorted((a, b) => b - a));
  });

  test("equal in seconds where fewer than one future in four gets there", () => {
    const even = { known: true, value: [86_000, 84_000, 82_000] };
    const ask = { nowMs: 88_000, targetMs: 82_000, steps: 3 };
    const reachedBy = (share: number) =>
      [86_900, 86_100, 81_000].map((ms) =>
        new Float64Array(100).fill(88_000).map((never, draw) => (draw < share * 100 ? ms : never)),
      );
    expect(milestones({ ...ask, figures: reachedBy(0.24) })).toEqual(even);
    expect(milestones({ ...ask, figures: reachedBy(0.26) })).toEqual({
      known: true,
      value: [86_900, 86_100, 82_000],
    });
    expect(milestones({ ...ask, figures: [] })).toEqual(even);
  });

  test("each is faster than the one before, and the last is the target", () => {
    const ms = fc.integer({ min: 60_000, max: 100_000 });
    fc.assert(
      fc.property(
        ms,
        fc.integer({ min: 1, max: 5000 }),
        fc.array(fc.array(fc.integer({ min: -6000, max: 2000 }), { minLength: 4, maxLength: 4 }), {
          maxLength: 9,
        }),
        fc.integer({ min: 1, max: 9 }),
        (now, gain, offs, steps) => {
          const figures = offs.map((off) => Float64Array.from(off, (some) => now + some));
          const given = milestones({ nowMs: now, targetMs: now - gain, figures, steps });
          if (!given.known) throw new Error("no milestones");
          expect(given.value.at(-1)).toBe(now - gain);
          expect([now, ...given.value]).toEqual(
            [...new Set([now, ...given.value])].toSorted((a, b) => b - a),
          );
        },
      ),
      { seed: 14 },
    );
  });

  test("a reached target gives a reason; a wrong value is named", () => {
    const figures = certain(80_000);
    for (const nowMs of [80_000, 79_999])
      expect(milestones({ nowMs, targetMs: 80_000, figures })).toEqual({
        known: false,
        reason: { because: "already reached" },
      });
    expect(milestones({ nowMs: 80_001, targetMs: 80_000, figures })).toEqual({
      known: true,
      value: [80_000],
    });
    for (const steps of [1.5, -1])
      expect(() => milestones({ nowMs: 81_000, targetMs: 80_000, figures, steps })).toThrow(
        `steps is ${steps}: a whole number from 1 is needed`,
      );
    expect(() => milestones({ nowMs: Number.NaN, targetMs: 80_000, figures })).toThrow(/nowMs/);
    expect(() => milestones({ nowMs: 81_000, targetMs: 80_000, figures, steps: 0 })).toThrow(/steps is 0/);
  });
});
