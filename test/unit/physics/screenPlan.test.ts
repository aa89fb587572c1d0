import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Figure } from "#domain";
import { moved, type PlanGlass, type ScreenSetup, screenPlan, screenView } from "#physics";

const metres = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyFlat = fc.record({
  kind: fc.constant("flat" as const),
  width: metres(0.2, 3),
  height: metres(0.1, 1),
  distance: metres(0.2, 3),
});
const anyThree = fc.record({
  kind: fc.constant("three" as const),
  width: metres(0.2, 1.5),
  height: metres(0.1, 1),
  distance: metres(0.2, 2),
  sideAngle: metres(0, 90),
  bezel: metres(0, 0.1),
});
/** Up to half a circle of glass, the eye also deeper in it than its edges. */
const anyCurved = fc
  .record({
    radius: metres(0.3, 4),
    share: metres(0.02, 1),
    distance: metres(0.2, 3),
    height: metres(0.1, 1),
  })
  .map(({ radius, share, ...rest }) => ({
    ...rest,
    kind: "curved" as const,
    radius,
    width: share * Math.PI * radius,
  }));

/** Points on a piece of glass from its left edge to its right one. */
function pointsOn({ from, to, curve }: PlanGlass, count = 2000): (readonly [number, number])[] {
  const shares = Array.from({ length: count + 1 }, (_, index) => index / count);
  if (curve === undefined)
    return shares.map((share) => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share]);
  const [cx, cy] = curve.centre;
  const [first, last] = [from, to].map(([x, y]) => Math.atan2(x - cx, y - cy)) as [number, number];
  return shares.map((share) => {
    const at = first + (last - first) * share;
    return [cx + curve.radius * Math.sin(at), cy + curve.radius * Math.cos(at)];
  });
}

/** How far an eye at (0, 0) turns while it follows points one by one, degrees: the angle between neighbouring rays, added up. */
function swept(points: readonly (readonly [number, number])[]): number {
  let sum = 0;
  for (let index = 1; index < points.length; index += 1) {
    const [a, b] = [points[index - 1] ?? [0, 0], points[index] ?? [0, 0]];
    sum += Math.atan2(b[0] * a[1] - b[1] * a[0], a[0] * b[0] + a[1] * b[1]);
  }
  return (sum * 180) / Math.PI;
}

const given = <T>(figure: Figure<T>): T => {
  if (!figure.known) throw new Error(JSON.stringify(figure.reason));
  return figure.value;
};
const glassOf = (setup: ScreenSetup, at: number) => {
  const glass = screenPlan(setup).glass[at];
  if (glass === undefined) throw new Error("no such screen");
  return glass;
};

describe("the angles of screens against rays from the eye", () => {
  test("one flat screen and a curved one, seen from edge to edge", () => {
    fc.assert(
      fc.property(fc.oneof(anyFlat, anyCurved), (setup) => {
        const seen = given(screenView(setup));
        expect(swept(pointsOn(glassOf(setup, 0)))).toBeCloseTo(seen.one.horizontal, 6);
        expect(seen.all).toEqual(seen.one);
      }),
      { seed: 12, numRuns: 300 },
    );
  });

  test("three screens: the middle one, each side one, and all from outer edge to outer edge", () => {
    fc.assert(
      fc.property(anyThree, (setup) => {
        const seen = given(screenView(setup));
        const [left, middle, right] = [0, 1, 2].map((at) => pointsOn(glassOf(setup, at))) as [
          [number, number][],
          [number, number][],
          [number, number][],
        ];
        expect(swept(middle)).toBeCloseTo(seen.one.horizontal, 6);
        expect(swept(left)).toBeCloseTo(seen.sides?.each ?? 0, 6);
        expect(swept(right)).toBeCloseTo(seen.sides?.each ?? 0, 6);
        expect(swept([...left, ...middle, ...right])).toBeCloseTo(seen.all.horizontal, 6);
      }),
      { seed: 13, numRuns: 300 },
    );
  });

  test("upright it is the angle between the upper and the lower edge at the middle", () => {
    fc.assert(
      fc.property(fc.oneof(anyFlat, anyThree, anyCurved), (setup) => {
        const { distance, height } = setup;
        const [above, below] = [
          [distance, height / 2],
          [distance, -height / 2],
        ] as const;
        const cosine = (above[0] * below[0] + above[1] * below[1]) / Math.hypot(...above) ** 2;
        expect(given(screenView(setup)).one.vertical).toBeCloseTo((Math.acos(cosine) * 180) / Math.PI, 5);
      }),
      { seed: 14 },
    );
  });
});

describe("screens seen from above", () => {
  test("every picture is as wide as it was measured, and the middle one as far as it was", () => {
    fc.assert(
      fc.property(fc.oneof(anyFlat, anyThree, anyCurved), (setup) => {
        for (const glass of screenPlan(setup).glass) {
          const points = pointsOn(glass);
          const lengths = points.slice(1).map(([x, y], index) => {
            const [px, py] = points[index] ?? [0, 0];
            return Math.hypot(x - px, y - py);
          });
          expect(lengths.reduce((sum, length) => sum + length, 0)).toBeCloseTo(setup.width, 4);
        }
        const middle = pointsOn(glassOf(setup, setup.kind === "three" ? 1 : 0), 2)[1];
        expect(middle?.[0]).toBeCloseTo(0, 9);
        expect(middle?.[1]).toBeCloseTo(setup.distance, 9);
      }),
      { seed: 15 },
    );
  });

  test("side screens stand at the joints, the frames of both between them and the middle one", () => {
    const setup = {
      kind: "three",
      width: 0.6,
      height: 0.3,
      distance: 0.7,
      sideAngle: 90,
      bezel: 0.05,
    } as const;
    const plan = screenPlan(setup);
    // Turned by a right angle the right screen runs straight towards the driver, from a frame before the joint.
    expect(plan.glass[2]?.from[0]).toBeCloseTo(0.35, 9);
    expect(plan.glass[2]?.from[1]).toBeCloseTo(0.65, 9);
    expect(plan.glass[2]?.to[1]).toBeCloseTo(0.05, 9);
    expect(plan.hinges).toEqual([
      [-0.35, 0.7],
      [0.35, 0.7],
    ]);
    expect(plan.frames).toHaveLength(4);
    expect(screenPlan({ ...setup, bezel: 0 }).frames).toEqual([]);
  });

  test("of more glass than half a circle half a circle is drawn, and said to be a part", () => {
    const bowl = { kind: "curved", width: 2, height: 0.4, radius: 0.5, distance: 0.6 } as const;
    expect(screenView(bowl)).toMatchObject({ reason: { because: "more than half a circle" } });
    const plan = screenPlan(bowl);
    expect(plan.isWhole).toBe(false);
    expect(plan.glass[0]?.to[0]).toBeCloseTo(0.5, 9);
    expect(plan.glass[0]?.to[1]).toBeCloseTo(0.1, 9);
    expect(screenPlan({ ...bowl, width: 1.5 }).isWhole).toBe(true);
  });

  test("screens with no distance from the eye, or behind it, have no angle and still a place", () => {
    for (const distance of [0, -0.2]) {
      for (const setup of [
        { kind: "flat", width: 0.6, height: 0.3, distance },
        { kind: "three", width: 0.6, height: 0.3, distance, sideAngle: 30, bezel: 0.01 },
        { kind: "curved", width: 0.6, height: 0.3, distance, radius: 1 },
      ] as const) {
        expect(screenView(setup)).toMatchObject({
          reason: { because: "not above zero", measure: "distance", value: distance },
        });
        expect(screenPlan(setup).glass.flatMap(({ from, to }) => [...from, ...to])).toSatisfy(
          (all: number[]) => all.every(Number.isFinite),
        );
      }
    }
  });
});

describe("one kind of screen as the limit of another", () => {
  test("three screens in one plane without a frame are one three times as wide", () => {
    fc.assert(
      fc.property(anyFlat, (flat) => {
        const three = given(screenView({ ...flat, kind: "three", sideAngle: 0, bezel: 0 }));
        const wide = given(screenView({ ...flat, width: flat.width * 3 }));
        expect(three.all.horizontal).toBeCloseTo(wide.one.horizontal, 9);
        expect(three.one).toEqual(given(screenView(flat)).one);
      }),
      { seed: 16 },
    );
  });

  test("the larger the radius, the nearer a curved screen comes to a flat one, and from the inside", () => {
    fc.assert(
      fc.property(anyFlat, (flat) => {
        const curved = (radius: number) =>
          given(screenView({ ...flat, kind: "curved", radius })).one.horizontal;
        const straight = given(screenView(flat)).one.horizontal;
        const off = [10, 100, 1000].map((radius) => Math.abs(curved(radius) - straight)) as [
          number,
          number,
          number,
        ];
        expect(off[1]).toBeLessThanOrEqual(off[0] + 1e-9);
        expect(off[2]).toBeLessThanOrEqual(off[1] + 1e-9);
        expect(curved(1e7)).toBeCloseTo(straight, 4);
      }),
      { seed: 17 },
    );
  });

  test("a small change of any length or angle changes what is seen by little", () => {
    fc.assert(
      fc.property(anyThree, (three) => {
        const seen = given(screenView(three)).all.horizontal;
        for (const key of ["width", "distance", "sideAngle", "bezel"] as const) {
          const near = given(screenView({ ...three, [key]: three[key] + 1e-7 })).all.horizontal;
          expect(Math.abs(near - seen)).toBeLessThan(1e-3);
        }
      }),
      { seed: 18 },
    );
  });

  test("farther away a flat screen is never seen wider, nor are three in one plane", () => {
    fc.assert(
      fc.property(anyFlat, metres(0, 1), (flat, farther) => {
        for (const setup of [flat, { ...flat, kind: "three", sideAngle: 0, bezel: 0.01 }] as ScreenSetup[]) {
          const [near, far] = [setup, moved(setup, farther)].map((one) => given(screenView(one)));
          expect(far?.all.horizontal).toBeLessThanOrEqual(near?.all.horizontal ?? 0);
          expect(far?.one.vertical).toBeLessThanOrEqual(near?.one.vertical ?? 0);
        }
      }),
      { seed: 19 },
    );
  });
});

describe("the angle a simulator is set to", () => {
  test("on flat glass the upright one is the one that is seen", () => {
    fc.assert(
      fc.property(fc.oneof(anyFlat, anyThree), (setup) => {
        const seen = given(screenView(setup));
        expect(seen.drawnVertical).toBeCloseTo(seen.one.vertical ?? 0, 9);
      }),
      { seed: 20 },
    );
  });

  test("on curved glass it goes with the one across, as a flat picture has them, and ends at half a turn", () => {
    // A picture twice as wide as high that is seen under a right angle: tan(V/2) = 1/2.
    const curved = {
      kind: "curved",
      width: Math.PI / 2,
      height: Math.PI / 4,
      radius: 1,
      distance: 1,
    } as const;
    expect(given(screenView(curved)).one.horizontal).toBeCloseTo(90, 9);
    expect(given(screenView(curved)).drawnVertical).toBeCloseTo(53.1301, 4);
    expect(given(screenView({ ...curved, width: 3, distance: 0.7 })).drawnVertical).toBeUndefined();
  });

  test("turned square to the eye, the plane of each side screen is as far from the eye as the middle one", () => {
    fc.assert(
      fc.property(anyThree, (three) => {
        const square = given(screenView(three)).sides?.squareAngle ?? 0;
        const { from, to } = glassOf({ ...three, sideAngle: square }, 2);
        const [along, up] = [to[0] - from[0], to[1] - from[1]];
        const away = Math.abs(from[0] * up - from[1] * along) / Math.hypot(along, up);
        expect(away).toBeCloseTo(three.distance, 9);
      }),
      { seed: 21 },
    );
  });
});
