import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type ScreenSetup, screenPlan, screenView } from "#physics";
import { type DrawnPlan, layPlan, planFrame } from "../../../../src/charts/plan/layPlan.ts";

const three = {
  kind: "three",
  width: 0.6,
  height: 0.34,
  distance: 0.65,
  sideAngle: 45,
  bezel: 0.02,
} as const;
const flat = { kind: "flat", width: 0.6, height: 0.34, distance: 0.65 } as const;
const curved = { kind: "curved", width: 1.2, height: 0.34, distance: 0.7, radius: 1 } as const;

function drawnOf(setup: ScreenSetup): DrawnPlan {
  const seen = screenView(setup);
  return {
    plan: screenPlan(setup),
    distance: setup.distance,
    sideAngle: setup.kind === "three" ? setup.sideAngle : undefined,
    view: seen.known ? seen.value : undefined,
  };
}
const pointsIn = (path: string) =>
  path
    .slice(1)
    .split(/[ML]/)
    .map((pair) => pair.trim().split(" ").map(Number) as [number, number]);
const length = (path: string) => {
  const points = pointsIn(path);
  return points
    .slice(1)
    .reduce((sum, [x, y], at) => sum + Math.hypot(x - (points[at]?.[0] ?? 0), y - (points[at]?.[1] ?? 0)), 0);
};

const anySetup = fc
  .record({
    kind: fc.constantFrom("flat" as const, "three" as const, "curved" as const),
    width: fc.double({ min: 0.1, max: 5, noNaN: true }),
    distance: fc.double({ min: 0, max: 5, noNaN: true }),
    sideAngle: fc.double({ min: 0, max: 180, noNaN: true }),
    bezel: fc.double({ min: 0, max: 0.3, noNaN: true }),
    radius: fc.double({ min: 0.01, max: 10, noNaN: true }),
  })
  .map((setup): ScreenSetup => setup);

describe("a plan laid into a box", () => {
  test("is to scale: glass and line of sight have the lengths they are drawn for", () => {
    for (const setup of [flat, three, curved]) {
      const laid = layPlan(drawnOf(setup), 780, 14, true);
      const perMetre = length(laid.ahead) / setup.distance;
      for (const glass of laid.glass) expect(length(glass) / perMetre).toBeCloseTo(setup.width, 2);
    }
  });

  test("everything is in the picture, also of what cannot be, and no place is without a number", () => {
    const box = fc.record({ width: fc.integer({ min: 280, max: 900 }), em: fc.constantFrom(14, 20) });
    fc.assert(
      fc.property(anySetup, box, ({ ...setup }, { width, em }) => {
        for (const isOverlaid of [false, true]) {
          const laid = layPlan(drawnOf(setup), width, em, isOverlaid);
          const all = [...laid.glass, ...laid.frames, ...laid.sight].flatMap(pointsIn);
          for (const [x, y] of all) {
            expect(x).toBeGreaterThanOrEqual(-1);
            expect(x).toBeLessThanOrEqual(width + 1);
            expect(y).toBeGreaterThanOrEqual(-1);
            expect(y).toBeLessThanOrEqual(laid.height + 1);
          }
          expect(JSON.stringify(laid)).not.toMatch(/NaN|null|Infinity/);
        }
      }),
      { seed: 30 },
    );
  });

  test("under a hand nothing changes its scale: the eye is where the distance says", () => {
    const held = planFrame(drawnOf(flat));
    const before = layPlan(drawnOf(flat), 780, 14, true, held);
    const nearer = layPlan(drawnOf({ ...flat, distance: 0.5 }), 780, 14, true, held);
    expect(nearer.glass).toEqual(before.glass);
    expect(nearer.eye.y).toBeLessThan(before.eye.y);
    expect(before.distanceAt(nearer.eye)).toBeCloseTo(0.5, 3);
    expect(before.distanceAt(before.eye)).toBeCloseTo(0.65, 3);
  });

  test("the end of the right screen stands for the side angle, wherever it is moved to", () => {
    for (const sideAngle of [0, 20, 45, 90]) {
      const laid = layPlan(drawnOf({ ...three, sideAngle }), 780, 14, true);
      expect(laid.sideAngleAt(laid.outer ?? { x: 0, y: 0 })).toBeCloseTo(sideAngle, 1);
    }
  });

  test("every picture's angle stands in it, and all together below the eye", () => {
    const laid = layPlan(drawnOf(three), 780, 14, true);
    // By hand: the right picture runs from (0.334, 0.636) to (0.758, 0.212), which lie at 27.7° and 74.4°.
    expect(laid.angles.map(({ text }) => text)).toEqual([
      "46.7°",
      "46.7°",
      "49.6°",
      expect.stringMatching(/together$/),
    ]);
    const [left, right, middle, all] = laid.angles;
    expect(left?.x).toBeLessThan(middle?.x ?? 0);
    expect(right?.x).toBeGreaterThan(middle?.x ?? 0);
    expect(all?.y).toBeGreaterThan(laid.eye.y);
    expect(layPlan(drawnOf({ ...flat, distance: 0 }), 780, 14, true).angles).toEqual([]);
  });

  test("two pictures that share an edge have one line of sight to it", () => {
    expect(layPlan(drawnOf({ ...three, bezel: 0 }), 780, 14, true).sight).toHaveLength(4);
    expect(layPlan(drawnOf(three), 780, 14, true).sight).toHaveLength(6);
  });

  test("fields on the drawing keep clear of each other and of the box's edges", () => {
    const size = { across: 9.5 * 14, up: 5 * 14 };
    for (const setup of [flat, three, curved, { ...three, sideAngle: 0 }, { ...flat, distance: 0.1 }]) {
      for (const width of [520, 640, 780]) {
        const { fields, angles } = layPlan(drawnOf(setup), width, 14, true);
        const places = Object.values(fields);
        for (const { x, y } of angles.slice(0, 3))
          for (const field of places)
            expect(
              Math.abs(x - field.x) >= size.across / 2 || y - 14 >= field.y + size.up - 3 || y < field.y,
            ).toBe(true);
        for (const [index, { x, y }] of places.entries()) {
          expect(x - size.across / 2).toBeGreaterThanOrEqual(0);
          expect(x + size.across / 2).toBeLessThanOrEqual(width);
          for (const other of places.slice(index + 1))
            expect(Math.abs(other.x - x) >= size.across - 1 || Math.abs(other.y - y) >= size.up - 1).toBe(
              true,
            );
        }
      }
    }
  });

  test("near the glass the field of the distance and the angles keep clear of the screens", () => {
    const size = { across: 9.5 * 14, up: 5 * 14 };
    for (const distance of [0.05, 0.1, 0.2, 0.4])
      for (const width of [520, 640, 816]) {
        const { fields, glass, angles, eye } = layPlan(drawnOf({ ...three, distance }), width, 14, true);
        const at = fields.eyeDistance;
        const top = Math.min(...glass.flatMap(pointsIn).map(([, y]) => y));
        // It stands above all glass, or below the drawing.
        if (at !== undefined) expect(at.y + size.up).toBeLessThan(top);
        // Its letters are half an em above and below their middle, and the glass is 5 px thick.
        for (const { x, y } of angles) if (x === eye.x && y < eye.y) expect(y - 14).toBeGreaterThan(top + 2);
      }
    expect(layPlan(drawnOf({ ...three, distance: 0.4 }), 816, 14, true).fields.eyeDistance).toBeDefined();
    expect(layPlan(drawnOf({ ...three, distance: 0.4 }), 520, 14, true).fields.eyeDistance).toBeUndefined();
  });

  test("on a phone the distance as text stands between the lines to the edges, above the angle", () => {
    for (const distance of [0.4, 0.525, 0.65, 0.7, 0.9]) {
      const laid = layPlan(drawnOf({ ...three, bezel: 0, distance }), 358, 14, false);
      const { eyeDistance } = laid.texts;
      if (eyeDistance === undefined) continue;
      const [[left = 0, top = 0] = [], [right = 0] = []] = pointsIn(laid.glass[1] ?? "");
      // At its foot; "52.5 cm" is 53 px wide at most.
      const share = (laid.eye.y - eyeDistance.y) / (laid.eye.y - top);
      expect(((right - left) / 2) * share).toBeGreaterThan(53 / 2 + 4);
      expect(eyeDistance.anchor).toBe("middle");
      const middle = laid.angles.find(({ x, y }) => x === laid.eye.x && y < laid.eye.y);
      expect(middle?.y).toBeGreaterThan(eyeDistance.y + 14);
    }
  });
});
