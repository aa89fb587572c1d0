import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { addDays } from "#domain";
import { type Chance, layChance, placeBeyond } from "../../../../src/charts/way/layChance.ts";
import { stackDots } from "../../../../src/charts/way/stackDots.ts";

const today = "2026-01-01";
const chance = (likelyDays: Chance["likelyDays"], by: string | undefined, mid?: string): Chance => ({
  today,
  likelyDays,
  by,
  expected: { low: likelyDays[1], mid: mid ?? likelyDays[9], high: likelyDays[17] },
});
const eachDay = (count: number) => Array.from({ length: count }, (_, index) => addDays(today, index + 1));

describe("twenty dots on a line of time", () => {
  it("fills those in time", () => {
    const { dots } = layChance(chance(eachDay(20), addDays(today, 7)), 400);
    expect(dots.map(({ isInTime }) => isInTime)).toEqual(Array.from({ length: 20 }, (_, index) => index < 7));
  });

  it("heaps those beyond the line behind it, and keeps all twenty", () => {
    const some = [...eachDay(12), ...new Array<undefined>(8).fill(undefined)];
    const { dots, beyond, lineEnd } = layChance(chance(some, undefined), 400);
    expect(dots.length + (beyond?.count ?? 0)).toBe(20);
    expect(beyond?.from).toBeGreaterThan(lineEnd);
    expect(placeBeyond(7)).toEqual({ column: 1, level: 2 });
  });

  it("does not stretch the line for a straggler in a year", () => {
    const late = [...eachDay(19), addDays(today, 360)];
    const { beyond, at } = layChance(chance(late, addDays(today, 7)), 400);
    expect(beyond?.count).toBe(1);
    expect(at(addDays(today, 10))).toBeGreaterThan(150);
  });

  it("keeps the first weeks apart where the very likely day is far off", () => {
    const far = [...eachDay(12), ...Array.from({ length: 8 }, (_, n) => addDays(today, 300 + 5 * n))];
    const { dots, beyond, levels, last } = layChance(chance(far, addDays(today, 14)), 560);
    expect(beyond?.count).toBe(8);
    expect(dots).toHaveLength(12);
    expect(Math.max(...dots.map(({ level }) => level))).toBe(0);
    expect(levels).toBe(5);
    expect(last <= addDays(today, 40)).toBe(true);
  });

  it("has every dot inside, none over another of its level, whatever the days", () =>
    fc.assert(
      fc.property(
        fc.array(fc.option(fc.integer({ min: 1, max: 365 })), { minLength: 20, maxLength: 20 }),
        fc.integer({ min: 0, max: 365 }),
        fc.integer({ min: 240, max: 700 }),
        (days, by, width) => {
          const sorted = days
            .toSorted((a, b) => (a ?? Infinity) - (b ?? Infinity))
            .map((day) => (day === null ? undefined : addDays(today, day)));
          const { dots, beyond, radius, lineEnd } = layChance(chance(sorted, addDays(today, by)), width);
          expect(dots.length + (beyond?.count ?? 0)).toBe(20);
          expect(lineEnd).toBeGreaterThan(0);
          for (const dot of dots) {
            expect(dot.x).toBeGreaterThanOrEqual(radius);
            expect(dot.x).toBeLessThanOrEqual(width - radius);
            for (const other of dots)
              if (other !== dot && other.level === dot.level)
                expect(Math.abs(other.x - dot.x)).toBeGreaterThanOrEqual(2 * radius);
          }
        },
      ),
      { seed: 24 },
    ));
});

describe("a heap of dots", () => {
  it("stands each as low as it can", () => {
    expect(stackDots([10, 11, 12, 30], 10)).toEqual([
      { x: 10, level: 0 },
      { x: 11, level: 1 },
      { x: 12, level: 2 },
      { x: 30, level: 0 },
    ]);
  });
});
