import { expect, test } from "vitest";
import { layWave } from "#charts/wave/layWave.ts";

const numbersOf = (path: string) =>
  path
    .split(/[MLZ]/)
    .filter((point) => point !== "")
    .map((point) => point.split(" ").map(Number));

test("a force under the limit is one line below it, with nothing lost", () => {
  const { felt, lost, flat, limit, ground } = layWave([0, 50, 80, 50, 0], 200, 112);
  expect([lost, flat]).toEqual(["", ""]);
  const heights = numbersOf(felt).map(([, y = 0]) => y);
  expect(heights).toHaveLength(5);
  expect(heights[0]).toBe(ground);
  expect(Math.min(...heights)).toBeGreaterThan(limit);
});

test("what lies over the limit is drawn apart, and what is felt is flat there", () => {
  const { felt, lost, flat, limit } = layWave([0, 120, 140, 90, 130, 0], 200, 140);
  expect(flat).toBe(`M0 ${limit}H120M120 ${limit}H200`);
  const [, second, third, , fifth] = numbersOf(felt).map(([, y]) => y);
  expect([second, third, fifth]).toEqual([limit, limit, limit]);
  // Two stretches, each from the sample before to the one after, along the limit.
  expect(lost.split("Z").filter((part) => part !== "")).toHaveLength(2);
  expect(numbersOf(lost).map(([, y = 0]) => y)).toEqual([
    limit,
    expect.any(Number),
    expect.any(Number),
    limit,
    limit,
    expect.any(Number),
    limit,
  ]);
  expect(Math.min(...numbersOf(lost).map(([, y = 0]) => y))).toBeGreaterThanOrEqual(0);
});

test("two turns of one scale have their limit at one height", () => {
  expect(layWave([10, 20], 150, 140).limit).toBe(layWave([140, 20], 150, 140).limit);
});
