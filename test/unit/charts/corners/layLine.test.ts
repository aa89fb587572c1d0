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
  angle: 90,
  apex: { at: [21, -1], turned: 0 },
  bestApex: undefined,
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
    expect(height).toBeLessThanOrEqual(width * 0.9 + 24 + 14 * (1.8 + 2.4));
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

it("an apex is marked where the car's inner side touches the edge", () => {
  const laid = layLine({ ...corner, bestApex: { at: [21, 10], turned: 90 } }, 600, 14);
  // Inner edge: up along y = 0, then across along x = 20.
  const edge = points(laid.road).slice(0, 3) as [[number, number], [number, number], [number, number]];
  expect(laid.apex.x).toBeCloseTo(edge[0][0], 1);
  expect(laid.bestApex?.y).toBeCloseTo(edge[1][1], 1);
  expect(layLine(corner, 600, 14).bestApex).toBeUndefined();
});

it("the words stand beyond the road's ends and within the box, whichever way the corner turns", () => {
  const em = 14;
  for (const angle of [30, 90, 130, 180]) {
    for (const direction of ["left", "right"] as const) {
      const turned = bend(angle);
      const { ends, height, road } = layLine({ ...corner, ...turned, direction, angle }, 358, em);
      for (const { x, y } of [ends.entry, ends.exit]) {
        expect(x).toBeGreaterThanOrEqual(em);
        expect(x).toBeLessThanOrEqual(358 - em);
        expect(y).toBeGreaterThanOrEqual(em * 0.5);
        expect(y).toBeLessThanOrEqual(height - em);
      }
      const edge = points(road);
      const [innerEnd, outerEnd] = [edge[2], edge[3]] as [[number, number], [number, number]];
      const [x, y] = [(innerEnd[0] + outerEnd[0]) / 2, (innerEnd[1] + outerEnd[1]) / 2];
      expect(Math.hypot(ends.exit.x - x, ends.exit.y - y)).toBeGreaterThanOrEqual(em);
      const heading = ((direction === "left" ? -1 : 1) * angle * Math.PI) / 180;
      const along = (ends.exit.x - x) * Math.sin(heading) - (ends.exit.y - y) * Math.cos(heading);
      expect(along).toBeGreaterThan(em * 0.9);
      expect(ends.entry.y).toBeGreaterThan(Math.max(...edge.map(([, edgeY]) => edgeY)) - 0.01);
    }
  }
});

/** Edges of a road that goes up 20 m, then 30 m on at that angle. */
function bend(angle: number): Pick<DrawnCorner, "inner" | "outer"> {
  const heading = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(heading), Math.sin(heading)];
  const [far, width] = [20, 10];
  const edge = (aside: number) =>
    [
      [0, -aside],
      [20, -aside],
      [20 + far * cos + aside * sin, 10 + far * sin - aside * cos],
    ] as const;
  return { inner: edge(0), outer: edge(width) };
}
