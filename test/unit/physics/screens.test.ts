import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  curvedScreen,
  flatScreen,
  horizontalFromVertical,
  pixelsPerDegree,
  screenSize,
  threeScreens,
  verticalFromHorizontal,
} from "#physics";

const three = { width: 0.6, height: 0.34, distance: 0.65, sideAngle: 52.42, bezel: 0.02 };

describe("screens", () => {
  test("three screens with bezels, turned square to the eye (worked by hand in our methods, §8)", () => {
    const seen = threeScreens(three);
    if (!seen.known) throw new Error(JSON.stringify(seen.reason));
    expect(seen.value.bestSideAngle).toBeCloseTo(52.42, 2);
    expect(seen.value.horizontal).toBeCloseTo(154.4, 1);
  });

  test("three screens in one plane look like one wide screen", () => {
    const seen = threeScreens({ ...three, sideAngle: 0, bezel: 0 });
    const wide = flatScreen({ width: 1.8, height: 0.34, distance: 0.65 });
    if (!seen.known || !wide.known) throw new Error("both are known");
    expect(seen.value.horizontal).toBeCloseTo(wide.value.horizontal, 10);
    expect(seen.value.vertical).toBe(wide.value.vertical);
  });

  test("a length of 0 gives a reason that names it", () => {
    expect(flatScreen({ width: 0.6, height: 0.34, distance: 0 })).toEqual({
      known: false,
      reason: { because: "not above zero", measure: "distance", value: 0 },
    });
    expect(threeScreens({ ...three, bezel: -0.01 })).toEqual({
      known: false,
      reason: { because: "below zero", measure: "bezel", value: -0.01 },
    });
    expect(curvedScreen({ arcWidth: 1, height: 0.4, radius: -1, distance: 0.7 }).known).toBe(false);
    expect(pixelsPerDegree({ pixels: 0, width: 0.6, distance: 0.6 }).known).toBe(false);
  });

  test("side screens behind the eye or through each other are refused, each with its own reason", () => {
    const said = (changes: Partial<typeof three>) => {
      const seen = threeScreens({ ...three, ...changes });
      return seen.known ? "seen" : seen.reason;
    };
    for (const sideAngle of [-5, 180, 200])
      expect(said({ sideAngle })).toEqual({
        because: "out of range",
        measure: "side angle",
        from: 0,
        to: 180,
        value: sideAngle,
      });
    // The plane of a side screen goes through the eye where tan(angle) = −distance ÷ (half a picture and a bezel).
    const far = { distance: 0.75, bezel: 0.2 };
    expect(said({ ...far, sideAngle: 123 })).toBe("seen");
    expect(said({ ...far, sideAngle: 124.5 })).toEqual({
      because: "side screens seen from behind",
      sideAngle: 124.5,
    });
    // The outer edges meet where cos(angle) = −(half a picture and a bezel) ÷ (a picture and a bezel).
    const near = { distance: 0.3, bezel: 0.2 };
    expect(said({ ...near, sideAngle: 128 })).toBe("seen");
    expect(said({ ...near, sideAngle: 129 })).toEqual({ because: "side screens meet", sideAngle: 129 });
  });

  test("three screens without a picture or a distance are refused, and a bezel below 0 is", () => {
    for (const [measure, value] of [
      ["width", 0],
      ["distance", -1],
    ] as const)
      expect(threeScreens({ ...three, [measure]: value })).toEqual({
        known: false,
        reason: { because: "not above zero", measure, value },
      });
    expect(threeScreens({ ...three, bezel: -0.01 })).toMatchObject({
      reason: { because: "below zero", measure: "bezel" },
    });
    expect(threeScreens({ ...three, bezel: 0 }).known).toBe(true);
  });

  test("more than half a circle of glass is refused, an eye inside the curve sees 180° and more", () => {
    const more = curvedScreen({ arcWidth: 3.2, height: 0.4, radius: 1, distance: 0.7 });
    expect(more).toEqual({
      known: false,
      reason: { because: "more than half a circle", arcWidth: 3.2, radius: 1 },
    });
    const inside = curvedScreen({ arcWidth: 3, height: 0.4, radius: 1, distance: 0.7 });
    expect(inside.known && inside.value.horizontal).toBeGreaterThan(180);
  });

  test("a very slightly curved screen looks like a flat one", () => {
    const curved = curvedScreen({ arcWidth: 0.8, height: 0.35, radius: 1e6, distance: 0.65 });
    const flat = flatScreen({ width: 0.8, height: 0.35, distance: 0.65 });
    if (!curved.known || !flat.known) throw new Error("both are known");
    expect(curved.value.horizontal).toBeCloseTo(flat.value.horizontal, 4);
  });

  test("a NaN or an infinite length throws, naming it", () => {
    expect(() => flatScreen({ width: Number.NaN, height: 1, distance: 1 })).toThrow(/width.*NaN/);
    expect(() => threeScreens({ ...three, sideAngle: Number.POSITIVE_INFINITY })).toThrow(/sideAngle/);
    expect(() => screenSize({ diagonal: 27, aspect: [16, 0] })).toThrow(RangeError);
    expect(() => verticalFromHorizontal(180, [16, 9])).toThrow(/less than 180/);
    expect(() => verticalFromHorizontal(0, [16, 9])).toThrow(/degrees/);
    expect(() => horizontalFromVertical(60, [16, 0])).toThrow(/aspect, second number/);
  });

  test("horizontal and vertical turn into each other and back", () => {
    const aspect = fc.tuple(fc.integer({ min: 1, max: 64 }), fc.integer({ min: 1, max: 64 }));
    fc.assert(
      fc.property(fc.double({ min: 1, max: 170, noNaN: true }), aspect, (degrees, shape) => {
        expect(horizontalFromVertical(verticalFromHorizontal(degrees, shape), shape)).toBeCloseTo(degrees, 6);
      }),
      { seed: 3 },
    );
  });

  test("closer is wider, for every kind of screen", () => {
    const metres = fc.double({ min: 0.3, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(metres, metres, metres, (width, distance, step) => {
        const near = flatScreen({ width, height: 0.3, distance });
        const far = flatScreen({ width, height: 0.3, distance: distance + step });
        return near.known && far.known && near.value.horizontal > far.value.horizontal;
      }),
      { seed: 4 },
    );
  });
});
