import { describe, expect, it } from "vitest";
import { layCorners } from "../../../../src/charts/corners/layCorners.ts";

const corner = (number: number, offs = 0, cuts = 0) => ({
  number,
  counts: [
    { kind: "cut", count: cuts },
    { kind: "off", count: offs },
  ] as const,
});

describe("marks on the numbers of corners", () => {
  it("are as many as the remarks, kind by kind, in lap order from left to right", () => {
    const { corners, each } = layCorners([corner(1), corner(2, 2, 1), corner(3, 1)], 300, 14);
    expect(each).toBe(1);
    expect(corners.map(({ all }) => all)).toEqual([0, 3, 1]);
    expect(corners[1]?.marks.map(({ kind }) => kind)).toEqual(["cut", "off", "off"]);
    const xs = corners.map(({ x }) => x);
    expect(xs.toSorted((a, b) => a - b)).toEqual(xs);
    const heights = corners[1]?.marks.map(({ y }) => y) ?? [];
    expect(heights.toSorted((a, b) => b - a)).toEqual(heights);
    expect(new Set(heights).size).toBe(3);
  });

  it("stand for more where there are many, a kind that occurred having one at least", () => {
    const { corners, each } = layCorners([corner(1, 30, 1)], 300, 14);
    expect(each).toBe(4);
    expect(corners[0]?.marks).toHaveLength(9);
    expect(corners[0]?.all).toBe(31);
  });

  it("go on in a second line where one is too narrow, none over the edge", () => {
    const { corners, height } = layCorners(
      Array.from({ length: 24 }, (_, index) => corner(index + 1, 1)),
      288,
      14,
    );
    expect(Math.max(...corners.map(({ x }) => x))).toBeLessThan(288);
    expect(new Set(corners.map(({ y }) => y)).size).toBe(2);
    expect(height).toBeGreaterThan(Math.max(...corners.map(({ y }) => y)));
  });
});
