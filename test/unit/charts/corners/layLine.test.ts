import { expect, it } from "vitest";
import { type DrawnCorner, layLine } from "../../../../src/charts/corners/layLine.ts";

/** A corner of a quarter circle: up 20 m, then 30 m across. */
const corner: DrawnCorner = {
  direction: "right",
  inner: [
    [0, 0],
    [20, 0],
    [20, 30],
  ],
  outer: [
    [0, -10],
    [30, -10],
    [30, 30],
  ],
  kerbs: [],
  widest: [
    [0, -9],
    [29, 30],
  ],
  driven: undefined,
  cars: [{ at: [10, -5], turned: 0 }],
  carWidth: 2,
};

const points = (path: string) =>
  path
    .replace(/[MZ]/g, "")
    .split("L")
    .map((point) => point.split(" ").map(Number) as [number, number]);
const sizeOf = (path: string) => {
  const [xs, ys] = [0, 1].map((axis) => points(path).map((point) => point[axis] as number)) as [
    number[],
    number[],
  ];
  return { across: Math.max(...xs) - Math.min(...xs), up: Math.max(...ys) - Math.min(...ys) };
};

it("is drawn to scale: as wide for its height as it is, road and car alike", () => {
  const laid = layLine(corner, 600, 14);
  const road = sizeOf(laid.road);
  expect(road.across / road.up).toBeCloseTo(40 / 30, 3);
  const car = sizeOf(laid.cars[0] ?? "");
  expect(car.up / car.across).toBeCloseTo(2.4, 2);
  expect(road.up / car.across).toBeCloseTo(30 / 2, 2);
});

it("its scale is as long as it says", () => {
  for (const width of [300, 600, 1200]) {
    const { scale, road } = layLine(corner, width, 14);
    const [, from = 0, to = 0] = /^M([\d.]+) [\d.]+v4H([\d.]+)v-4$/.exec(scale.path)?.map(Number) ?? [];
    expect((to - from) / Number.parseFloat(scale.text)).toBeCloseTo(sizeOf(road).up / 30, 2);
    expect(to - from).toBeLessThanOrEqual(width / 5);
  }
});

it("keeps within its box, and is no higher than its box is wide", () => {
  for (const width of [280, 358, 700]) {
    const { road, height } = layLine(corner, width, 14);
    for (const [x, y] of points(road)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(height);
    }
    expect(height).toBeLessThanOrEqual(width * 0.9 + 24 + 14 * 1.8);
  }
});

it("the car comes up from below; a right-hander turns to the right, a left-hander to the left", () => {
  const ends = (direction: DrawnCorner["direction"]) => {
    const way = points(layLine({ ...corner, direction }, 600, 14).widestLine);
    return [way[0], way.at(-1)] as [[number, number], [number, number]];
  };
  const [[x0, y0], [x1, y1]] = ends("right");
  expect(y1).toBeLessThan(y0);
  expect(x1).toBeGreaterThan(x0);
  const [[left0], [left1]] = ends("left");
  expect(left1).toBeLessThan(left0);
});

it("draws kerbs and the line as driven where there are any", () => {
  const kerb = [
    [30, 10],
    [30, 30],
  ] as const;
  const laid = layLine({ ...corner, kerbs: [kerb], driven: corner.widest }, 600, 14);
  expect(laid.kerbs).toHaveLength(1);
  expect(laid.drivenLine).toBe(laid.widestLine);
  expect(layLine(corner, 600, 14).drivenLine).toBeUndefined();
});
