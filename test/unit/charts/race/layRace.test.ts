import { expect, test } from "vitest";
import { layRace } from "../../../../src/charts/race/layRace.ts";

const likely = Array.from({ length: 20 }, (_, index) => 84_000 + 20 * index);

test("no two dots of a race lie over each other, none outside, and those that beat a mean lap are told apart", () => {
  for (const width of [288, 358, 700]) {
    const { dots, radius, levels } = layRace(likely, 84_110, width);
    expect(dots).toHaveLength(20);
    expect(dots.filter(({ isFaster }) => isFaster)).toHaveLength(6);
    expect(new Set(dots.map(({ x, level }) => `${x} ${level}`)).size).toBe(20);
    for (const { x, level } of dots) {
      expect(x - radius).toBeGreaterThanOrEqual(0);
      expect(x + radius).toBeLessThanOrEqual(width);
      expect(level).toBeLessThan(levels);
    }
  }
});

test("races that are all the same stand over each other in the middle, a mean lap far off still on the line", () => {
  const { dots, levels } = layRace([84_000, 84_000], undefined, 300);
  expect(levels).toBe(2);
  expect(Math.abs((dots[0]?.x ?? 0) - 150)).toBeLessThan(10);
  expect(dots.every(({ isFaster }) => isFaster)).toBe(true);
  expect(layRace(likely, 90_000, 300).at(90_000)).toBeLessThanOrEqual(300);
});
