import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Corner, type CornerPath, cornerPath, nothingUnused, type Point } from "#physics";
import { cornerWay } from "../../../src/physics/cornerWay.ts";

const corner: Corner = {
  innerRadius: 25,
  roadWidth: 11.8,
  carWidth: 1.8,
  angle: 90,
  unused: { entry: 1, apex: 0.5, exit: 1.5 },
  grip: 1.2,
  braking: 9,
  drive: 4,
  approachLength: 200,
  approachSpeed: 50,
  exitLength: 300,
};
const kerbs = { entry: 0.8, apex: 0.5, exit: 1.2 };
const pathOf = (of: Corner, unused?: Corner["unused"], apexAngle?: number): CornerPath => {
  const path = cornerPath(of, unused, apexAngle);
  if (!path.known) throw new Error(JSON.stringify(path.reason));
  return path.value;
};
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const distance = ([ax, ay]: Point, [bx, by]: Point) => Math.hypot(ax - bx, ay - by);
const lengthOf = (points: readonly Point[]) =>
  points.slice(1).reduce((sum, point, index) => sum + distance(point, points[index] as Point), 0);

/** Distance from the centre of the bend on the arc, from the line through it along the road beside the straights. */
function lateral([x, y]: Point, angle: number, isBeforeApex: boolean): number {
  if (isBeforeApex) return x < 0 ? -y : Math.hypot(x, y);
  const [cos, sin] = [Math.cos(radians(angle)), Math.sin(radians(angle))];
  return x * cos + y * sin > 0 ? x * sin - y * cos : Math.hypot(x, y);
}

/** Both sides of the car along its way, with how far each is from the bend. */
function sidesOf(path: CornerPath, { carWidth, angle }: Corner) {
  const apexIndex = path.centre.findIndex(
    (point) => point === path.apex || distance(point, path.apex) < 1e-9,
  );
  const [first, last] = [path.turnIn, path.turnedOut].map((end) =>
    path.centre.findIndex((point) => distance(point, end) < 1e-9),
  ) as [number, number];
  return path.centre.map((point, index) => {
    const isBeforeApex = index <= apexIndex;
    const out = lateral(point, angle, isBeforeApex);
    if (index < first || index > last) return { inner: out - carWidth / 2, outer: out + carWidth / 2, point };
    const arc = isBeforeApex ? path.arcs.entry : path.arcs.exit;
    const [cx, cy] = arc.centre;
    const of = (radius: number): Point => {
      const share = radius / distance(point, arc.centre);
      return [cx + (point[0] - cx) * share, cy + (point[1] - cy) * share];
    };
    return {
      inner: lateral(of(arc.radius), angle, isBeforeApex),
      outer: lateral(of(arc.radius + carWidth), angle, isBeforeApex),
      point,
    };
  });
}

const anyCorner = fc
  .record({
    innerRadius: fc.double({ min: 4, max: 150, noNaN: true }),
    room: fc.double({ min: 2, max: 14, noNaN: true }),
    angle: fc.double({ min: 6, max: 200, noNaN: true }),
    at: fc.double({ min: 0.2, max: 0.8, noNaN: true }),
    shares: fc.tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 0.45, noNaN: true }))),
    kerbs: fc.record({
      entry: fc.constantFrom(0, 0.7, 1.5),
      apex: fc.constantFrom(0, 0.4, 1),
      exit: fc.constantFrom(0, 0.7, 1.5),
    }),
  })
  .map(
    ({ innerRadius, room, angle, at, shares: [entry = 0, apex = 0, exit = 0], kerbs: beside }): Corner => ({
      ...corner,
      innerRadius,
      roadWidth: room + corner.carWidth,
      kerbs: beside,
      angle,
      apexAngle: angle * at,
      unused: { entry: entry * room, apex: apex * room, exit: exit * room },
    }),
  )
  .filter(({ angle, apexAngle = 0 }) => apexAngle < 175 && angle - apexAngle < 175);

describe("the path of a car through a corner", () => {
  test("stays within the road and the kerbs beside it, where those are", () => {
    fc.assert(
      fc.property(anyCorner, (of) => {
        const path = pathOf(of);
        const { entry, apex, exit } = of.kerbs ?? nothingUnused;
        const outerRadius = of.innerRadius + of.roadWidth;
        for (const { inner, outer } of sidesOf(path, of)) {
          expect(inner).toBeGreaterThan(of.innerRadius - apex - 1e-6);
          expect(outer).toBeLessThan(outerRadius + Math.max(entry, exit) + 1e-6);
        }
      }),
      { seed: 3, numRuns: 150 },
    );
  });

  test("touches the edges where nothing is unused: outside when it turns in and out, inside at the apex", () => {
    for (const beside of [undefined, kerbs]) {
      const of = { ...corner, ...(beside && { kerbs: beside }), unused: nothingUnused };
      const path = pathOf(of);
      const { entry, apex, exit } = beside ?? nothingUnused;
      const outer = 25 + 11.8 - 0.9;
      expect(-path.turnIn[1]).toBeCloseTo(outer + entry, 9);
      expect(path.turnedOut[0]).toBeCloseTo(outer + exit, 9);
      expect(Math.hypot(...path.apex)).toBeCloseTo(25 + 0.9 - apex, 9);
    }
  });

  test("leaves unused what is said to be", () => {
    const path = pathOf(corner);
    expect(-path.turnIn[1]).toBeCloseTo(25 + 11.8 - 0.9 - 1, 9);
    expect(Math.hypot(...path.apex)).toBeCloseTo(25 + 0.9 + 0.5, 9);
    expect(path.turnedOut[0]).toBeCloseTo(25 + 11.8 - 0.9 - 1.5, 9);
    // Turned up to half of the right angle, and out of it along +y.
    expect(path.apex[0]).toBeCloseTo(-path.apex[1], 9);
    const [before, end] = path.centre.slice(-2) as [Point, Point];
    expect(end[0]).toBeCloseTo(before[0], 9);
    expect(end[1]).toBeGreaterThan(before[1]);
  });

  test("has no bend in it where straight and arcs join", () => {
    fc.assert(
      fc.property(anyCorner, (of) => {
        const { centre, arcs, apex, turnIn, turnedOut } = pathOf(of);
        const headings = centre
          .slice(1)
          .map(([x, y], index) =>
            Math.atan2(y - (centre[index] as Point)[1], x - (centre[index] as Point)[0]),
          );
        headings.slice(1).forEach((heading, index) => {
          const bend = heading - (headings[index] as number);
          const turned = Math.atan2(Math.sin(bend), Math.cos(bend));
          expect(turned).toBeGreaterThan(-1e-6);
          expect(turned).toBeLessThan(radians(1.6));
        });
        // A tangent joins where the centre of an arc stands square to it; two arcs where their centres do on one side.
        expect(arcs.entry.centre[0]).toBeCloseTo(turnIn[0], 7);
        for (const arc of [arcs.entry, arcs.exit])
          expect(distance(arc.centre, apex)).toBeCloseTo(arc.radius + of.carWidth / 2, 6);
        const [[ax, ay], [bx, by]] = [arcs.entry.centre, arcs.exit.centre];
        const cross = (ax - apex[0]) * (by - apex[1]) - (ay - apex[1]) * (bx - apex[0]);
        expect(Math.abs(cross)).toBeLessThan(1e-5 * arcs.entry.radius * arcs.exit.radius);
        const out = [turnedOut[0] - bx, turnedOut[1] - by] as const;
        const along = out[0] * Math.cos(radians(of.angle)) + out[1] * Math.sin(radians(of.angle));
        expect(Math.abs(along)).toBeLessThan(1e-7 * arcs.exit.radius + 1e-7);
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  test("is as long as the sums have it", () => {
    fc.assert(
      fc.property(anyCorner, (of) => {
        const path = pathOf(of);
        const { apexAngle = 0 } = of;
        const [, entry, exit] = cornerWay(of, of.unused, apexAngle).over(0, 0);
        const [from, to] = [path.turnIn, path.turnedOut].map((end) =>
          path.centre.findIndex((point) => distance(point, end) < 1e-9),
        ) as [number, number];
        const arcs = (entry?.length ?? 0) + (exit?.length ?? 0);
        expect(lengthOf(path.centre.slice(from, to + 1)) / arcs).toBeCloseTo(1, 3);
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  test("kerbs are drawn where the line needs them, and not where there are none", () => {
    expect(pathOf(corner).kerbs).toEqual({ entry: [], apex: [], exit: [] });
    const of = { ...corner, kerbs, unused: nothingUnused };
    const path = pathOf(of);
    const { entry, apex, exit } = path.kerbs;
    const angleAt = ([x, y]: Point) => (x < 0 ? x / 1000 : Math.atan2(x, -y));
    const entryEnd = angleAt(entry.at(-1) as Point);
    const [apexFrom, apexTo] = [apex[0], apex.at(-1)].map((point) => angleAt(point as Point)) as [
      number,
      number,
    ];
    expect(apexFrom).toBeLessThan(radians(45));
    expect(apexTo).toBeGreaterThan(radians(45));
    expect(apexTo - radians(45)).toBeCloseTo(radians(45) - apexFrom, 1);
    const apexIndex = path.centre.findIndex((point) => distance(point, path.apex) < 1e-9);
    sidesOf(path, of).forEach(({ inner, outer, point }, index) => {
      const angle = angleAt(point);
      if (inner < 25 - 1e-9) {
        expect(angle).toBeGreaterThan(apexFrom - 0.01);
        expect(angle).toBeLessThan(apexTo + 0.01);
      }
      if (outer > 36.8 + 1e-9 && index < apexIndex) expect(angle).toBeLessThan(entryEnd + 0.01);
    });
    for (const point of exit) expect(lateral(point, 90, false)).toBeCloseTo(36.8 + 1.2, 9);
    for (const point of entry) expect(lateral(point, 90, true)).toBeCloseTo(36.8 + 0.8, 9);
    for (const point of apex) expect(Math.hypot(...point)).toBeCloseTo(24.5, 9);
  });

  test("a kerb that the car leaves alone is drawn as far as the line with nothing unused needs it", () => {
    const of = { ...corner, kerbs };
    const [alone, used] = [pathOf(of, { entry: 3, apex: 2, exit: 3 }), pathOf(of, nothingUnused)];
    expect(alone.kerbs).toEqual(used.kerbs);
  });

  test("edges of the road run beside each other all the way", () => {
    for (const angle of [30, 90, 180, 200]) {
      const { inner, outer, apex } = pathOf({ ...corner, angle });
      const of = (points: readonly Point[]) =>
        points.map((point, index) => lateral(point, angle, index < points.length / 2));
      for (const out of of(inner)) expect(out).toBeCloseTo(25, 9);
      for (const out of of(outer)) expect(out).toBeCloseTo(36.8, 9);
      expect(Math.atan2(apex[0], -apex[1])).toBeCloseTo(radians(angle / 2), 9);
    }
  });

  test("edges of the road begin and end beside the car, along the straights", () => {
    const { inner, outer, centre } = pathOf(corner);
    const across = corner.innerRadius + corner.roadWidth;
    for (const edge of [inner, outer]) {
      expect(edge[0]?.[0]).toBeCloseTo(centre[0]?.[0] ?? Number.NaN, 9);
      expect(edge.at(-1)?.[1]).toBeCloseTo(centre.at(-1)?.[1] ?? Number.NaN, 9);
    }
    expect(outer[0]?.[1]).toBeCloseTo(-across, 9);
    expect(centre[0]?.[0]).toBeLessThan(-corner.roadWidth);
  });

  test("another apex than that of the corner is drawn where it is said to be", () => {
    const late = pathOf(corner, nothingUnused, 60);
    expect(Math.atan2(late.apex[0], -late.apex[1])).toBeCloseTo(radians(60), 9);
    expect(late.arcs.exit.radius).toBeGreaterThan(late.arcs.entry.radius);
  });

  test("bad geometry is refused with the reason", () => {
    expect(cornerPath(corner, { entry: 11, apex: 0, exit: 0 })).toMatchObject({
      reason: { because: "more unused than there is" },
    });
    expect(cornerPath({ ...corner, kerbs: { ...kerbs, exit: -1 } })).toMatchObject({
      reason: { because: "below zero", measure: "kerb at exit" },
    });
  });
});
